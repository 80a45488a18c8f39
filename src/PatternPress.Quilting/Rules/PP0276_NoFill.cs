using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>Nothing says which blocks a size of the quilt is made of.</summary>
public sealed class PP0276_NoFill : ReadingRule
{
    public static PP0276_NoFill Instance { get; } = new();

    private PP0276_NoFill()
        : base("PP0276", Severity.Error, "Quilt without a fill") { }

    /// <param name="quilt">The quilt, which has no fill.</param>
    /// <param name="size">The key of the size, which has no map.</param>
    public static Finding Found(Span quilt, string size) =>
        new(
            Instance.Report(
                quilt with
                {
                    EndLine = quilt.StartLine,
                    EndColumn = quilt.StartColumn + 1,
                },
                "nothing says which blocks the quilt is made of",
                "the quilt has no `fill`",
                hint: "add a fill under quilt, a drawing of colorings such as fill: L1 L2, or a map to each size"
            ),
            size,
            ""
        );
}
