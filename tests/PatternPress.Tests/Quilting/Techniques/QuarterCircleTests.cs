using System.Collections.Immutable;
using CsCheck;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;
using NUnit.Framework;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Techniques;
using PatternPress.Quilting.Techniques.Kinds;
using PatternPress.Quilting.Techniques.Ways;
using Shouldly;
using Geometry = NetTopologySuite.Geometries.Geometry;
using Point = PatternPress.Quilting.Geometry.Point;
using Polygon = PatternPress.Quilting.Geometry.Polygon;

namespace PatternPress.Tests.Quilting.Techniques;

public class QuarterCircleTests
{
    private static readonly Gen<(Length Side, Length Radius, Length Seam)> Sizes = Gen.Select(
        Gen.Int[8, 96],
        Gen.Int[10, 90],
        Gen.OneOf(1, 2, 3),
        (side, share, eighths) =>
        {
            Length seam = Length.FromInches(new Rational(eighths, 16));
            Length whole = Length.FromInches(new Rational(side, 8)) + seam;
            return (whole, seam + ((whole - seam) * new Rational(share, 100)), seam);
        }
    );

    // A square of 4 in with a radius of 3 in: π 9/4 for the quarter circle, the rest of 16 for its ground.
    [Test]
    public void Areas_hold_pi_apart()
    {
        UnitForm form = QuarterCircle.FormOf(Length.FromInches(4), Length.FromInches(3));
        Area pie = form.Patches[0].Shape.Area,
            ground = form.Patches[1].Shape.Area;
        pie.ShouldBe(new Area(0, new Rational(9, 4)));
        ground.ShouldBe(new Area(16, new Rational(-9, 4)));
        (pie + ground).ShouldBe(new Area(16));
        pie.ToDouble().ShouldBe(7.0685834705770345, 1e-12);
        ground.CompareTo(pie).ShouldBe(1);
        pie.ToString().ShouldBe("(9/4)π sq in");
        ground.ToString().ShouldBe("16 + (-9/4)π sq in");
    }

    [Test]
    public void Arcs_go_with_their_shape()
    {
        UnitForm form = QuarterCircle.FormOf(Length.FromInches(4), Length.FromInches(3));
        foreach (RolePatch patch in form.Patches)
        {
            for (int quarters = 0; quarters < 4; quarters++)
            {
                Polygon turned = patch
                    .Shape.Turned(new Turn(quarters), form.Width, form.Height)
                    .MoveBy(new Point(Length.FromInches(7), Length.FromInches(1)));
                turned.Area.ShouldBe(patch.Shape.Area);
                for (int corner = 0; corner < turned.Corners.Length; corner++)
                {
                    Polygon other = turned.FromCorner(corner);
                    other.Area.ShouldBe(patch.Shape.Area);
                    other.FromCorner(turned.Corners.Length - corner).ShouldNotBeNull();
                }
            }
        }
        form.Patches[0]
            .Shape.ShouldNotBe(
                new Polygon(form.Patches[0].Shape.Corners),
                "a triangle of the same corners is another shape"
            );
    }

    [Test]
    public void Straight_pieces_lie_on_the_arc_and_are_shared_by_both_sides() =>
        Sizes.Sample(
            size =>
            {
                UnitForm form = QuarterCircle.FormOf(size.Side, size.Radius);
                ImmutableArray<Point> pie = form.Patches[0].Shape.Straightened().Corners,
                    ground = form.Patches[1].Shape.Straightened().Corners;
                ImmutableArray<Point> onArc = pie[1..];
                foreach (Point point in onArc)
                {
                    Math.Sqrt(Math.Pow(Double(point.X), 2) + Math.Pow(Double(point.Y), 2))
                        .ShouldBe(Double(size.Radius), 1e-12);
                    ground.ShouldContain(point);
                }
                double area = ToNts(new Polygon(pie)).Area,
                    round = form.Patches[0].Shape.Area.ToDouble();
                area.ShouldBeLessThan(round);
                area.ShouldBe(round, round * 1e-3);
            },
            iter: 60
        );

    /// <summary>The cut line is the seam line moved outward by the seam allowance, but for the ends of the arc.</summary>
    [Test]
    public void Templates_are_the_finished_shapes_with_their_seams() =>
        Sizes.Sample(
            size =>
            {
                UnitForm form = QuarterCircle.FormOf(size.Side, size.Radius);
                double seam = size.Seam.Inches.ToDouble();
                foreach (
                    PieceTemplate template in new[]
                    {
                        QuarterCircleTemplates.PieOf(form, size.Seam),
                        QuarterCircleTemplates.GroundOf(form, size.Seam),
                    }
                )
                {
                    Geometry finished = ToNts(template.Seam),
                        cut = ToNts(template.Cut);
                    cut.IsValid.ShouldBeTrue();
                    cut.Covers(finished.Buffer(-1e-9)).ShouldBeTrue();
                    // Every place of the cut line is a seam from the seam line, or farther at a squared-off corner.
                    foreach (Coordinate place in cut.Coordinates)
                    {
                        double away = finished.Distance(new GeometryFactory().CreatePoint(place));
                        away.ShouldBeInRange(seam * (1 - 2e-3), (seam * Math.Sqrt(2)) + 1e-9);
                    }
                    // What rounded corners would have is inside.
                    Geometry buffered = BufferOp.Buffer(
                        finished,
                        seam,
                        new BufferParameters { JoinStyle = JoinStyle.Round }
                    );
                    buffered.Difference(cut).Area.ShouldBeLessThan(cut.Area * 1e-2);
                    Notch notch = template.Notches.ShouldHaveSingleItem();
                    Square(notch.OnSeam).ShouldBe(size.Radius.Inches * size.Radius.Inches);
                    Exact out_ = (notch.OnCut - notch.OnSeam).X.Inches;
                    (out_ * out_ * 2).ShouldBe(size.Seam.Inches * size.Seam.Inches);
                }
            },
            iter: 60
        );

    /// <summary>Cut along r + s and r − s the raw edges of both pieces are one length apart: the seam has one length, rπ/2.</summary>
    [Test]
    public void Both_pieces_are_sewn_along_one_arc() =>
        Sizes.Sample(
            size =>
            {
                UnitForm form = QuarterCircle.FormOf(size.Side, size.Radius);
                PieceTemplate pie = QuarterCircleTemplates.PieOf(form, size.Seam),
                    ground = QuarterCircleTemplates.GroundOf(form, size.Seam);
                pie.Seam.Arcs[0]
                    .RadiusSquared(pie.Seam)
                    .ShouldBe(ground.Seam.Arcs[0].RadiusSquared(ground.Seam));
                Length outer = size.Radius + size.Seam,
                    inner = size.Radius - size.Seam;
                pie.Cut.Arcs[0].RadiusSquared(pie.Cut).ShouldBe(outer.Inches * outer.Inches);
                ground.Cut.Arcs[0].RadiusSquared(ground.Cut).ShouldBe(inner.Inches * inner.Inches);
                pie.Cut.Arcs[0].IsConvex(pie.Cut).ShouldBeTrue();
                ground.Cut.Arcs[0].IsConvex(ground.Cut).ShouldBeFalse();
                // (r + s)²π/4 + 2s(r + s) + s².
                pie.Cut.Area.ShouldBe(
                    new Area(
                        (size.Seam * 2 * outer).SquareInches + (size.Seam * size.Seam).SquareInches,
                        (outer * outer).SquareInches / 4
                    )
                );
            },
            iter: 60
        );

    // Creative Curves, "Drunkard's Path" instructions, creativecurves.com/wdrpathins.htm: for the radius of 3 in the background is cut
    // from a square of 4 1/2 in, the quarter circle from one of 3 1/2 in; the background is traditionally 1 in larger.
    [Test]
    public void Pieces_are_planned_by_the_square_that_holds_them()
    {
        Recipe recipe = Recipes.Of(
            "quarter-circle-templates",
            "quarter-circle upper-left of 3, a on b",
            "4"
        );
        Recipes
            .Cuts(recipe)
            .ShouldBe("1 quarter circle [0] 3 1/2 × 3 1/2; 1 background [1] 4 1/2 × 4 1/2");
        recipe.Pieces.ShouldAllBe(p => p.Cut == PieceCut.AroundTemplate && p.Template != null);
        recipe.Trim.ShouldBeFalse();
    }

    [Test]
    public void A_radius_within_the_seam_cannot_be_sewn()
    {
        UnitForm form = Written.Form("quarter-circle upper-left of 1/4, a on b", "4");
        Recipes
            .Technique("quarter-circle-templates")
            .CanMake(form, Recipes.Inches, out string reason)
            .ShouldBeFalse();
        reason.ShouldBe("a radius of 1/4 in leaves no edge inside a seam of 1/4 in");
    }

    private static double Double(Length length) => length.Inches.ToDouble();

    private static Exact Square(Point p) => (p.X.Inches * p.X.Inches) + (p.Y.Inches * p.Y.Inches);

    private static Geometry ToNts(Polygon polygon)
    {
        Coordinate[] ring =
        [
            .. polygon
                .Straightened()
                .Corners.Select(c => new Coordinate(c.X.Inches.ToDouble(), c.Y.Inches.ToDouble())),
        ];
        return new GeometryFactory().CreatePolygon([.. ring, ring[0]]);
    }
}
