using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A fabric's picture is said to lie outside the pattern's folder.</summary>
public sealed class PP0425_ImageOutsideFolder : ReadingRule
{
    public static PP0425_ImageOutsideFolder Instance { get; } = new();

    private PP0425_ImageOutsideFolder()
        : base("PP0425", Severity.Error, "Image outside the pattern's folder") { }

    /// <param name="problem">What is wrong with the path: "it leads out of the pattern's folder".</param>
    public static Diagnostic Found(Span file, string path, string problem) =>
        Instance.Report(
            file,
            $"\"{path}\" cannot be the path of an image: {problem}",
            "not below the pattern's folder",
            "Whoever builds the pattern elsewhere has only its folder, and a pattern from a stranger should not reach for other files.",
            "copy the image beside the pattern's file and write its path from there, with slashes: swatches/ink.jpg"
        );
}
