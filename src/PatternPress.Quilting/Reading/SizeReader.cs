using System.Collections.Immutable;
using System.Globalization;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Rules;
using PatternPress.Source.Syntax;

namespace PatternPress.Quilting.Reading;

/// <summary>Reads <c>sizes:</c>.</summary>
internal static class SizeReader
{
    /// <summary>Far beyond any quilt; keeps a slip of the finger from filling the memory.</summary>
    private const int MostBlocks = 10_000;

    /// <summary>Far beyond any pattern; so is this for all its sizes together.</summary>
    private const int MostBlocksTogether = 30_000;

    /// <summary>A booklet with a column for each would have no room on its pages.</summary>
    private const int MostSizes = 40;

    public static ImmutableArray<SizeDesign> Read(
        MapNode? map,
        MapNode? quilt,
        House house,
        ImmutableArray<BlockDesign> blocks,
        ImmutableArray<Coloring> colorings,
        ReadContext context
    )
    {
        var sizes = ImmutableArray.CreateBuilder<SizeDesign>();
        if (quilt is null)
        {
            return [];
        }
        long together = 0;
        foreach (Entry entry in map?.Entries ?? [])
        {
            if (sizes.Count == MostSizes)
            {
                context.Report(
                    PP0220_TooManyBlocks.TooManySizes(
                        entry.Key.Span,
                        map!.Entries.Length,
                        MostSizes
                    )
                );
                break;
            }
            if (entry.Value is MapNode value)
            {
                SizeDesign? size = ReadSize(
                    entry.Key,
                    value,
                    quilt,
                    house,
                    colorings,
                    sizes.Count,
                    context
                );
                if (size is null)
                {
                    continue;
                }
                together += (long)size.Columns * size.Rows;
                if (together > MostBlocksTogether)
                {
                    context.Report(
                        PP0220_TooManyBlocks.TooManyTogether(
                            size.Span,
                            size.Key,
                            together,
                            MostBlocksTogether
                        )
                    );
                    break;
                }
                sizes.Add(size);
            }
        }
        return sizes.ToImmutable();
    }

    private static SizeDesign? ReadSize(
        ScalarNode key,
        MapNode map,
        MapNode quilt,
        House house,
        ImmutableArray<Coloring> colorings,
        int order,
        ReadContext context
    )
    {
        MapNode? change = ReadContext.Map(map, "change");
        MapNode own = Overlay(quilt, change);
        House rules = HouseReader.Read(ReadContext.Map(change, "house"), house, context);
        rules = QuiltReader.WithBacking(own, rules, context);
        Fill? fill = ReadContext.Text(map, "map") is { } drawn
            ? FillReader.ReadMap(drawn, colorings, context)
            : null;
        QuiltDesign? design = QuiltReader.Read(own, fill, colorings, context, quilt);
        if (design is not null && ReadContext.Text(map, "rounds") is { } rounds)
        {
            design = WithRounds(design, rounds, key.Value, context);
        }
        Length? block = context.Measure(map, "block", "block size");
        ScalarNode? blocks = ReadContext.Text(map, "blocks");
        (int Columns, int Rows)? grid = blocks is null
            ? null
            : context.Grid(blocks.Whole.Trim(), $"blocks of size \"{key.Value}\"");
        if (grid is { } g && ((long)g.Columns * g.Rows) > MostBlocks)
        {
            context.Report(
                PP0220_TooManyBlocks.Found(
                    blocks!.Span,
                    $"size \"{key.Value}\"",
                    g.Columns,
                    g.Rows,
                    MostBlocks
                )
            );
            return null;
        }
        return design is null || grid is null
            ? null
            : new SizeDesign(
                key.Value,
                ReadContext.Text(map, "name")?.Value.Trim() ?? Capitalized(key.Value),
                grid.Value.Columns,
                grid.Value.Rows,
                block,
                design,
                rules,
                order,
                key.Span
            );
    }

    private static QuiltDesign WithRounds(
        QuiltDesign design,
        ScalarNode text,
        string size,
        ReadContext context
    )
    {
        if (design.CenterSetting is null)
        {
            context.Report(
                PP0243_KeyOfAnotherSetting.OfMedallion(text.Span, "rounds", design.Setting.Value)
            );
            return design;
        }
        if (
            !int.TryParse(text.Value.Trim(), CultureInfo.InvariantCulture, out int count)
            || count < 0
        )
        {
            context.Report(
                PP0219_NotACount.NotANumber(text.Span, text.Value, $"rounds of size \"{size}\"")
            );
            return design;
        }
        if (count > design.Rounds.Length)
        {
            context.Report(
                PP0230_WrongNumberOfEntries.Found(
                    text.Span,
                    $"size \"{size}\"",
                    $"at most {design.Rounds.Length} rounds, as many as the quilt names",
                    count
                )
            );
            return design;
        }
        return design with { RoundsUsed = count };
    }

    /// <summary>
    /// The quilt with a size's changes laid over it. A list is replaced whole; a map is changed key by key.
    /// </summary>
    private static MapNode Overlay(MapNode quilt, MapNode? change)
    {
        if (change is null)
        {
            return quilt;
        }
        var entries = quilt.Entries.ToBuilder();
        foreach (Entry entry in change.Entries)
        {
            int at = entries.ToImmutable().IndexOf(quilt.Find(entry.Key.Value)!);
            if (at < 0)
            {
                entries.Add(entry);
            }
            else
            {
                // A fill names one way of filling, so another replaces it; sashing keeps what is not named.
                bool merge =
                    entry.Key.Value is not ("fill" or "between")
                    && entry.Value is MapNode
                    && entries[at].Value is MapNode;
                entries[at] = merge
                    ? entry with
                    {
                        Value = Overlay((MapNode)entries[at].Value, (MapNode)entry.Value),
                    }
                    : entry;
            }
        }
        return quilt with { Entries = entries.ToImmutable() };
    }

    private static string Capitalized(string key) =>
        key.Length == 0 ? key : char.ToUpperInvariant(key[0]) + key[1..].Replace('-', ' ');
}
