using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A strippy quilt has no strips.</summary>
public sealed class PP0263_NoStrips : ReadingRule
{
    public static PP0263_NoStrips Instance { get; } = new();

    private PP0263_NoStrips()
        : base("PP0263", Severity.Error, "Strippy quilt without strips") { }

    /// <param name="setting">The setting's word.</param>
    public static Diagnostic Found(Span setting) =>
        Instance.Report(
            setting,
            "a strippy quilt needs the width and fabric of the strips between its columns",
            "set strippy",
            hint: "name them under quilt: sashing: {width: 3, fabric: A}, or write setting: straight"
        );
}
