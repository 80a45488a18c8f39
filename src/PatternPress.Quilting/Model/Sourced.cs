using PatternPress.Source;

namespace PatternPress.Quilting.Model;

/// <summary>A value with the place in the source that it was read from.</summary>
public readonly record struct Sourced<T>(T Value, Span Span)
{
    public override string ToString() => Value?.ToString() ?? "";
}
