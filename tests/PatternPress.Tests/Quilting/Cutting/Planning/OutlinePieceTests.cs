using NUnit.Framework;
using PatternPress.Quilting.Cutting.Planning;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using Shouldly;

namespace PatternPress.Tests.Quilting.Cutting.Planning;

public class OutlinePieceTests
{
    private static Length In(long whole, long numerator = 0, long denominator = 1) =>
        Length.FromInches(whole, numerator, denominator);

    [Test]
    public void A_template_needs_the_rectangle_around_it_wherever_it_is_drawn()
    {
        // A kite whose widest and highest corners lie on no other corner's line.
        var kite = new Polygon([
            new(In(1), In(2, 1, 2)),
            new(In(3, 1, 4), In(1)),
            new(In(7), In(3)),
            new(In(3, 1, 4), In(6, 3, 8)),
        ]);

        OutlinePiece piece = OutlinePiece.Of(kite, eitherGrain: false);

        piece.ShouldBe(new OutlinePiece(In(6), In(5, 3, 8), Turnable: false));
    }

    [Test]
    public void Upside_down_it_needs_the_same_and_a_quarter_turned_the_other_way_round()
    {
        var slope = new Polygon([new(In(0), In(0)), new(In(5), In(0)), new(In(2), In(3))]);

        OutlinePiece upright = OutlinePiece.Of(slope, eitherGrain: true);

        OutlinePiece.Of(slope.Turned(new Turn(2), In(5), In(3)), true).ShouldBe(upright);
        OutlinePiece
            .Of(slope.Turned(new Turn(1), In(5), In(3)), true)
            .ShouldBe(new OutlinePiece(upright.Height, upright.Width, true));
        upright.Turnable.ShouldBeTrue();
    }
}
