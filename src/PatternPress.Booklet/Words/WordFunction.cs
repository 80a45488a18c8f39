using System.Collections.Immutable;

namespace PatternPress.Booklet.Words;

/// <summary>
/// A function that templates may call: short texts, numbers or lists in, text out, no effects.
/// </summary>
/// <param name="Name">What templates call it.</param>
/// <param name="Required">How many values it must be given.</param>
/// <param name="Optional">How many more it may be given.</param>
/// <param name="Call">The function. Values left out are not in the list.</param>
public sealed record WordFunction(
    string Name,
    int Required,
    int Optional,
    Func<ImmutableArray<object?>, WordAnswer> Call
);
