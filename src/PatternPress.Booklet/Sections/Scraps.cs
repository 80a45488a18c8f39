using System.Collections.Immutable;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Tables;
using PatternPress.Typesetting.Blocks;

namespace PatternPress.Booklet.Sections;

/// <summary>All pieces by what their fabrics are for, for makers who cut from a stash rather than from yardage.</summary>
internal sealed class Scraps : Section
{
    public override string Name => "scraps";

    public override ImmutableArray<Block> Build(SectionContext context) =>
        context.Tables.Scraps is { } scraps
            ? context.Fill(
                Name,
                WordData.Empty.With("strips", scraps.Rows.Any(row => row.IsStrip)),
                new Dictionary<string, ImmutableArray<Block>>
                {
                    ["scraps"] = Table(scraps, context),
                },
                Name
            )
            : [];

    private static ImmutableArray<Block> Table(ScrapTable scraps, SectionContext context)
    {
        Labels labels = context.Labels;
        var table = new SizeTable(context, labels["piece"]) { Summary = labels["summary-scraps"] };
        string? role = null;
        foreach (ScrapRow row in scraps.Rows)
        {
            if (row.Role != role)
            {
                role = row.Role;
                table.Group($"{role} ({string.Join(", ", row.Fabrics)})");
            }
            // Shorter side first, as everywhere; of a print with an up the width.
            bool directional = row.Fabrics.Any(f => context.Fabric(f) is { Directional: true });
            (Length first, Length second) =
                directional && !row.IsStrip ? (row.Width, row.Height) : (row.Height, row.Width);
            string size = context.Numbers.Square(first, second);
            table.Add(
                [Cells.Head(Cells.Plain(row.IsStrip ? labels.Format("strip-of", size) : size))],
                i => row.BySize[i] is { } cell ? Cells.Strong($"{cell.Count}") : null
            );
        }
        return table.ToBlocks();
    }
}
