using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>Too few colorings to scatter them so that no neighbours are alike.</summary>
public sealed class PP0224_ScatterTooTight : ReadingRule
{
    public static PP0224_ScatterTooTight Instance { get; } = new();

    private PP0224_ScatterTooTight()
        : base("PP0224", Severity.Error, "Scatter with too few colorings") { }

    /// <param name="fill">The fill.</param>
    /// <param name="colorings">How many different colorings it lists.</param>
    public static Finding Found(Span fill, int colorings, string? size, int columns, int rows) =>
        new(
            Instance.Report(
                fill,
                $"{Wording.Count(colorings, "coloring", "colorings")} cannot be scattered so that no neighbors match",
                "too few to choose from",
                hint: colorings < 2
                    ? "scatter at least two colorings"
                    : "add a coloring, or use a checkerboard"
            ),
            size,
            $"{columns} × {rows} places"
        );
}
