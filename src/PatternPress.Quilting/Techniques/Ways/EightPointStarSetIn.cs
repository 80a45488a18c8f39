using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Kinds;
using PatternPress.Quilting.Techniques.Sketching;

namespace PatternPress.Quilting.Techniques.Ways;

/// <summary>
/// Eight diamonds with squares of d + 2s and triangles set in between them, in seams that end a seam before the edge. The
/// triangles are quarters of a square of d√2 + s(2 + 2√2), their long edges on the straight grain.
/// </summary>
public sealed class EightPointStarSetIn : Technique
{
    public override string Keyword => "eight-point-star-set-in";

    public override string Kind => EightPointStar.Kind.Keyword;

    public override string Name => "Eight-pointed star, squares and triangles set in";

    public override bool HasSetInSeams => true;

    public override string WithoutSetInSeams =>
        "write eight-point-star split, and the background is halved so that all seams are straight";

    public override Recipe Recipe(
        UnitForm form,
        ImmutableArray<string> fabrics,
        Length usableWidth,
        House house
    )
    {
        CutSize square = Square(form, house),
            triangles = Triangles(form, house);
        bool trim = Batch.Trims(house, square, triangles);
        var pictures = new StarPictures(form, StarPieces.Strip(form, house).Cut, house);
        // Diamonds 0 to 7, squares 8 to 11 from the upper right, triangles 12 to 15 from the top.
        ImmutableArray<int> right = [0, 1, 8, 2, 3, 9],
            left = [4, 5, 10, 6, 7, 11];
        return Batch.Of(
            this,
            form,
            house,
            Pieces(form, house, usableWidth),
            1,
            trim: trim,
            steps:
            [
                new Step("cut-diamonds", pictures.CutDiamonds),
                new Step(
                    "cut-triangles",
                    () =>
                        Sketching.Triangles.CutTwice(
                            triangles.Cut,
                            form.RoleCount - 1,
                            "side square"
                        )
                ),
                new Step("pairs", () => pictures.Join([0], [1], (0, 1), 4)),
                new Step("squares", () => pictures.SetIn([0, 1], 8, (1, -1), [0, 1], 4)),
                new Step("halves", () => pictures.Join([0, 1, 8], [2, 3, 9], (1, 2), 2)),
                new Step("triangles", () => pictures.SetIn(right, 13, (1, 0), [1, 2], 2)),
                new Step("star", () => pictures.Join([.. left, 15], [.. right, 13], (7, 0))),
                new Step(
                    "last-triangles",
                    () => pictures.Opened(pictures.All, (12, 0), (12, 7), (14, 3), (14, 4))
                ),
                new Step("trim", () => pictures.Finish(trim, square.Cut - square.Exactly)),
            ]
        );
    }

    protected override ImmutableArray<RecipePiece> Pieces(
        UnitForm form,
        House house,
        Length usableWidth
    ) =>
        [
            .. StarPieces.Diamonds(form, house, usableWidth, 1),
            Square(form, house).Square("corner square", form.RoleCount - 1, 4),
            Triangles(form, house)
                .Square("side square", form.RoleCount - 1, 1, PieceCut.TwiceDiagonally),
        ];

    protected override string? Refusal(UnitForm form, House house, Length usableWidth) =>
        EightPointStar.IsSplit(form)
            ? "the background of this star is split, so that nothing is set in"
            : StarPieces.Refusal(form, house, usableWidth);

    private static CutSize Square(UnitForm form, House house) =>
        CutSize.Trimmable(house.Unfinished(EightPointStar.DiamondOf(form.Width)), house);

    private static CutSize Triangles(UnitForm form, House house) =>
        CutSize.Trimmable(
            Allowance.Diagonal(EightPointStar.DiamondOf(form.Width))
                + Allowance.QuarterSquare(house.Seam),
            house
        );
}
