using System.Globalization;
using System.Text;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Fonts;
using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Typesetting.Pages;

/// <summary>Writes a page or a drawing as SVG 1.1. Letters stay text, in the families named; the caller provides the fonts.</summary>
public static class PagesAsSvg
{
    /// <summary>A page.</summary>
    public static string Write(Page page) =>
        Write(page.Items, page.Paper.Width, page.Paper.Height, null);

    /// <summary>A drawing at its natural size.</summary>
    /// <param name="styles">Whose running text gives the font family of labels that name none.</param>
    /// <param name="title">What it shows, in words.</param>
    public static string Write(
        Drawing drawing,
        TextMeasurer measurer,
        StyleSheet styles,
        string? title = null
    )
    {
        var assembler = new PageAssembler(new LayoutContext(measurer, styles));
        assembler.Add(drawing, Points.Zero, Points.Zero, drawing.NaturalWidth);
        return Write(assembler.ToItems(), drawing.NaturalWidth, drawing.NaturalHeight, title);
    }

    static string Write(IEnumerable<PageItem> items, Points width, Points height, string? title)
    {
        var svg = new StringBuilder();
        svg.Append("<svg xmlns=\"http://www.w3.org/2000/svg\"")
            .Append($" width=\"{N(width.Value)}pt\" height=\"{N(height.Value)}pt\"")
            .Append($" viewBox=\"0 0 {N(width.Value)} {N(height.Value)}\"")
            .Append(title is null ? ">" : " role=\"img\">")
            .Append(title is null ? "" : $"<title>{XmlText.Escape(title)}</title>")
            .Append('\n');
        var names = 0;
        Write(svg, items, ref names);
        return svg.Append("</svg>\n").ToString();
    }

    static void Write(StringBuilder svg, IEnumerable<PageItem> items, ref int names)
    {
        foreach (var item in items)
        {
            switch (item)
            {
                case PageItem.Path path:
                    Write(svg, path, ref names);
                    break;
                case PageItem.Text text:
                    Write(svg, text);
                    break;
                case PageItem.Clip clip:
                    var name = $"c{++names}";
                    var rule = clip.EvenOdd ? " clip-rule=\"evenodd\"" : "";
                    svg.Append(
                        $"<clipPath id=\"{name}\"><path d=\"{Data(clip.Outline)}\"{rule}/></clipPath>"
                    );
                    svg.Append($"<g clip-path=\"url(#{name})\">\n");
                    Write(svg, clip.Items, ref names);
                    svg.Append("</g>\n");
                    break;
            }
        }
    }

    static void Write(StringBuilder svg, PageItem.Path path, ref int names)
    {
        var fill = path.Fill?.ToString() ?? "none";
        if (path.Image is { } image)
        {
            var name = $"i{++names}";
            var tile = image.Tile;
            svg.Append(
                    $"<pattern id=\"{name}\" width=\"1\" height=\"1\" patternUnits=\"userSpaceOnUse\""
                )
                .Append(
                    $" patternTransform=\"matrix({N(tile.A)} {N(tile.B)} {N(tile.C)} {N(tile.D)} {N(tile.E)} {N(tile.F)})\">"
                )
                .Append("<image width=\"1\" height=\"1\" preserveAspectRatio=\"none\"")
                .Append(
                    $" href=\"data:{image.Image.MediaType};base64,{Convert.ToBase64String(image.Image.Encoded.AsSpan())}\"/></pattern>\n"
                );
            fill = $"url(#{name})";
        }

        svg.Append($"<path d=\"{Data(path.Outline)}\" fill=\"{fill}\"");
        if (path.EvenOdd)
        {
            svg.Append(" fill-rule=\"evenodd\"");
        }

        if (path.Stroke is { } stroke)
        {
            svg.Append($" stroke=\"{stroke.Ink}\" stroke-width=\"{N(stroke.Width.Value)}\"");
            svg.Append(
                stroke.Cap == StrokeCap.Butt ? "" : $" stroke-linecap=\"{Lower(stroke.Cap)}\""
            );
            svg.Append(
                stroke.Join == StrokeJoin.Miter ? "" : $" stroke-linejoin=\"{Lower(stroke.Join)}\""
            );
            if (!stroke.Dashes.IsEmpty)
            {
                svg.Append(
                    $" stroke-dasharray=\"{string.Join(' ', stroke.Dashes.Select(dash => N(dash.Value)))}\""
                );
            }
        }

        svg.Append("/>\n");
    }

    static void Write(StringBuilder svg, PageItem.Text text)
    {
        svg.Append($"<text x=\"{N(text.X.Value)}\" y=\"{N(text.Baseline.Value)}\"");
        svg.Append(
            $" font-family=\"{XmlText.Escape(text.Face.Family)}\" font-size=\"{N(text.Size.Value)}\""
        );
        svg.Append(text.Face.Bold ? " font-weight=\"bold\"" : "")
            .Append(text.Face.Italic ? " font-style=\"italic\"" : "");
        svg.Append(text.Ink == Ink.Black ? "" : $" fill=\"{text.Ink}\"");
        svg.Append(
            text.Width > Points.Zero
                ? $" textLength=\"{N(text.Width.Value)}\" lengthAdjust=\"spacingAndGlyphs\""
                : ""
        );
        if (text.Degrees != 0)
        {
            svg.Append(
                $" transform=\"rotate({N(text.Degrees)} {N(text.X.Value)} {N(text.Baseline.Value)})\""
            );
        }

        svg.Append($" xml:space=\"preserve\">{XmlText.Escape(text.Characters)}</text>\n");
    }

    static string Data(VectorPath path)
    {
        var data = new StringBuilder();
        var point = 0;
        foreach (var verb in path.Verbs)
        {
            data.Append(
                verb switch
                {
                    PathVerb.Move => 'M',
                    PathVerb.Line => 'L',
                    PathVerb.Curve => 'C',
                    _ => 'Z',
                }
            );
            for (var i = 0; i < VectorPath.PointsOf(verb); i++, point++)
            {
                data.Append(i > 0 ? " " : "")
                    .Append(N(path.Points[point].X))
                    .Append(' ')
                    .Append(N(path.Points[point].Y));
            }
        }

        return data.ToString();
    }

    static string Lower(Enum value) => value.ToString().ToLowerInvariant();

    static string N(double value) =>
        Math.Round(value, 3).ToString("0.###", CultureInfo.InvariantCulture);
}
