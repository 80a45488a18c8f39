using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Rules;

namespace PatternPress.Quilting.Settings;

/// <summary>What a setting lays out: the coloring of every place of one size, and the blocks to draw them with.</summary>
/// <param name="Cells">Line by line, as <see cref="Setting.Places"/> has them.</param>
/// <param name="Findings">What does not fit is reported here.</param>
public sealed record Layout(
    Pattern Pattern,
    SizeDesign Size,
    BlockSet Blocks,
    FillCell[][] Cells,
    FindingCollector Findings
)
{
    public QuiltDesign Design => Size.Quilt;
}
