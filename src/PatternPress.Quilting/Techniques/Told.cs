using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Techniques;

/// <summary>
/// Measures as messages tell them: in centimetres when a measure was typed in them, in inches otherwise. A
/// centimetre is 50/127 in, so the denominator tells which.
/// </summary>
internal static class Told
{
    /// <summary>"3 × 2 in", "7.5 × 5 cm".</summary>
    public static string Size(Length width, Length height) =>
        IsMetric(width) || IsMetric(height)
            ? $"{LengthText.Centimetres(width)} × {LengthText.Centimetres(height)} cm"
            : $"{LengthText.Inches(width)} × {LengthText.Inches(height)} in";

    /// <summary>"1 1/2 in", "4 cm".</summary>
    public static string One(Length length) =>
        IsMetric(length)
            ? $"{LengthText.Centimetres(length)} cm"
            : $"{LengthText.Inches(length)} in";

    /// <summary>A measure with roots, to three places: "5.328 in".</summary>
    public static string Decimal(Length length) =>
        IsMetric(length)
            ? $"{LengthText.Centimetres(length)} cm"
            : FormattableString.Invariant($"{length.Inches.ToDouble():0.###} in");

    private static bool IsMetric(Length length) =>
        length.Inches.One.Denominator % 127 == 0 || length.Inches.Root2.Denominator % 127 == 0;
}
