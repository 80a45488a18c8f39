using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Kinds;

namespace PatternPress.Quilting.Techniques.Sketching;

/// <summary>How a section grows on its paper. The printed side is drawn mirrored, as it is printed; the fabric lies on the other.
/// </summary>
internal sealed class FoundationPictures(UnitForm form, House house)
{
    private readonly SlantLine _upright = SlantLine.Upright(form.Width / 2);

    private Rect Whole =>
        new(
            -house.Seam,
            -house.Seam,
            form.Width + (house.Seam * 2),
            form.Height + (house.Seam * 2)
        );

    /// <summary>The printed paper with its lines and numbers.</summary>
    public Sketch Printed() => new([Paper().Done() with { Labels = Numbers(mirrored: true) }]);

    /// <summary>The first piece on the blank side.</summary>
    public Sketch First() => Fabric(1);

    /// <summary>The seam sewn on the printed side along the first line.</summary>
    public Sketch Second()
    {
        FrameDrawing paper = Paper();
        if (FoundationSection.SeamOf(form, 1) is { } seam)
        {
            paper.Sewn(_upright.Mirror(seam.From), _upright.Mirror(seam.To));
        }
        return new([paper.Done() with { Labels = Numbers(mirrored: true) }]);
    }

    public Sketch Opened() => Fabric(2);

    public Sketch Next() =>
        form.Patches.Length > 3
            ? new Sketch([
                Fabric(3).Frames[0],
                Fabric(form.Patches.Length).Frames[0] with
                {
                    Link = FrameLink.Then,
                },
            ])
            : Fabric(form.Patches.Length);

    public Sketch Finished() =>
        new([
            Sewn(house.Seam + Ways.FoundationPaper.Margin).CutRound(Whole).Done(),
            Sewn(house.Seam)
                .Size(
                    Whole,
                    Sewing.UnfinishedWidth,
                    form.Width == form.Height ? null : Sewing.UnfinishedHeight
                )
                .Done(FrameLink.Then),
        ]);

    // All pieces, reaching so far beyond the section.
    private FrameDrawing Sewn(Length beyond)
    {
        var drawing = new FrameDrawing();
        foreach (RolePatch patch in form.Patches)
        {
            drawing.Right(
                new Polygon([
                    .. patch.Shape.Corners.Select(c => new Point(
                        Out(c.X, form.Width, beyond),
                        Out(c.Y, form.Height, beyond)
                    )),
                ]),
                patch.Role
            );
        }
        return drawing;
    }

    private FrameDrawing Paper()
    {
        var drawing = new FrameDrawing().Shape(Whole.ToPolygon(), -1, FabricSide.Right);
        foreach (RolePatch patch in form.Patches)
        {
            drawing.Shape(_upright.Mirror(patch.Shape), -1, FabricSide.Right);
        }
        return drawing;
    }

    private ImmutableArray<SketchLabel> Numbers(bool mirrored) =>
        [
            .. form.Patches.Select(
                (patch, i) =>
                    new SketchLabel(
                        mirrored ? _upright.Mirror(Middle(patch.Shape)) : Middle(patch.Shape),
                        null,
                        $"{i + 1}"
                    )
            ),
        ];

    // The fabric side with the first so many pieces; the paper shows where none lies.
    private Sketch Fabric(int count)
    {
        var drawing = new FrameDrawing().Shape(Whole.ToPolygon(), -1, FabricSide.Right);
        for (int i = 0; i < count; i++)
        {
            drawing.Right(form.Patches[i].Shape, form.Patches[i].Role);
        }
        return drawing;
    }

    private static Length Out(Length at, Length far, Length beyond) =>
        at.Sign == 0 ? -beyond
        : at == far ? far + beyond
        : at;

    private static Point Middle(Polygon shape)
    {
        Length x = Length.Zero,
            y = Length.Zero;
        foreach (Point corner in shape.Corners)
        {
            x += corner.X;
            y += corner.Y;
        }
        return new Point(x / shape.Corners.Length, y / shape.Corners.Length);
    }
}
