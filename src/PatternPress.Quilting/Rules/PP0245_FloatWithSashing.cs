using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>Blocks on point are to float and have sashing around them.</summary>
public sealed class PP0245_FloatWithSashing : ReadingRule
{
    public static PP0245_FloatWithSashing Instance { get; } = new();

    private PP0245_FloatWithSashing()
        : base("PP0245", Severity.Error, "Float with sashing") { }

    /// <param name="triangles">Where the float is named.</param>
    public static Diagnostic Found(Span triangles, Span sashing) =>
        Instance.Report(
            triangles,
            "blocks with sashing around them do not float: the side of the quilt passes through the outer cornerstones",
            "a float",
            hint: "leave out the float; the sashing keeps the blocks' points off the edge already",
            others: new Label(sashing, "and sashing")
        );
}
