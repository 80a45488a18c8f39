using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Kinds;
using PatternPress.Quilting.Techniques.Sketching;

namespace PatternPress.Quilting.Techniques.Ways;

/// <summary>
/// Squares of finished + s(2 + √2), each cut once corner to corner; one triangle of each fabric makes a unit.
/// </summary>
public sealed class HalfSquareSingleTriangles : Technique
{
    public override string Keyword => "half-square-single-triangles";

    public override string Kind => HalfSquare.Kind.Keyword;

    public override string Name => "Half-square triangles from single triangles";

    public override Recipe Recipe(
        UnitForm form,
        ImmutableArray<string> fabrics,
        Length usableWidth,
        House house
    )
    {
        CutSize side = Side(form, house);
        bool trim = Batch.Trims(house, side);
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
                new Step(
                    "cut-triangles",
                    () =>
                        new Sketch([
                            Triangles.CutOnce(side.Cut, 0, "square").Done(),
                            Triangles.CutOnce(side.Cut, 1, "square").Done(),
                        ])
                ),
                new Step("sew", () => sewing.Together([0], [1], sewing.Seam(0, 1))),
                new Step(
                    "press",
                    () => new Sketch([new DiagonalPairs(side.Cut, house).Open(0, 1).Done(count: 2)])
                ),
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
        return
        [
            side.Square("square", 0, 1, PieceCut.OnceDiagonally),
            side.Square("square", 1, 1, PieceCut.OnceDiagonally),
        ];
    }

    private static CutSize Side(UnitForm form, House house) =>
        CutSize.Trimmable(form.Width + Allowance.HalfSquare(house.Seam), house);
}
