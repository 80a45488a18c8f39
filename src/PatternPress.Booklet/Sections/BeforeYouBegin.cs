using System.Collections.Immutable;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Tables;
using PatternPress.Typesetting.Blocks;

namespace PatternPress.Booklet.Sections;

/// <summary>What holds for the whole pattern: seam allowance, width of fabric, pressing, letters and numbers.</summary>
internal sealed class BeforeYouBegin : Section
{
    public override string Name => "before-you-begin";

    public override ImmutableArray<Block> Build(SectionContext context)
    {
        CutRow? example = context.Tables.Cutting.SelectMany(c => c.Rows).FirstOrDefault();
        CuttingTable? cutting = context.Tables.Cutting.FirstOrDefault(c =>
            c.Rows.Contains(example!)
        );
        return context.Fill(
            Name,
            WordData
                .Empty.With("example_id", example is null ? null : MarkdownText.Escape(example.Id))
                .With(
                    "example_fabric",
                    cutting is null ? null : MarkdownText.Escape(cutting.Fabric)
                )
                .With("numbers", context.Tables.Fabrics.Any(f => f.Key.Any(char.IsDigit)))
                .With("trimming", context.Tables.Units.Any(Trims)),
            null,
            Name
        );
    }

    private static bool Trims(UnitTable unit) =>
        unit.Rows.Any(row => row.BySize.Any(cell => cell is { Trim: true }));
}
