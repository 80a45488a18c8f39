using System.Collections.Immutable;
using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Pages;

namespace PatternPress.Typesetting.Drawings;

/// <summary>Turns a drawing's marks into page items at a place on the sheet.</summary>
sealed class DrawingPainter
{
    readonly LayoutContext context;
    ImmutableArray<PageItem>.Builder items;

    DrawingPainter(LayoutContext context, ImmutableArray<PageItem>.Builder items) =>
        (this.context, this.items) = (context, items);

    public static void Paint(
        LayoutContext context,
        Drawing drawing,
        PageRect place,
        ImmutableArray<PageItem>.Builder items
    )
    {
        var scale = drawing.Width > 0 ? place.Width.Value / drawing.Width : 1;
        var toPage = Transform.Scale(scale).Then(Transform.Move(place.X.Value, place.Y.Value));
        new DrawingPainter(context, items).Paint(drawing.Marks, toPage);
    }

    void Paint(ImmutableArray<Mark> marks, Transform toPage)
    {
        foreach (var mark in marks)
        {
            switch (mark)
            {
                case Mark.Outline outline:
                    Paint(outline, toPage);
                    break;
                case Mark.Line line:
                    LinePainter.Paint(line, toPage.Apply(line.From), toPage.Apply(line.To), items);
                    break;
                case Mark.Label label:
                    LabelPainter.Paint(context, label, toPage.Apply(label.At), items);
                    break;
                case Mark.Group group:
                    Paint(group.Marks, group.Transform.Then(toPage));
                    break;
                case Mark.Clip clip:
                    PaintClipped(clip, toPage);
                    break;
            }
        }
    }

    void Paint(Mark.Outline mark, Transform toPage)
    {
        var path = mark.Path.Transformed(toPage);
        var image = mark.Image is { } fill ? fill with { Tile = fill.Tile.Then(toPage) } : null;
        if (mark.Hatch is not { } hatch)
        {
            items.Add(
                new PageItem.Path(path, mark.Fill, mark.Stroke, mark.EvenOdd) { Image = image }
            );
            return;
        }

        if (mark.Fill is not null || image is not null)
        {
            items.Add(new PageItem.Path(path, mark.Fill, null, mark.EvenOdd) { Image = image });
        }

        var strokes = HatchPainter.Paint(hatch, path);
        if (!strokes.IsEmpty)
        {
            items.Add(new PageItem.Clip(path, strokes, mark.EvenOdd));
        }

        if (mark.Stroke is not null)
        {
            items.Add(new PageItem.Path(path, null, mark.Stroke));
        }
    }

    void PaintClipped(Mark.Clip clip, Transform toPage)
    {
        var outer = items;
        items = ImmutableArray.CreateBuilder<PageItem>();
        Paint(clip.Marks, toPage);
        var inner = items.DrainToImmutable();
        items = outer;
        items.Add(new PageItem.Clip(clip.Path.Transformed(toPage), inner));
    }
}
