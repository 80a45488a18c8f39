using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Kinds;
using PatternPress.Quilting.Techniques.Sketching;

namespace PatternPress.Quilting.Techniques.Ways;

/// <summary>
/// Two squares of twice finished + s(2 + √2), sewn s to either side of both diagonals and cut apart on the
/// diagonals and through the middle both ways: eight units.
/// </summary>
public sealed class HalfSquareEightAtATime : Technique
{
    public override string Keyword => "half-square-eight-at-a-time";

    public override string Kind => HalfSquare.Kind.Keyword;

    public override string Name => "Half-square triangles, eight at a time";

    public override Recipe Recipe(
        UnitForm form,
        ImmutableArray<string> fabrics,
        Length usableWidth,
        House house
    )
    {
        CutSize quarter = Quarter(form, house);
        bool trim = Batch.Trims(house, quarter);
        var squares = new EightAtATimePictures(quarter.Cut, house);
        var sewing = new Sewing(form, house);
        return Batch.Of(
            this,
            form,
            house,
            Pieces(form, house, usableWidth),
            8,
            trim: trim,
            measures: [("half", quarter.Cut)],
            steps:
            [
                new Step("mark", () => squares.Mark(1, "large square")),
                new Step("sew", () => squares.Sew(0, 1)),
                new Step("cut", () => squares.Cut(0, 1, "half")),
                new Step(
                    "press",
                    () =>
                        new Sketch([
                            new DiagonalPairs(quarter.Cut, house).Open(0, 1).Done(count: 8),
                        ])
                ),
                new Step("trim", () => sewing.Finish(trim, quarter.Cut - quarter.Exactly, 8)),
            ]
        );
    }

    protected override ImmutableArray<RecipePiece> Pieces(
        UnitForm form,
        House house,
        Length usableWidth
    )
    {
        CutSize side = Quarter(form, house) * 2;
        return [side.Square("large square", 0, 1), side.Square("large square", 1, 1)];
    }

    // Rounded before it is doubled, so that the cuts through the middle lie on a mark of the ruler too.
    private static CutSize Quarter(UnitForm form, House house) =>
        CutSize.Trimmable(form.Width + Allowance.HalfSquare(house.Seam), house);
}
