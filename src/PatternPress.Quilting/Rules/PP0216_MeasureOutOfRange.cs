using PatternPress.Quilting.Measures;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A measure is negative, zero where something is wanted, or larger than makes sense.</summary>
public sealed class PP0216_MeasureOutOfRange : ReadingRule
{
    public static PP0216_MeasureOutOfRange Instance { get; } = new();

    private PP0216_MeasureOutOfRange()
        : base("PP0216", Severity.Error, "Measure out of range") { }

    /// <param name="what">What the measure is for: "width of border 1".</param>
    /// <param name="least">The least sensible value.</param>
    /// <param name="most">The largest sensible value.</param>
    public static Diagnostic Found(
        Span span,
        string what,
        Length value,
        Length least,
        Length most
    ) =>
        Instance.Report(
            span,
            $"{what} cannot be {Wording.Measure(value)}",
            value < least ? "too small" : "too large",
            value.Sign < 0 ? "A measure cannot be negative." : "",
            $"use {Wording.Measure(least)} to {Wording.Measure(most)}"
        );

    /// <summary>The measure must be more than zero and has no other least value.</summary>
    public static Diagnostic NotPositive(Span span, string what, Length value) =>
        Instance.Report(
            span,
            $"{what} cannot be {Wording.Measure(value)}",
            value.Sign < 0 ? "negative" : "zero",
            hint: "use a measure larger than zero"
        );
}
