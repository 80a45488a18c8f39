using PatternPress.Quilting.Pictures;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A fabric's picture is broken, too large or of a kind that cannot be printed.</summary>
public sealed class PP0426_UnusableImage : ReadingRule
{
    public static PP0426_UnusableImage Instance { get; } = new();

    private PP0426_UnusableImage()
        : base("PP0426", Severity.Error, "Image that cannot be used") { }

    public static Diagnostic Found(Span file, string path, PictureReading.Unusable image) =>
        Instance.Report(
            file,
            $"the image \"{path}\" cannot be used: {image.What}",
            "this image",
            "PNG and JPEG can be used, in grey or RGB, with or without a color profile of a camera or screen.",
            image.Remedy
        );
}
