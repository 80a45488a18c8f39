using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A quilt is set in sections and does not say how wide its columns and how high its rows are.</summary>
public sealed class PP0260_NoGrid : ReadingRule
{
    public static PP0260_NoGrid Instance { get; } = new();

    private PP0260_NoGrid()
        : base("PP0260", Severity.Error, "Sections without columns and rows") { }

    /// <param name="setting">The setting's word.</param>
    /// <param name="missing">"columns", "rows" or "columns and rows".</param>
    public static Diagnostic Found(Span setting, string missing) =>
        Instance.Report(
            setting,
            $"a quilt set in sections needs the finished widths of its columns and heights of its rows; the {missing} are missing",
            "set in sections",
            hint: "name them under quilt: columns: 6 12 6, or one measure for all: rows: 6"
        );
}
