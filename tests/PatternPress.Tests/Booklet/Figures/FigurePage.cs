using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using PatternPress.Booklet.Figures;
using PatternPress.Tests.Typesetting;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Inlines;
using PatternPress.Typesetting.Pages;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Tests.Booklet.Figures;

/// <summary>A figure set on a page of its own at its printed size, so that its letters are the real ones.</summary>
internal static class FigurePage
{
    private const int Margin = 20;

    public static TypesetDocument Typeset(Picture picture, string family = "Lato")
    {
        Drawing drawing = picture.Drawing;
        var frame = new PageFrame(
            new PaperSize(
                drawing.NaturalWidth + (2 * Margin).Pt,
                drawing.NaturalHeight + ((2 * Margin) + 1).Pt
            ),
            Insets.All(Margin.Pt)
        );
        var styles = new StyleSheet(
            Points.Zero,
            [new(StyleSheet.BodyName, new TextStyle { Family = family })]
        );
        return new Typesetter(TestFonts.Measurer).Typeset(
            new Document(
                new DocumentInformation("Figure", new DateOnly(2026, 11, 1)),
                styles,
                [new(frame, new Figure(drawing, picture.AltText))]
            )
        );
    }

    /// <summary>Every text on the page with the box of its ink, in the drawing's own points.</summary>
    public static ImmutableArray<(
        string Words,
        double X,
        double Y,
        double Width,
        double Height
    )> Texts(TypesetDocument document)
    {
        var found = ImmutableArray.CreateBuilder<(string, double, double, double, double)>();
        Collect(document.Pages[0].Items);
        return found.ToImmutable();

        void Collect(ImmutableArray<PageItem> items)
        {
            foreach (PageItem item in items)
            {
                if (item is PageItem.Clip clip)
                {
                    Collect(clip.Items);
                }
                else if (item is PageItem.Text text)
                {
                    PageRect ink = PageInspection.InkOf(text);
                    found.Add(
                        (
                            text.Characters,
                            ink.X.Value - Margin,
                            ink.Y.Value - Margin,
                            ink.Width.Value,
                            ink.Height.Value
                        )
                    );
                }
            }
        }
    }

    /// <summary>Every mark, those inside groups and clips too.</summary>
    public static IEnumerable<Mark> Marks(IEnumerable<Mark> marks)
    {
        foreach (Mark mark in marks)
        {
            yield return mark;
            IEnumerable<Mark> inner = mark switch
            {
                Mark.Group group => Marks(group.Marks),
                Mark.Clip clip => Marks(clip.Marks),
                _ => [],
            };
            foreach (Mark one in inner)
            {
                yield return one;
            }
        }
    }

    public static string Words(Mark.Label label) =>
        string.Concat(
            label.Content.Select(inline =>
                inline switch
                {
                    Run run => run.Text.Replace('\u00a0', ' '),
                    Fraction fraction => fraction.Plain,
                    _ => "",
                }
            )
        );

    /// <summary>The display list as text, one mark a line.</summary>
    public static string Text(Picture picture)
    {
        var text = new StringBuilder();
        text.Append(
            CultureInfo.InvariantCulture,
            $"size {picture.Drawing.Width} x {picture.Drawing.Height}\n"
        );
        foreach (Mark mark in picture.Drawing.Marks)
        {
            text.Append(Line(mark)).Append('\n');
        }
        return text.Append("alt ").Append(picture.AltText).Append('\n').ToString();
    }

    private static string Line(Mark mark) =>
        mark switch
        {
            Mark.Outline o => $"area {Path(o.Path)}"
                + (o.Fill is { } fill ? $" fill {fill}" : "")
                + (
                    o.Hatch is { } hatch
                        ? $" hatch {hatch.Hatch.Name} {hatch.Ink} x{N(hatch.Scale)}"
                        : ""
                )
                + (o.Stroke is { } stroke ? $" stroke {Pen(stroke)}" : ""),
            Mark.Line l =>
                $"line {XY(l.From)} {XY(l.To)} {Pen(l.Stroke)} {l.Start} {l.End} {l.HeadSize}",
            Mark.Label b => $"label \"{Words(b)}\" {XY(b.At)} {b.Style.Size} {b.Style.Ink}"
                + (b.Style.Bold ? " bold" : "")
                + (b.Style.Degrees != 0 ? $" {N(b.Style.Degrees)}°" : ""),
            Mark.Group g => "group " + string.Join("; ", g.Marks.Select(Line)),
            Mark.Clip c => $"clip {Path(c.Path)} " + string.Join("; ", c.Marks.Select(Line)),
            _ => mark.ToString(),
        };

    private static string Pen(Stroke stroke) =>
        $"{stroke.Width} {stroke.Ink}"
        + (stroke.Dashes.IsDefaultOrEmpty ? "" : $" [{string.Join(" ", stroke.Dashes)}]");

    private static string Path(VectorPath path)
    {
        var text = new StringBuilder();
        int next = 0;
        foreach (PathVerb verb in path.Verbs)
        {
            text.Append("MLCZ"[(int)verb]);
            for (int i = 0; i < VectorPath.PointsOf(verb); i++)
            {
                text.Append(i > 0 ? " " : "").Append(XY(path.Points[next++]));
            }
        }
        return text.ToString();
    }

    private static string XY(XY p) => $"{N(p.X)},{N(p.Y)}";

    private static string N(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
