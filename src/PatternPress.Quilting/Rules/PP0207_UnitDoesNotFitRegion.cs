using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Techniques;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A unit cannot fill the region drawn for it.</summary>
public sealed class PP0207_UnitDoesNotFitRegion : ReadingRule
{
    public static PP0207_UnitDoesNotFitRegion Instance { get; } = new();

    private PP0207_UnitDoesNotFitRegion()
        : base("PP0207", Severity.Error, "Unit that does not fit its region") { }

    /// <param name="problem">What the kind of unit objects to.</param>
    /// <param name="region">The region's first cell in the map.</param>
    /// <param name="width">Finished width of the region at this size.</param>
    /// <param name="height">Finished height.</param>
    /// <param name="size">The size's key; null if it fails at the size the block names.</param>
    public static Finding Found(
        UnitProblem problem,
        Span region,
        string letter,
        string block,
        Length width,
        Length height,
        string? size
    )
    {
        Diagnostic diagnostic = Instance.Report(
            problem.Span,
            problem.Title,
            $"unit \"{letter}\" of block \"{block}\"",
            size is null ? problem.Text : "",
            problem.Hint,
            new Label(
                region,
                size is null ? $"{Wording.Measure(width, height)} finished" : "the region"
            )
        );
        return new Finding(
            diagnostic,
            size,
            size is null ? ""
                : problem.Text.Length > 0 ? problem.Text
                : $"the region is {Wording.Measure(width, height)} finished"
        );
    }
}
