using System.Collections.Immutable;
using PatternPress.Typesetting.Fonts;
using PatternPress.Typesetting.Inlines;
using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Layout.Lines;
using PatternPress.Typesetting.Pages;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Typesetting.Drawings;

/// <summary>Sets the words of a label on one line at its point.</summary>
static class LabelPainter
{
    public static void Paint(
        LayoutContext context,
        Mark.Label label,
        XY at,
        ImmutableArray<PageItem>.Builder items
    )
    {
        var paragraph = Prepare(context, label.Content, label.Style);
        paragraph.ReportTo(context);
        var line = SetLine(paragraph);
        var (left, baseline) = Offsets(context, label.Style, line.Width);
        var turn = Transform.Turn(label.Style.Degrees);
        var parts = line
            .Parts.OfType<FragmentPart.Item>()
            .Select(part => part.PageItem is PageItem.Text text ? Placed(text) : part.PageItem)
            .ToList();
        if (label.Style.Halo > Points.Zero)
        {
            // Before all letters, so that the rim of one never covers another.
            items.AddRange(parts.OfType<PageItem.Text>().Select(text => Halo(label.Style, text)));
        }

        items.AddRange(
            parts.Where(part => part is PageItem.Text or PageItem.SpanBegin or PageItem.SpanEnd)
        );

        // The label is turned about its point, each of its parts by its own start.
        PageItem.Text Placed(PageItem.Text text)
        {
            var start = turn.Apply(
                new(
                    left.Value + text.X.Value,
                    baseline.Value - (paragraph.Baseline - text.Baseline).Value
                )
            );
            return text with
            {
                X = Points.Of(at.X + start.X),
                Baseline = Points.Of(at.Y + start.Y),
                Degrees = label.Style.Degrees,
            };
        }
    }

    // The rim is drawn with the letters' outlines, not as letters, so that nobody copies or hears the words twice.
    static PageItem.Path Halo(LabelStyle style, PageItem.Text text) =>
        new(
            GlyphOutlines
                .Of(text.Face, text.Size, text.Shape)
                .Transformed(
                    Transform
                        .Turn(text.Degrees)
                        .Then(Transform.Move(text.X.Value, text.Baseline.Value))
                ),
            style.HaloInk,
            new Stroke(style.Halo * 2, style.HaloInk) { Join = StrokeJoin.Round }
        );

    // From the label's point to the left end of its baseline.
    static (Points Left, Points Baseline) Offsets(
        LayoutContext context,
        LabelStyle style,
        Points width
    )
    {
        var face = Face(context, style);
        var capitals = TextMeasurer.CapHeight(face, style.Size);
        var left = style.Across switch
        {
            LabelAcross.Left => Points.Zero,
            LabelAcross.Right => -width,
            _ => -width / 2,
        };
        var baseline = style.Down switch
        {
            LabelDown.Middle => capitals / 2,
            LabelDown.Top => capitals,
            LabelDown.Bottom => TextMeasurer.ToPoints(face, style.Size, face.Font.Descender),
            _ => Points.Zero,
        };
        return (left, baseline);
    }

    static FontFace Face(LayoutContext context, LabelStyle style) =>
        context.Measurer.Fonts.Find(
            style.Family ?? context.Styles.Body.Family,
            style.Bold,
            style.Italic
        );

    static Paragraph Prepare(
        LayoutContext context,
        ImmutableArray<Inline> content,
        LabelStyle style
    )
    {
        var look = new TextStyle
        {
            Family = style.Family ?? context.Styles.Body.Family,
            Size = style.Size,
            Leading = style.Size,
            Bold = style.Bold,
            Italic = style.Italic,
            Ink = style.Ink,
        };
        return Paragraph.Prepare(context, look, content);
    }

    static Fragment SetLine(Paragraph paragraph)
    {
        var lines = LineBreaker.Break(
            paragraph.Atoms,
            0,
            Points.Unlimited,
            Points.Unlimited,
            balanced: false
        );
        return new LineSetter(paragraph, Points.Unlimited, Alignment.Left).Set(
            lines.AsSpan(),
            opens: true,
            tag: null
        );
    }
}
