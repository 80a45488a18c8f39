using PatternPress.Source;

namespace PatternPress.Quilting.Techniques;

/// <summary>Why a unit cannot be drawn.</summary>
/// <param name="Kind">Words: what is written makes no sense for the kind. Region: the region has the wrong shape.</param>
/// <param name="Span">The words to blame.</param>
/// <param name="Title">One phrase: "flying geese need a region twice as long as high".</param>
/// <param name="Text">The numbers.</param>
/// <param name="Hint">What to do.</param>
public sealed record UnitProblem(
    UnitProblemKind Kind,
    Span Span,
    string Title,
    string Text,
    string? Hint
);

public enum UnitProblemKind
{
    Words,
    Region,
}
