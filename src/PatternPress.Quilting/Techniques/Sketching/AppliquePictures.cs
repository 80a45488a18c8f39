using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Ways;

namespace PatternPress.Quilting.Techniques.Sketching;

/// <summary>How shapes are traced, fused and laid down.</summary>
internal sealed class AppliquePictures(UnitForm form, House house)
{
    private readonly SlantLine _upright = SlantLine.Upright(form.Width / 2);

    private Rect Whole =>
        new(
            -house.Seam,
            -house.Seam,
            form.Width + (house.Seam * 2),
            form.Height + (house.Seam * 2)
        );

    /// <summary>All shapes mirrored, as they are printed.</summary>
    public Sketch Traced()
    {
        var drawing = new FrameDrawing();
        foreach (Overlay overlay in form.Overlays)
        {
            drawing.Shape(_upright.Mirror(overlay.Shape), -1, FabricSide.Right);
        }
        return drawing;
    }

    /// <summary>The first shape on the wrong side of its fabric.</summary>
    public Sketch Fused()
    {
        Polygon shape = _upright.Mirror(form.Overlays[0].Shape);
        return new FrameDrawing()
            .Wrong(Around(shape).ToPolygon(), form.Overlays[0].Role)
            .Shape(shape, -1, FabricSide.Right);
    }

    public Sketch CutOut() =>
        new FrameDrawing().Right(form.Overlays[0].Shape, form.Overlays[0].Role);

    /// <summary>The ground with the first shape, then with all.</summary>
    public Sketch Placed() =>
        form.Overlays.Length == 1
            ? new Sketch([Laid(1).Done()])
            : new Sketch([Laid(1).Done(), Laid(form.Overlays.Length).Done(FrameLink.Then)]);

    public Sketch Finished() =>
        Laid(form.Overlays.Length)
            .Size(
                Whole,
                Sewing.UnfinishedWidth,
                form.Width == form.Height ? null : Sewing.UnfinishedHeight
            );

    private FrameDrawing Laid(int count)
    {
        var drawing = new FrameDrawing().Right(Whole.ToPolygon(), form.RoleCount - 1);
        foreach (Overlay overlay in form.Overlays.Take(count))
        {
            drawing.Right(overlay.Shape, overlay.Role);
        }
        return drawing;
    }

    private static Rect Around(Polygon shape)
    {
        Rect bounds = shape.Bounds;
        Length more = FusedApplique.Margin;
        return new Rect(
            bounds.X - more,
            bounds.Y - more,
            bounds.Width + (more * 2),
            bounds.Height + (more * 2)
        );
    }
}
