using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Rules;
using PatternPress.Source;
using PatternPress.Source.Syntax;

namespace PatternPress.Quilting.Reading;

/// <summary>Reads the borders of a quilt, and the rounds of a medallion, which are borders.</summary>
/// <param name="colorings">The colorings that could be read.</param>
internal sealed class BorderReader(ImmutableArray<Coloring> colorings, ReadContext context)
{
    private static readonly string[] Sides = ["left", "top", "right", "bottom"];

    public ImmutableArray<BorderDesign> Read(MapNode quilt, string key)
    {
        var borders = ImmutableArray.CreateBuilder<BorderDesign>();
        foreach (MapNode map in (quilt[key] as ListNode)?.Items.OfType<MapNode>() ?? [])
        {
            if (ReadOne(map) is { } border)
            {
                borders.Add(border);
            }
        }
        return borders.ToImmutable();
    }

    private BorderDesign? ReadOne(MapNode map)
    {
        Length? width = context.Measure(map, "width", "border width");
        BorderWidths? widths = width is { } even ? new BorderWidths(even) : null;
        if (ReadContext.Map(map, "sides") is { } sides)
        {
            widths = ReadSides(sides, width ?? Length.Zero);
        }
        Sourced<string>? fabric = context.FabricName(map, "fabric", "a border");
        (BorderCorners corners, Sourced<string>? cornerFabric, FillCell? cornerBlock) = ReadCorners(
            map
        );
        BorderBlocks? blocks = ReadBlocks(map);
        CopingDesign? coping = ReadCoping(map);
        if (!GoTogether(map, widths, corners))
        {
            return null;
        }
        // What is missing here could not be read, and was reported.
        bool whole = map["blocks"] is not null
            ? blocks is not null
            : widths is not null && fabric is not null;
        return whole
            ? new BorderDesign(
                widths,
                fabric,
                corners,
                cornerFabric,
                ReadContext.Text(map, "name")?.Value,
                map.Span
            )
            {
                Blocks = blocks,
                CornerBlock = cornerBlock,
                Coping = coping,
            }
            : null;
    }

    private bool GoTogether(MapNode map, BorderWidths? widths, BorderCorners corners)
    {
        if (map["blocks"] is null)
        {
            foreach (string key in new[] { "middle", "after-middle", "coping" })
            {
                if (map[key] is { } alone)
                {
                    context.Report(
                        PP0253_BorderKeysThatDisagree.Beside(
                            alone.Span,
                            key,
                            "of strips",
                            "It says how blocks are laid along the sides.",
                            $"name the blocks (blocks: L1 L2), or leave out {key}"
                        )
                    );
                    return false;
                }
            }
            foreach (string key in new[] { "fabric", "width" })
            {
                if (map[key] is null && (key == "fabric" || map["sides"] is null))
                {
                    context.Report(PP0253_BorderKeysThatDisagree.Missing(map.Span, key));
                    return false;
                }
            }
            if (
                widths is { Even: null }
                && corners is BorderCorners.Mitered or BorderCorners.Squares or BorderCorners.Blocks
                && map["corners"] is { } turned
            )
            {
                context.Report(
                    PP0253_BorderKeysThatDisagree.Beside(
                        turned.Span,
                        $"corners: {Word(corners)}",
                        "whose sides differ",
                        corners == BorderCorners.Mitered
                            ? "A seam at 45° needs strips of one width."
                            : "A corner is a square only where the strips are of one width.",
                        "write corners: sides-first or corners: top-first, or give all sides one width"
                    )
                );
                return false;
            }
            return true;
        }
        foreach (string key in new[] { "fabric", "sides" })
        {
            if (map[key] is { } other)
            {
                context.Report(
                    PP0253_BorderKeysThatDisagree.Beside(
                        other.Span,
                        key,
                        "of blocks",
                        key == "fabric"
                            ? "The colorings of its blocks say which fabrics it is made of."
                            : "Its blocks make it as wide on all sides.",
                        $"leave out {key}, or make it a border of its own"
                    )
                );
                return false;
            }
        }
        if (corners == BorderCorners.Mitered)
        {
            context.Report(
                PP0253_BorderKeysThatDisagree.Beside(
                    map["corners"]!.Span,
                    "corners: mitered",
                    "of blocks",
                    "A miter would cut through the blocks at the ends.",
                    "write corners: blocks L1 or corners: squares B"
                )
            );
            return false;
        }
        return true;
    }

    private BorderWidths? ReadSides(MapNode sides, Length otherwise)
    {
        var widths = new Length[Sides.Length];
        for (int i = 0; i < Sides.Length; i++)
        {
            if (sides[Sides[i]] is null)
            {
                widths[i] = otherwise;
            }
            else if (
                context.Measure(sides, Sides[i], $"width of the {Sides[i]} border") is { } width
            )
            {
                widths[i] = width;
            }
            else
            {
                return null;
            }
        }
        return new BorderWidths(widths[0], widths[1], widths[2], widths[3]);
    }

    private BorderBlocks? ReadBlocks(MapNode map)
    {
        if (ReadContext.Text(map, "blocks") is not { } text)
        {
            return null;
        }
        FillCell? middle = null;
        ImmutableArray<FillCell>? second = null;
        if (ReadContext.Text(map, "middle") is { } one)
        {
            if (ReadCells(one) is not { } cells)
            {
                return null;
            }
            if (cells.Length != 1)
            {
                context.Report(
                    PP0230_WrongNumberOfEntries.Found(
                        one.Span,
                        "the middle of a border",
                        "one block: middle: L1",
                        cells.Length
                    )
                );
                return null;
            }
            middle = cells[0];
        }
        if (ReadContext.Text(map, "after-middle") is { } after)
        {
            if (ReadCells(after) is not { } cells)
            {
                return null;
            }
            second = cells;
        }
        return ReadCells(text) is { } repeat
            ? new BorderBlocks(repeat, middle, second, text.Span)
            : null;
    }

    private ImmutableArray<FillCell>? ReadCells(ScalarNode text)
    {
        var cells = ImmutableArray.CreateBuilder<FillCell>();
        bool whole = true;
        foreach (Slice word in text.Lines().SelectMany(line => line.Words()))
        {
            if (FillReader.ReadCell(word, colorings, context) is { } cell)
            {
                cells.Add(cell);
            }
            else
            {
                whole = false;
            }
        }
        return whole && cells.Count > 0 ? cells.ToImmutable() : null;
    }

    private CopingDesign? ReadCoping(MapNode border)
    {
        switch (border["coping"])
        {
            case ScalarNode { IsEmpty: false } text:
                return context.FabricName(text.Whole.Trim(), "the coping strip") is { } fabric
                    ? new CopingDesign(fabric, null, null, null, text.Span)
                    : null;
            case MapNode map:
                Length? least = context.Measure(map, "at-least", "least width of a coping strip"),
                    most = context.Measure(map, "at-most", "greatest width of a coping strip");
                return context.FabricName(map, "fabric", "the coping strip") is { } named
                    ? new CopingDesign(
                        named,
                        least,
                        most,
                        ReadContext.Text(map, "name")?.Value,
                        map.Span
                    )
                    : null;
            default:
                return null;
        }
    }

    private (BorderCorners Corners, Sourced<string>? Fabric, FillCell? Block) ReadCorners(
        MapNode map
    )
    {
        if (ReadContext.Text(map, "corners") is not { } text)
        {
            return (BorderCorners.SidesFirst, null, null);
        }
        ImmutableArray<Slice> words = text.Words();
        switch (words[0].Text)
        {
            case "sides-first" when words.Length == 1:
                return (BorderCorners.SidesFirst, null, null);
            case "top-first" when words.Length == 1:
                return (BorderCorners.TopFirst, null, null);
            case "mitered" when words.Length == 1:
                return (BorderCorners.Mitered, null, null);
            case "squares" when words.Length == 2:
                return context.FabricName(words[1], "a border's corner square") is { } fabric
                    ? (BorderCorners.Squares, fabric, null)
                    : (BorderCorners.SidesFirst, null, null);
            case "blocks" when words.Length == 2:
                return FillReader.ReadCell(words[1], colorings, context) is { } block
                    ? (BorderCorners.Blocks, null, block)
                    : (BorderCorners.SidesFirst, null, null);
            case "squares" or "blocks":
                bool squares = words[0].Text == "squares";
                context.Report(
                    PP0230_WrongNumberOfEntries.Found(
                        text.Span,
                        squares ? "corner squares" : "corner blocks",
                        squares ? "one fabric: squares B" : "one coloring: blocks L1",
                        words.Length - 1
                    )
                );
                break;
            default:
                context.Report(
                    PP0221_UnknownWord.Found(
                        text.Span,
                        text.Value,
                        "way to turn a border's corners",
                        SourceVocabulary.Words.Corners
                    )
                );
                break;
        }
        return (BorderCorners.SidesFirst, null, null);
    }

    private static string Word(BorderCorners corners) =>
        corners switch
        {
            BorderCorners.Mitered => "mitered",
            BorderCorners.Squares => "squares",
            _ => "blocks",
        };
}
