using System.Collections.Immutable;
using PatternPress.Typesetting.Inlines;

namespace PatternPress.Typesetting.Drawings;

/// <summary>Collects the marks of a drawing, back to front.</summary>
public sealed class DrawingBuilder
{
    readonly ImmutableArray<Mark>.Builder marks = ImmutableArray.CreateBuilder<Mark>();

    public DrawingBuilder Add(Mark mark)
    {
        marks.Add(mark);
        return this;
    }

    /// <summary>An area with any of a flat fill, a hatch, an outline and an image.</summary>
    public DrawingBuilder Area(
        VectorPath path,
        Ink? fill = null,
        Stroke? stroke = null,
        HatchFill? hatch = null,
        ImageFill? image = null
    ) =>
        Add(
            new Mark.Outline(path)
            {
                Fill = fill,
                Image = image,
                Hatch = hatch,
                Stroke = stroke,
            }
        );

    public DrawingBuilder Line(
        XY from,
        XY to,
        Stroke stroke,
        Arrowhead start = Arrowhead.None,
        Arrowhead end = Arrowhead.None
    ) => Add(new Mark.Line(from, to, stroke) { Start = start, End = end });

    /// <summary>Words at a point; fractions written as in "2 1/2" are set as fractions.</summary>
    public DrawingBuilder Label(string text, XY at, LabelStyle? style = null) =>
        Add(new Mark.Label(FractionText.Parse(text), at, style ?? LabelStyle.Plain));

    public DrawingBuilder Label(ImmutableArray<Inline> content, XY at, LabelStyle? style = null) =>
        Add(new Mark.Label(content, at, style ?? LabelStyle.Plain));

    /// <summary>Marks moved, turned or scaled together.</summary>
    public DrawingBuilder Group(Transform transform, Action<DrawingBuilder> draw) =>
        Add(new Mark.Group(transform, Collect(draw)));

    /// <summary>Marks of which only what lies inside the path shows.</summary>
    public DrawingBuilder Clip(VectorPath path, Action<DrawingBuilder> draw) =>
        Add(new Mark.Clip(path, Collect(draw)));

    /// <summary>Another drawing, scaled to fit a box and centred in it.</summary>
    public DrawingBuilder Place(Drawing drawing, double x, double y, double width, double height)
    {
        var scale = Math.Min(width / drawing.Width, height / drawing.Height);
        var (left, top) = (
            x + ((width - (drawing.Width * scale)) / 2),
            y + ((height - (drawing.Height * scale)) / 2)
        );
        return Add(
            new Mark.Group(Transform.Scale(scale).Then(Transform.Move(left, top)), drawing.Marks)
        );
    }

    /// <summary>The marks collected so far.</summary>
    public ImmutableArray<Mark> ToMarks() => marks.ToImmutable();

    /// <summary>The drawing: its size in its own units and the size of a unit on paper (1 pt if not given).</summary>
    public Drawing ToDrawing(double width, double height, Points? unitSize = null) =>
        new(width, height, ToMarks()) { UnitSize = unitSize ?? new Points(1_000) };

    static ImmutableArray<Mark> Collect(Action<DrawingBuilder> draw)
    {
        var inner = new DrawingBuilder();
        draw(inner);
        return inner.ToMarks();
    }
}
