using PatternPress.Quilting.Measures;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>The strips of a one-patch quilt cannot be cut by the ruler.</summary>
public sealed class PP0258_StripBetweenMarks : ReadingRule
{
    public static PP0258_StripBetweenMarks Instance { get; } = new();

    private PP0258_StripBetweenMarks()
        : base("PP0258", Severity.Error, "Strip between two marks") { }

    /// <param name="place">The patch.</param>
    /// <param name="strip">Cut height of a strip.</param>
    /// <param name="nearest">The nearest height of a row whose strips can be cut.</param>
    public static Diagnostic Found(
        Span place,
        string size,
        Length height,
        Length strip,
        Length nearest
    ) =>
        Instance.Report(
            place,
            $"rows of {Wording.Measure(height)} take strips that no mark of the ruler shows",
            $"with its seams a strip of size {size} is {Wording.Measure(strip)}",
            hint: $"make the rows {Wording.Measure(nearest)} high"
        );
}
