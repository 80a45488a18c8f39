using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A quilt with freely placed blocks has no places.</summary>
public sealed class PP0268_NoPlaces : ReadingRule
{
    public static PP0268_NoPlaces Instance { get; } = new();

    private PP0268_NoPlaces()
        : base("PP0268", Severity.Error, "Free placement without places") { }

    /// <param name="setting">The setting's word.</param>
    public static Diagnostic Found(Span setting) =>
        Instance.Report(
            setting,
            "blocks are to be placed freely, and no places are given",
            "set free",
            hint: "list them under quilt: places: one a line, such as S at 0, 12"
        );
}
