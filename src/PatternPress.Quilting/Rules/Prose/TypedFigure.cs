using PatternPress.Quilting.Measures;
using PatternPress.Source;

namespace PatternPress.Quilting.Rules.Prose;

/// <summary>A number with a unit that a designer typed in prose.</summary>
/// <param name="Text">As typed: "3 1/2 yards".</param>
/// <param name="First">The number; the width of a pair.</param>
/// <param name="Second">The height of a pair; else null.</param>
internal sealed record TypedFigure(
    TypedFigureKind Kind,
    string Text,
    Rational First,
    Rational? Second,
    Span Span
);

internal enum TypedFigureKind
{
    /// <summary>"3 1/2 yards".</summary>
    Yards,

    /// <summary>"62 x 71 in", "62 × 71".</summary>
    Pair,

    /// <summary>"4 x 5 blocks".</summary>
    BlockGrid,

    /// <summary>"42 blocks".</summary>
    BlockCount,

    /// <summary>"12 in block", "12-inch blocks".</summary>
    BlockSize,
}
