namespace PatternPress.Typesetting.Inlines;

/// <summary>
/// A number with a fraction, for example 12 1/2: set with the font's own fraction where it has one, else composed of small
/// numerals; read aloud and copied as <c>12 1/2</c>. Never broken over lines.
/// </summary>
/// <param name="Whole">The whole number in front, or nothing.</param>
public sealed record Fraction(string Whole, int Numerator, int Denominator) : Inline
{
    /// <summary>The number in plain characters, for example <c>12 1/2</c>.</summary>
    public string Plain =>
        Whole.Length == 0 ? $"{Numerator}/{Denominator}" : $"{Whole} {Numerator}/{Denominator}";
}
