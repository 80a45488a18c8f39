using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Kinds;
using PatternPress.Quilting.Techniques.Sketching;

namespace PatternPress.Quilting.Techniques.Ways;

/// <summary>
/// Squares of finished + s(2 + 2√2), each cut corner to corner both ways, so that the long edge of each triangle
/// lies on the straight grain; four triangles make a unit.
/// </summary>
public sealed class QuarterSquareSingleTriangles : Technique
{
    public override string Keyword => "quarter-square-single-triangles";

    public override string Kind => QuarterSquare.Kind.Keyword;

    public override string Name => "Quarter-square triangles from single triangles";

    public override Recipe Recipe(
        UnitForm form,
        ImmutableArray<string> fabrics,
        Length usableWidth,
        House house
    )
    {
        CutSize side = Side(form, house);
        bool trim = Batch.Trims(house, side);
        int yield = form.Variant == QuarterSquare.TwoFabrics ? 2 : 4;
        var sewing = new Sewing(form, house);
        return Batch.Of(
            this,
            form,
            house,
            Pieces(form, house, usableWidth),
            yield,
            trim: trim,
            steps:
            [
                new Step(
                    "cut-triangles",
                    () =>
                        new Sketch([
                            .. Enumerable
                                .Range(0, form.RoleCount)
                                .Select(role =>
                                    Triangles.CutTwice(side.Cut, role, "square").Done()
                                ),
                        ])
                ),
                new Step(
                    "sew-pairs",
                    () =>
                        new Sketch([
                            sewing.Together([0], [1], sewing.Seam(0, 1)).Done(),
                            sewing.Opened([0, 1], (1, 0)).Done(FrameLink.Then),
                            sewing.Together([2], [3], sewing.Seam(2, 3)).Done(),
                            sewing.Opened([2, 3], (3, 2)).Done(FrameLink.Then),
                        ])
                ),
                new Step("join-pairs", () => sewing.Together([0, 1], [2, 3], sewing.Seam(0, 3))),
                new Step("press", () => sewing.Opened(sewing.All, (3, 0))),
                new Step("trim", () => sewing.Finish(trim, side.Cut - side.Exactly, yield)),
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
        ImmutableArray<int> squares = form.Variant switch
        {
            QuarterSquare.TwoFabrics => [1, 1],
            QuarterSquare.ThreeFabrics => [2, 1, 1],
            _ => [1, 1, 1, 1],
        };
        return
        [
            .. squares.Select(
                (count, role) => side.Square("square", role, count, PieceCut.TwiceDiagonally)
            ),
        ];
    }

    private static CutSize Side(UnitForm form, House house) =>
        CutSize.Trimmable(form.Width + Allowance.QuarterSquare(house.Seam), house);
}
