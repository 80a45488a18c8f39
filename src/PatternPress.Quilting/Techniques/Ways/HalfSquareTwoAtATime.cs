using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Kinds;
using PatternPress.Quilting.Techniques.Sketching;

namespace PatternPress.Quilting.Techniques.Ways;

/// <summary>
/// Two squares of finished + s(2 + √2), right sides together, sewn s to either side of a diagonal and cut apart on
/// it: two units. Sewing at s from the long edge takes s√2 off each leg, which leaves finished + 2s.
/// </summary>
public sealed class HalfSquareTwoAtATime : Technique
{
    public override string Keyword => "half-square-two-at-a-time";

    public override string Kind => HalfSquare.Kind.Keyword;

    public override string Name => "Half-square triangles, two at a time";

    public override Recipe Recipe(
        UnitForm form,
        ImmutableArray<string> fabrics,
        Length usableWidth,
        House house
    )
    {
        CutSize side = Side(form, house);
        bool trim = Batch.Trims(house, side);
        var pairs = new DiagonalPairs(side.Cut, house);
        var sewing = new Sewing(form, house);
        return Batch.Of(
            this,
            form,
            house,
            Pieces(form, house, usableWidth),
            2,
            trim: trim,
            steps:
            [
                new Step("mark", () => pairs.Mark(1, "square")),
                new Step("sew", () => pairs.Sew(0, 1)),
                new Step(
                    "cut",
                    () =>
                        new Sketch([
                            pairs.Cut(0, 1).Done(),
                            pairs.Halves(0, 1).Done(FrameLink.Then),
                        ])
                ),
                new Step("press", () => new Sketch([pairs.Open(0, 1).Done(count: 2)])),
                new Step("trim", () => sewing.Finish(trim, side.Cut - side.Exactly, 2)),
            ]
        );
    }

    protected override ImmutableArray<RecipePiece> Pieces(
        UnitForm form,
        House house,
        Length usableWidth
    )
    {
        CutSize side = Side(form, house);
        return [side.Square("square", 0, 1), side.Square("square", 1, 1)];
    }

    private static CutSize Side(UnitForm form, House house) =>
        CutSize.Trimmable(form.Width + Allowance.HalfSquare(house.Seam), house);
}
