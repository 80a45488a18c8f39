using System.Collections.Immutable;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Cutting;

/// <summary>How a pattern is made in all its sizes: units, pieces, strips, yardage, finishing.</summary>
/// <param name="Shapes">The units to sew, by the steps they share.</param>
/// <param name="Blocks">What each coloring is made of, in the order of the source.</param>
/// <param name="Sizes">In the order of the quilts.</param>
/// <param name="Problems">All that could not be worked out; what they touch is left out of the sizes.</param>
public sealed record Making(
    Pattern Pattern,
    ImmutableArray<UnitShape> Shapes,
    ImmutableArray<BlockMakeup> Blocks,
    ImmutableArray<SizeMaking> Sizes,
    ImmutableArray<MakingProblem> Problems
);
