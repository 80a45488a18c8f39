using System.Collections.Immutable;

namespace PatternPress.Booklet.Words;

/// <summary>
/// A value that may differ by quilt size, as text. Reads as one value where all sizes agree, else with the sizes it
/// holds for: "3 1/2 in (crib, throw) or 4 1/2 in (queen)".
/// </summary>
/// <param name="Values">Size name and value, in the pattern's order of sizes.</param>
/// <param name="Or">The word between the last two values, from the labels.</param>
public sealed record Sized(ImmutableArray<(string Size, string Value)> Values, string Or)
{
    /// <summary>Whether every size has the same value.</summary>
    public bool IsOne =>
        Values.Length > 0 && Values.All(v => string.Equals(v.Value, Values[0].Value));

    /// <summary>The value all sizes share; null where they differ.</summary>
    public string? One => IsOne ? Values[0].Value : null;

    public bool Equals(Sized? other) =>
        other is not null && Or == other.Or && Values.AsSpan().SequenceEqual(other.Values.AsSpan());

    public override int GetHashCode() => HashCode.Combine(Values.Length, Or);

    public override string ToString()
    {
        if (Values.IsEmpty)
        {
            return "";
        }
        if (IsOne)
        {
            return Values[0].Value;
        }
        List<string> parts =
        [
            .. Values
                .GroupBy(v => v.Value, StringComparer.Ordinal)
                .Select(g => $"{g.Key} ({string.Join(", ", g.Select(v => v.Size))})"),
        ];
        return $"{string.Join(", ", parts.SkipLast(1))} {Or} {parts[^1]}";
    }
}
