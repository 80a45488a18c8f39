using System.Collections.Immutable;
using PatternPress.Quilting.Techniques;

namespace PatternPress.Quilting.Cutting;

/// <summary>
/// Units that are made by the same steps in every size: one kind, one form a size, one technique. The fabrics are
/// told apart by its classes.
/// </summary>
/// <param name="Number">From 1, in the order the blocks use them; the booklet's "Unit 1".</param>
/// <param name="Forms">The finished form by size, in the order of the quilts; null where no block of the size uses it.</param>
/// <param name="Technique">How it is made, in all sizes.</param>
/// <param name="Classes">One for each combination of fabrics.</param>
public sealed record UnitShape(
    int Number,
    ImmutableArray<UnitForm?> Forms,
    Technique Technique,
    ImmutableArray<UnitClass> Classes
)
{
    public UnitKind Kind => Forms.First(form => form is not null)!.Kind;
}
