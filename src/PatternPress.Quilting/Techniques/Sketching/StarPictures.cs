using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Techniques.Sketching;

/// <summary>Eight-pointed stars: strips sliced into diamonds, and the steps in which they are joined.</summary>
/// <param name="strip">Cut width of the strips.</param>
internal sealed class StarPictures(UnitForm form, Length strip, House house)
{
    private readonly Sewing _sewing = new(form, house);

    private Length Pitch => Allowance.Diagonal(strip);

    /// <summary>The end of a strip with cuts at 45°, then a diamond.</summary>
    public Sketch CutDiamonds()
    {
        Length o = Length.Zero,
            shown = strip + (Pitch * new Rational(5, 2));
        var whole = new Rect(o, o, shown, strip);
        FrameDrawing drawing = new FrameDrawing().Right(whole.ToPolygon(), 0);
        for (int i = 0; i < 3; i++)
        {
            Length at = Pitch * i;
            drawing.Cut(new Point(at, strip), new Point(at + strip, o));
        }
        drawing.Line(
            SketchLineKind.Dimension,
            new Point(o, strip),
            Point.Origin,
            StarPieces.Diamond
        );
        var diamond = new Polygon([
            new Point(strip, o),
            new Point(strip + Pitch, o),
            new Point(Pitch, strip),
            new Point(o, strip),
        ]);
        return new Sketch([
            drawing.Done(),
            new FrameDrawing().Right(diamond, 0).Done(FrameLink.Then),
        ]);
    }

    /// <summary>Two groups right sides together, then opened.</summary>
    /// <param name="at">A patch of each between which the seam lies.</param>
    public Sketch Join(
        ImmutableArray<int> lower,
        ImmutableArray<int> upper,
        (int Lower, int Upper) at,
        int count = 1
    ) =>
        new([
            _sewing.Together(lower, upper, _sewing.Seam(at.Lower, at.Upper)).Done(),
            _sewing.Opened([.. lower, .. upper], (at.Upper, at.Lower)).Done(FrameLink.Then, count),
        ]);

    /// <summary>Groups beside each other, then together.</summary>
    public Sketch SetIn(
        ImmutableArray<int> group,
        int patch,
        (int Right, int Down) aside,
        ImmutableArray<int> beside,
        int count = 1
    ) =>
        new([
            _sewing.Apart((group, 0, 0), ([patch], aside.Right, aside.Down)).Done(),
            _sewing
                .Opened([.. group, patch], [.. beside.Select(other => (patch, other))])
                .Done(FrameLink.Then, count),
        ]);

    public FrameDrawing Opened(
        ImmutableArray<int> group,
        params ReadOnlySpan<(int From, int To)> pressed
    ) => _sewing.Opened(group, pressed);

    public Sketch Finish(bool trim, Length larger) => _sewing.Finish(trim, larger, 1);

    public ImmutableArray<int> All => _sewing.All;
}
