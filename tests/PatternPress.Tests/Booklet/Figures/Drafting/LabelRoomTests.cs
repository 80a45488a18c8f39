using CsCheck;
using NetTopologySuite.Geometries;
using PatternPress.Booklet.Figures.Drafting;

namespace PatternPress.Tests.Booklet.Figures.Drafting;

public sealed class LabelRoomTests
{
    [Test]
    public void A_square_takes_its_label_in_the_middle()
    {
        Spot? place = LabelRoom.Find(new Box(2, 3, 10, 10).Corners(), 4, 3);
        place.ShouldNotBeNull();
        place.Value.X.ShouldBe(7, 0.1);
        place.Value.Y.ShouldBe(8, 0.1);
    }

    [Test]
    public void A_long_strip_takes_its_label_half_way()
    {
        Spot? place = LabelRoom.Find(new Box(0, 0, 200, 8).Corners(), 6, 6);
        place.ShouldNotBeNull();
        place.Value.X.ShouldBe(100, 1);
    }

    [Test]
    public void A_corner_of_an_L_holds_what_its_arms_do_not()
    {
        Spot[] shape = [new(0, 0), new(4, 0), new(4, 6), new(10, 6), new(10, 10), new(0, 10)];
        Spot? place = LabelRoom.Find(shape, 3.5, 3.5);
        place.ShouldNotBeNull();
        LabelRoom.SlackOf(shape, place.Value, 3.5, 3.5).ShouldBeGreaterThanOrEqualTo(0);
        LabelRoom.Find(shape, 5, 5).ShouldBeNull();
    }

    [Test]
    public void In_a_right_triangle_a_box_fits_just_when_its_shares_add_up_to_one() =>
        // A w × h box in the corner of a right triangle with legs a and b touches the third side when w/a + h/b = 1.
        Gen.Select(Gen.Double[5, 60], Gen.Double[5, 60], Gen.Double[1, 12], Gen.Double[1, 12])
            .Sample(
                (a, b, w, h) =>
                {
                    Spot[] triangle = [new(0, 0), new(a, 0), new(0, b)];
                    Spot? place = LabelRoom.Find(triangle, w, h);
                    double shares = (w / a) + (h / b);
                    if (shares < 0.98)
                    {
                        place.ShouldNotBeNull($"{a} {b} {w} {h}");
                    }
                    if (shares > 1)
                    {
                        place.ShouldBeNull($"{a} {b} {w} {h}");
                    }
                },
                iter: 2000
            );

    [Test]
    public void A_found_place_lies_inside() =>
        Gen.Select(Gen.Double[3, 40].Array[3, 8], Gen.Double[1, 10], Gen.Double[1, 8])
            .Sample(
                (radii, w, h) =>
                {
                    Spot[] star =
                    [
                        .. radii.Select(
                            (r, i) =>
                            {
                                double angle = 2 * Math.PI * i / radii.Length;
                                return new Spot(
                                    50 + (r * Math.Cos(angle)),
                                    50 + (r * Math.Sin(angle))
                                );
                            }
                        ),
                    ];
                    if (LabelRoom.Find(star, w, h) is { } place)
                    {
                        Coordinate[] ring = [.. star.Select(p => new Coordinate(p.X, p.Y))];
                        var polygon = new Polygon(new LinearRing([.. ring, ring[0]]));
                        var box = Box.Around(place, w, h);
                        Geometry ink = GeometryFactory.Default.ToGeometry(
                            new Envelope(box.X, box.Right, box.Y, box.Bottom)
                        );
                        polygon.Buffer(1e-6).Covers(ink).ShouldBeTrue();
                    }
                },
                iter: 500
            );

    [Test]
    public void Touching_is_told_from_lying_apart()
    {
        Spot[] triangle = [new(0, 0), new(10, 0), new(0, 10)];
        LabelRoom.Touches(triangle, new Box(1, 1, 1, 1)).ShouldBeTrue();
        LabelRoom.Touches(triangle, new Box(4, 4, 4, 4)).ShouldBeTrue();
        LabelRoom.Touches(triangle, new Box(6, 6, 4, 4)).ShouldBeFalse();
        LabelRoom.Touches(triangle, new Box(-5, -5, 4, 4)).ShouldBeFalse();
        LabelRoom.Touches(triangle, new Box(-20, -20, 60, 60)).ShouldBeTrue();
    }
}
