using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A row of a one-patch quilt has no whole patch.</summary>
public sealed class PP0259_RowTooShort : ReadingRule
{
    public static PP0259_RowTooShort Instance { get; } = new();

    private PP0259_RowTooShort()
        : base("PP0259", Severity.Error, "Row too short") { }

    /// <param name="place">The size.</param>
    /// <param name="places">Across.</param>
    /// <param name="least">Places a row needs.</param>
    public static Diagnostic Found(Span place, string size, int places, int least) =>
        Instance.Report(
            place,
            $"rows of {places} places are too short",
            $"size {size} has {places} across",
            hint: $"make it at least {least} across"
        );
}
