using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>Staggered lines have nothing at their ends.</summary>
public sealed class PP0264_NoEnds : ReadingRule
{
    public static PP0264_NoEnds Instance { get; } = new();

    private PP0264_NoEnds()
        : base("PP0264", Severity.Error, "Staggered lines without half blocks") { }

    /// <param name="setting">The setting's word.</param>
    public static Diagnostic Found(Span setting) =>
        Instance.Report(
            setting,
            "every other line of a staggered quilt is shifted by half a block, and nothing fills its ends",
            "set staggered",
            hint: "name a coloring of a half block, or a plain one, under quilt: ends: H"
        );
}
