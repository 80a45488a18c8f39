using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>Blocks are set on point and no fabric is named for the triangles along the edge.</summary>
public sealed class PP0242_NoTriangles : ReadingRule
{
    public static PP0242_NoTriangles Instance { get; } = new();

    private PP0242_NoTriangles()
        : base("PP0242", Severity.Error, "On point without triangles") { }

    /// <param name="setting">The setting's word.</param>
    public static Diagnostic Found(Span setting) =>
        Instance.Report(
            setting,
            "blocks on point need triangles along the edge, and no fabric is named for them",
            "set on point",
            hint: "name their fabric under quilt: triangles: A"
        );
}
