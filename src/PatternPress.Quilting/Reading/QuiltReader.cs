using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Rules;
using PatternPress.Quilting.Settings;
using PatternPress.Source;
using PatternPress.Source.Syntax;

namespace PatternPress.Quilting.Reading;

/// <summary>Reads <c>quilt:</c>, once for every size with that size's changes laid over it.</summary>
internal static class QuiltReader
{
    /// <param name="map">The quilt with a size's changes already laid over it.</param>
    /// <param name="unchanged">The quilt without them.</param>
    /// <param name="fill">The fill, if the size draws its own map; else null.</param>
    public static QuiltDesign? Read(
        MapNode map,
        Fill? fill,
        ImmutableArray<Coloring> colorings,
        ReadContext context,
        MapNode? unchanged = null
    )
    {
        SashingDesign? sashing = ReadSashing(map, context);
        var reader = new BorderReader(colorings, context);
        ImmutableArray<BorderDesign> borders = reader.Read(map, "borders");
        BindingDesign? binding = ReadBinding(map, context);
        Sourced<string>? backing = map["backing"] switch
        {
            ScalarNode { IsEmpty: false } text => context.FabricName(
                text.Whole.Trim(),
                "the backing"
            ),
            MapNode details => context.FabricName(details, "fabric", "the backing"),
            _ => null,
        };
        fill ??= map["fill"] is { } node ? FillReader.Read(node, colorings, context) : null;
        Sourced<ImmutableArray<FreePlace>>? places = ReadContext.Text(map, "places") is { } placed
            ? FreePlaceReader.Read(placed, colorings, context)
            : null;
        if (places is { } free)
        {
            // What follows knows colorings from the fill.
            fill ??= new Fill(
                FillKind.Repeat,
                [
                    [.. free.Value.Select(place => place.Cell)],
                ],
                0,
                free.Span
            );
        }
        // A fill that is there and could not be read has its finding; one that is not there gets it once the setting is known.
        fill ??= map["fill"] switch
        {
            null => Fill.None(map.Span),
            ScalarNode text when string.IsNullOrWhiteSpace(text.Value) => Fill.None(map.Span),
            _ => null,
        };
        Sourced<ImmutableArray<Length>>? columns = ReadMeasures(
                map,
                "columns",
                "column width",
                context
            ),
            rows = ReadMeasures(map, "rows", "row height", context);
        if (
            fill is null
            || (columns is null && map["columns"] is not null)
            || (rows is null && map["rows"] is not null)
            || (places is null && map["places"] is not null)
        )
        {
            return null;
        }
        Sourced<string> setting = ReadContext.Text(map, "setting") is { } word
            ? ReadContext.Sourced(word)
            : new("straight", map.Span);
        bool medallion = setting.Value == Medallion.Word;
        if (!medallion)
        {
            RefuseMedallion(map, setting.Value, context);
        }
        return new QuiltDesign(
            setting,
            sashing,
            fill,
            borders,
            binding,
            backing,
            ReadContext.Flag(map, "batting", otherwise: true),
            map.Span
        )
        {
            Between = map["between"] is { } between
                ? FillReader.Read(between, colorings, context)
                : null,
            Triangles = ReadTriangles(map, unchanged ?? map, context),
            Ends = ReadContext.Text(map, "ends") is { } ends
                ? FillReader.ReadMap(ends, colorings, context)
                : null,
            AlongColumns = ReadContext.Text(map, "along") is { } along
                ? new Sourced<bool>(along.Value.Trim() == "columns", along.Span)
                : null,
            Places = places,
            Columns = columns,
            Rows = rows,
            RoundedCorners =
                ReadContext.Text(map, "rounded-corners") is { } radius
                && context.Measure(radius.Whole, "radius of the corners") is { } round
                    ? new Sourced<Length>(round, radius.Span)
                    : null,
            CenterSetting = medallion ? ReadCenter(map) : null,
            Rounds = medallion ? reader.Read(map, "rounds") : [],
            Patch = ReadPatch(map, context),
        };
    }

    /// <summary>How the center of a medallion is set: straight without a word about it.</summary>
    private static Sourced<string> ReadCenter(MapNode map) =>
        ReadContext.Text(map, "center") is { } word
            ? ReadContext.Sourced(word)
            : new("straight", map.Span);

    private static void RefuseMedallion(MapNode map, string setting, ReadContext context)
    {
        foreach (string key in new[] { "center", "rounds" })
        {
            if (map[key] is { } node)
            {
                context.Report(PP0243_KeyOfAnotherSetting.OfMedallion(node.Span, key, setting));
            }
        }
    }

    /// <summary>House rules as the quilt's backing changes them.</summary>
    public static House WithBacking(MapNode map, House house, ReadContext context)
    {
        var details = map["backing"] as MapNode;
        return house with
        {
            BackingWidth = context.Measure(details, "width", "backing width") ?? house.BackingWidth,
            BackingOverhang =
                context.Measure(details, "overhang", "backing overhang", allowZero: true)
                ?? house.BackingOverhang,
        };
    }

    private static SashingDesign? ReadSashing(MapNode quilt, ReadContext context)
    {
        if (ReadContext.Map(quilt, "sashing") is not { } map)
        {
            return null;
        }
        Length? width = context.Measure(map, "width", "sashing width");
        Sourced<string>? fabric = context.FabricName(map, "fabric", "the sashing");
        Sourced<string>? cornerstones = context.FabricName(map, "cornerstones", "a cornerstone");
        return width is { } w && fabric is { } f
            ? new SashingDesign(
                w,
                f,
                cornerstones,
                ReadContext.Flag(map, "around", otherwise: false),
                map.Span
            )
            : null;
    }

    // "6 12 6"; with commas, or as a list, a measure may have blanks: "6 1/2, 12 in".
    private static Sourced<ImmutableArray<Length>>? ReadMeasures(
        MapNode quilt,
        string key,
        string what,
        ReadContext context
    )
    {
        if (quilt[key] is not { } node)
        {
            return null;
        }
        ImmutableArray<Slice> words = node switch
        {
            ScalarNode text when text.Value.Contains(',') => text.Whole.Split(','),
            ScalarNode text => text.Words(),
            ListNode list => [.. list.Items.OfType<ScalarNode>().Select(s => s.Whole.Trim())],
            _ => [],
        };
        Length?[] measures = [.. words.Select(word => context.Measure(word, what))];
        return measures.Length == 0 || measures.Contains(null)
            ? null
            : new Sourced<ImmutableArray<Length>>([.. measures.OfType<Length>()], node.Span);
    }

    private static PatchDesign? ReadPatch(MapNode quilt, ReadContext context)
    {
        if (ReadContext.Map(quilt, "patch") is not { } map)
        {
            return null;
        }
        Length? height = context.Measure(map, "height", "height of a row");
        PatchShape shape = ReadContext.Text(map, "shape")?.Value switch
        {
            "diamond" => PatchShape.Diamond,
            "hexagon" => PatchShape.Hexagon,
            _ => PatchShape.Triangle,
        };
        return height is { } high ? new PatchDesign(shape, high, map.Span) : null;
    }

    private static TriangleDesign? ReadTriangles(
        MapNode quilt,
        MapNode unchanged,
        ReadContext context
    )
    {
        switch (quilt["triangles"])
        {
            case ScalarNode { IsEmpty: false } text:
                return context.FabricName(text.Whole.Trim(), "a setting triangle") is { } fabric
                    ? new TriangleDesign(fabric, fabric, Length.Zero, text.Span)
                    : null;
            case MapNode map:
                Sourced<string>? sides = context.FabricName(map, "fabric", "a setting triangle");
                if (sides is null && unchanged["triangles"] is ScalarNode { IsEmpty: false } one)
                {
                    sides = context.FabricName(one.Whole.Trim(), "a setting triangle");
                }
                Sourced<string>? corners = context.FabricName(map, "corners", "a corner triangle");
                Length? away = context.Measure(map, "float", "float", allowZero: true);
                return sides is { } named
                    ? new TriangleDesign(named, corners ?? named, away ?? Length.Zero, map.Span)
                    : null;
            default:
                return null;
        }
    }

    private static BindingDesign? ReadBinding(MapNode quilt, ReadContext context)
    {
        switch (quilt["binding"])
        {
            case ScalarNode { IsEmpty: false } text:
                return context.FabricName(text.Whole.Trim(), "the binding") is { } fabric
                    ? new BindingDesign(fabric, null, text.Span)
                    : null;
            case MapNode map:
                Length? width = context.Measure(map, "width", "binding width");
                return context.FabricName(map, "fabric", "the binding") is { } named
                    ? new BindingDesign(named, width, map.Span)
                    {
                        Bias = ReadContext.Text(map, "cut")?.Value == "bias",
                    }
                    : null;
            default:
                return null;
        }
    }
}
