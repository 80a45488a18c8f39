using System.Collections.Immutable;

namespace PatternPress.Source.Shapes;

/// <summary>
/// One of several shapes, told apart by kind: at most one scalar, one list and one map shape, so that a message always
/// knows which was meant.
/// </summary>
public sealed record EitherShape(string What, string Description, ImmutableArray<Shape> Shapes)
    : Shape(What, Description);
