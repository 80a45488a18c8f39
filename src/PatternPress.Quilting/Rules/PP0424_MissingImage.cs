using PatternPress.Quilting.Pictures;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A fabric's picture is not where the source says.</summary>
public sealed class PP0424_MissingImage : ReadingRule
{
    public static PP0424_MissingImage Instance { get; } = new();

    private PP0424_MissingImage()
        : base("PP0424", Severity.Error, "Image that is not there") { }

    public static Diagnostic Found(Span file, string path, PictureReading.Missing missing)
    {
        string? nearest = Nearest.To(path, missing.Near);
        return Instance.Report(
            file,
            $"there is no image \"{path}\"",
            "no such file",
            $"Images are looked for beside the pattern's file{(missing.Near.IsEmpty ? "" : $"; there are {string.Join(", ", missing.Near.Take(5))}{(missing.Near.Length > 5 ? " and more" : "")}")}.",
            nearest is null
                ? "put the image there, or leave it out and give a color and a print"
                : $"did you mean `{nearest}`?"
        );
    }

    public static Diagnostic Unreadable(Span file, string path, string why) =>
        Instance.Report(
            file,
            $"the image \"{path}\" cannot be read",
            "cannot be read",
            why,
            "see that it is a file that you may read"
        );
}
