using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Pictures;
using PatternPress.Quilting.Rules;
using PatternPress.Source.Syntax;

namespace PatternPress.Quilting.Reading;

/// <summary>Reads <c>image:</c> of a fabric.</summary>
internal static class ClothReader
{
    /// <summary>How wide the cloth in a picture is where nothing is said.</summary>
    private static Length UsualWidth => Length.FromInches(4, 0, 1);

    /// <summary>More pixels for an inch of cloth than are seen in any drawing: one at a fifth of true scale at 300 dpi.</summary>
    private const double PixelsPerInch = 60;

    public static Cloth? Read(MapNode fabric, ReadContext context)
    {
        var map = ReadContext.Map(fabric, "image");
        if (
            (map is null ? ReadContext.Text(fabric, "image") : ReadContext.Text(map, "file"))
            is not { } file
        )
        {
            return null;
        }
        Length? given = context.Measure(map, "width", "width of cloth");
        if (given is null && map?["width"] is not null)
        {
            return null;
        }
        Length width = given ?? UsualWidth;
        string path = file.Value.Trim();
        if (PicturePath.Problem(path) is { } problem)
        {
            context.Report(PP0425_ImageOutsideFolder.Found(file.Span, path, problem));
            return null;
        }
        double across = Math.Min(width.Inches.ToDouble() * PixelsPerInch, int.MaxValue);
        switch (context.Pictures.Read(path, (int)Math.Ceiling(across)))
        {
            case PictureReading.Found { Picture: var picture }:
                return new Cloth(
                    path,
                    picture,
                    width,
                    width * new Rational(picture.Original.Height, picture.Original.Width)
                );
            case PictureReading.Missing missing:
                context.Report(PP0424_MissingImage.Found(file.Span, path, missing));
                break;
            case PictureReading.Unreadable { Why: var why }:
                context.Report(PP0424_MissingImage.Unreadable(file.Span, path, why));
                break;
            case PictureReading.Outside:
                context.Report(
                    PP0425_ImageOutsideFolder.Found(
                        file.Span,
                        path,
                        "it is a link that leads out of the pattern's folder"
                    )
                );
                break;
            case PictureReading.Unusable unusable:
                context.Report(PP0426_UnusableImage.Found(file.Span, path, unusable));
                break;
            default:
                break;
        }
        return null;
    }
}
