using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Kinds;
using PatternPress.Quilting.Techniques.Sketching;

namespace PatternPress.Quilting.Techniques.Ways;

/// <summary>
/// Eight wedges, each a diamond with a triangle on either outer edge, so that all seams are straight. The larger triangles are
/// halves of squares of d + s(2 + √2), the smaller of d / √2 + s(2 + √2).
/// </summary>
public sealed class EightPointStarSplitBackground : Technique
{
    public override string Keyword => "eight-point-star-split-background";

    public override string Kind => EightPointStar.Kind.Keyword;

    public override string Name => "Eight-pointed star, background split";

    public override Recipe Recipe(
        UnitForm form,
        ImmutableArray<string> fabrics,
        Length usableWidth,
        House house
    )
    {
        CutSize large = Large(form, house),
            small = Small(form, house);
        bool trim = Batch.Trims(house, large, small);
        int ground = form.RoleCount - 1;
        var pictures = new StarPictures(form, StarPieces.Strip(form, house).Cut, house);
        ImmutableArray<int> right = [.. Wedges(0, 1, 2, 3)],
            left = [.. Wedges(4, 5, 6, 7)];
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
                        new Sketch([
                            Sketching
                                .Triangles.CutOnce(large.Cut, ground, "large square")
                                .Done(count: 4),
                            Sketching
                                .Triangles.CutOnce(small.Cut, ground, "small square")
                                .Done(count: 4),
                        ])
                ),
                new Step(
                    "wedges",
                    () =>
                        new Sketch([
                            pictures.Opened([0, 8], (0, 8)).Done(),
                            pictures.Opened([0, 8, 16], (0, 16)).Done(FrameLink.Then, 4),
                            pictures.Opened([1, 9, 17], (1, 9), (1, 17)).Done(FrameLink.And, 4),
                        ])
                ),
                new Step(
                    "quarters",
                    () => pictures.Join([.. Wedges(0)], [.. Wedges(1)], (0, 1), 4)
                ),
                new Step(
                    "halves",
                    () => pictures.Join([.. Wedges(0, 1)], [.. Wedges(2, 3)], (1, 2), 2)
                ),
                new Step("star", () => pictures.Join(left, right, (7, 0))),
                new Step("trim", () => pictures.Finish(trim, large.Cut - large.Exactly)),
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
            Large(form, house)
                .Square("large square", form.RoleCount - 1, 4, PieceCut.OnceDiagonally),
            Small(form, house)
                .Square("small square", form.RoleCount - 1, 4, PieceCut.OnceDiagonally),
        ];

    protected override string? Refusal(UnitForm form, House house, Length usableWidth) =>
        EightPointStar.IsSplit(form)
            ? StarPieces.Refusal(form, house, usableWidth)
            : "the background of this star is whole: write \"eight-point-star split\" to have it split";

    private static IEnumerable<int> Wedges(params int[] diamonds) =>
        diamonds.SelectMany(i => new[] { i, i + 8, i + 16 });

    private static CutSize Large(UnitForm form, House house) =>
        CutSize.Trimmable(
            EightPointStar.DiamondOf(form.Width) + Allowance.HalfSquare(house.Seam),
            house
        );

    private static CutSize Small(UnitForm form, House house) =>
        CutSize.Trimmable(
            Allowance.SideOfDiagonal(EightPointStar.DiamondOf(form.Width))
                + Allowance.HalfSquare(house.Seam),
            house
        );
}
