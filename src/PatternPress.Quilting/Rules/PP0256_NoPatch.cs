using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A one-patch quilt does not say what its patches are.</summary>
public sealed class PP0256_NoPatch : ReadingRule
{
    public static PP0256_NoPatch Instance { get; } = new();

    private PP0256_NoPatch()
        : base("PP0256", Severity.Error, "One-patch without a patch") { }

    /// <param name="place">The setting's word.</param>
    public static Diagnostic Found(Span place) =>
        Instance.Report(
            place,
            "a one-patch quilt needs the shape of its patches",
            "set one-patch",
            hint: "write their shape and the finished height of a row under quilt: patch: {shape: triangle, height: 4}"
        );
}
