using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Techniques.Sketching;

/// <summary>Strips sewn side by side, cut at 45° and joined upright. Only the end of a set of strips is drawn.</summary>
/// <param name="strip">Cut width of the stripes.</param>
/// <param name="edge">Cut width of the outer strips.</param>
/// <param name="segment">Distance of the cuts.</param>
internal sealed class SeminolePictures(
    UnitForm form,
    Length strip,
    Length edge,
    Length segment,
    House house
)
{
    private readonly Sewing _sewing = new(form, house);

    private int Stripes => form.RoleCount - 1;

    private Length Pitch => Allowance.Diagonal(segment);

    private Length Shown => High + (Pitch * new Rational(5, 2));

    private Length High => (edge * 2) + (strip * Stripes) - (house.Seam * 2 * (Stripes + 1));

    private ImmutableArray<(int Role, Length Top, Length Bottom)> Rows
    {
        get
        {
            var rows = ImmutableArray.CreateBuilder<(int, Length, Length)>();
            Length top = Length.Zero,
                bottom = edge - house.Seam;
            rows.Add((Stripes, top, bottom));
            for (int i = 0; i < Stripes; i++)
            {
                (top, bottom) = (bottom, bottom + strip - (house.Seam * 2));
                rows.Add((i, top, bottom));
            }
            rows.Add((Stripes, bottom, High));
            return rows.ToImmutable();
        }
    }

    /// <summary>The strips apart, then sewn.</summary>
    public Sketch Sew()
    {
        var apart = new FrameDrawing();
        Length gap = strip / 3,
            at = Length.Zero;
        ImmutableArray<int> roles = [Stripes, .. Enumerable.Range(0, Stripes), Stripes];
        for (int i = 0; i < roles.Length; i++)
        {
            bool outer = i == 0 || i == roles.Length - 1;
            Length high = outer ? edge : strip;
            apart.Right(new Rect(Length.Zero, at, Shown, high).ToPolygon(), roles[i]);
            if (i < 2)
            {
                // At either end, so that the two keep apart however narrow the strips are.
                if (outer)
                {
                    apart.Line(
                        SketchLineKind.Dimension,
                        new Point(Shown, at),
                        new Point(Shown, at + high),
                        "edge strip"
                    );
                }
                else
                {
                    apart.Line(
                        SketchLineKind.Dimension,
                        new Point(Length.Zero, at + high),
                        new Point(Length.Zero, at),
                        "strip"
                    );
                }
            }
            at += high + gap;
        }
        return new Sketch([apart.Done(), Whole(FabricSide.Right).Done(FrameLink.Then)]);
    }

    /// <summary>The folded set with its cuts, then the two segments of a pair as they lie.</summary>
    public Sketch Cut()
    {
        FrameDrawing folded = Whole(FabricSide.Wrong);
        for (int i = 0; i < 3; i++)
        {
            Length x = Pitch * i;
            folded.Cut(new Point(x, High), new Point(x + High, Length.Zero));
        }
        return new Sketch([
            folded.Done(),
            Slice(true).Done(FrameLink.Then),
            Slice(false).Done(FrameLink.And),
        ]);
    }

    /// <summary>Segments upright in their order, then joined.</summary>
    public Sketch Join()
    {
        int each = Stripes + 2,
            segments = form.Patches.Length / each;
        return new Sketch([
            _sewing
                .Apart([
                    .. Enumerable
                        .Range(0, segments)
                        .Select(k => (Enumerable.Range(k * each, each).ToImmutableArray(), k, 0)),
                ])
                .Done(),
            _sewing
                .Opened(
                    _sewing.All,
                    [.. Enumerable.Range(1, segments - 1).Select(k => (k * each, (k - 1) * each))]
                )
                .Done(FrameLink.Then),
        ]);
    }

    public Sketch Finish(Length larger) => _sewing.Finish(true, larger, 1);

    private FrameDrawing Whole(FabricSide side)
    {
        var drawing = new FrameDrawing();
        foreach ((int role, Length top, Length bottom) in Rows)
        {
            drawing.Shape(new Rect(Length.Zero, top, Shown, bottom - top).ToPolygon(), role, side);
        }
        return drawing;
    }

    // Between two cuts; the other layer's is its mirror image.
    private FrameDrawing Slice(bool rising)
    {
        var drawing = new FrameDrawing();
        foreach ((int role, Length top, Length bottom) in Rows)
        {
            Length low = rising ? High - top : top,
                high = rising ? High - bottom : bottom;
            drawing.Right(
                new Polygon([
                    new Point(low, top),
                    new Point(low + Pitch, top),
                    new Point(high + Pitch, bottom),
                    new Point(high, bottom),
                ]),
                role
            );
        }
        return drawing;
    }
}
