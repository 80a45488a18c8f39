using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Techniques.Sketching;

/// <summary>
/// Strips across the fabric, sewn side by side and cut into segments. A strip is far longer than it is wide, so only
/// its left end is drawn; a torn edge says that it runs on.
/// </summary>
/// <param name="strip">Cut width of a strip.</param>
/// <param name="segment">Cut width of a segment.</param>
internal sealed class StripPictures(Length strip, Length segment, House house)
{
    // Whole segments to show before the torn edge.
    private const int Shown = 3;

    private Length Gap => strip / 3;

    private Length ShownLength => (segment * Shown) + (segment / 2);

    // What a strip takes up once both its seams are sewn.
    private Length Sewn => strip - (house.Seam * 2);

    /// <summary>The strips of each set beside each other, then sewn, with the way the seams are pressed.</summary>
    /// <param name="oneWay">Whether all seams are pressed to the first strip.</param>
    public Sketch Sew(ImmutableArray<StripSet> sets, bool oneWay)
    {
        var frames = ImmutableArray.CreateBuilder<SketchFrame>();
        for (int n = 0; n < sets.Length; n++)
        {
            StripSet set = sets[n];
            var apart = new FrameDrawing();
            for (int i = 0; i < set.Roles.Length; i++)
            {
                Length top = (strip + Gap) * i;
                apart.Right(Torn(top, top + strip), set.Roles[i]);
            }
            // The dimension runs up the left end of the first strip, clockwise.
            apart.Line(
                SketchLineKind.Dimension,
                new Point(Length.Zero, strip),
                Point.Origin,
                "strip"
            );
            frames.Add(apart.Done());
            FrameDrawing sewn = Set(set);
            for (int i = 1; i < set.Roles.Length; i++)
            {
                Length seam = house.Seam + (Sewn * i);
                // Allowances go to every other strip, beginning with the first or the second by turns, so that
                // the seams of neighbouring rows lie in opposite directions.
                bool up =
                    oneWay || house.Pressing == PressingStyle.ToOneSide || (n + i - 1) % 2 == 0;
                SlantLine line = SlantLine.Level(seam);
                sewn.Press(up ? line.Reversed : line, new Point(segment, seam), strip / 4, house);
            }
            frames.Add(sewn.Done(FrameLink.Then));
        }
        return new Sketch(frames.ToImmutable());
    }

    /// <summary>A set folded along its length, right sides together, its outer strips sewn to each other.</summary>
    public Sketch Close(StripSet set)
    {
        FrameDrawing flat = Set(set);
        // Folded in the middle: the upper half lies wrong side up on the lower, its first strip on the last.
        var folded = new FrameDrawing();
        Length height = Height(set);
        int half = set.Roles.Length / 2;
        for (int i = half; i < set.Roles.Length; i++)
        {
            (Length top, Length bottom) = Place(set, i);
            folded.Right(Torn(top, bottom), set.Roles[i]);
        }
        for (int i = half - 1; i >= 0; i--)
        {
            (Length top, Length bottom) = Place(set, i);
            folded.Wrong(Torn(height - bottom, height - top), set.Roles[i]);
        }
        folded.Sewn(
            new Point(Length.Zero, height - house.Seam),
            new Point(ShownLength - (segment / 8), height - house.Seam)
        );
        return new Sketch([flat.Done(), folded.Done(FrameLink.Then)]);
    }

    /// <summary>Each set with the cuts across it, then one segment.</summary>
    public Sketch Cut(ImmutableArray<StripSet> sets)
    {
        var frames = ImmutableArray.CreateBuilder<SketchFrame>();
        foreach (StripSet set in sets)
        {
            FrameDrawing drawing = Set(set);
            Length bottom = Height(set);
            for (int i = 0; i <= Shown; i++)
            {
                drawing.Cut(new Point(segment * i, Length.Zero), new Point(segment * i, bottom));
            }
            drawing.Line(
                SketchLineKind.Dimension,
                Point.Origin,
                new Point(segment, Length.Zero),
                "segment"
            );
            frames.Add(drawing.Done());
            var one = new FrameDrawing();
            for (int i = 0; i < set.Roles.Length; i++)
            {
                (Length top, Length end) = Place(set, i);
                one.Right(new Rect(Length.Zero, top, segment, end - top).ToPolygon(), set.Roles[i]);
            }
            frames.Add(one.Done(FrameLink.Then));
        }
        return new Sketch(frames.ToImmutable());
    }

    private FrameDrawing Set(StripSet set)
    {
        var drawing = new FrameDrawing();
        for (int i = 0; i < set.Roles.Length; i++)
        {
            (Length top, Length bottom) = Place(set, i);
            drawing.Right(Torn(top, bottom), set.Roles[i]);
        }
        return drawing;
    }

    private Length Height(StripSet set) => (Sewn * set.Roles.Length) + (house.Seam * 2);

    private (Length Top, Length Bottom) Place(StripSet set, int index) =>
        (
            index == 0 ? Length.Zero : house.Seam + (Sewn * index),
            index == set.Roles.Length - 1 ? Height(set) : house.Seam + (Sewn * (index + 1))
        );

    // The left end of a strip, its right edge torn in four teeth.
    private Polygon Torn(Length top, Length bottom)
    {
        const int Teeth = 4;
        Length tooth = segment / 8;
        var corners = ImmutableArray.CreateBuilder<Point>();
        corners.Add(new Point(Length.Zero, top));
        for (int i = 0; i <= Teeth * 2; i++)
        {
            corners.Add(
                new Point(
                    i % 2 == 0 ? ShownLength : ShownLength - tooth,
                    top + ((bottom - top) * new Rational(i, Teeth * 2))
                )
            );
        }
        corners.Add(new Point(Length.Zero, bottom));
        return new Polygon(corners.ToImmutable());
    }
}
