using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Kinds;
using PatternPress.Quilting.Techniques.Sketching;

namespace PatternPress.Quilting.Techniques.Ways;

/// <summary>
/// A center square of finished / √2 + 2s with a triangle sewn to each side; the triangles are halves of squares of
/// half the finished size + s(2 + √2). Trimming corrects triangles that are too large, but not a center that is:
/// its points would be cut off. So the center must be near a mark of the ruler.
/// </summary>
public sealed class SquareInSquareSetInTriangles : Technique
{
    public override string Keyword => "square-in-square-set-in-triangles";

    public override string Kind => SquareInSquare.Kind.Keyword;

    public override string Name => "Square-in-a-square, set-in triangles";

    public override Recipe Recipe(
        UnitForm form,
        ImmutableArray<string> fabrics,
        Length usableWidth,
        House house
    )
    {
        CutSize triangles = Triangles(form, house);
        bool trim = Batch.Trims(house, triangles);
        var sewing = new Sewing(form, house);
        return Batch.Of(
            this,
            form,
            house,
            Pieces(form, house, usableWidth),
            1,
            trim: trim,
            steps:
            [
                new Step(
                    "cut-triangles",
                    () =>
                        new Sketch([
                            Sketching
                                .Triangles.CutOnce(triangles.Cut, 1, "corner square")
                                .Done(count: 2),
                        ])
                ),
                new Step("first-sides", () => Sides(sewing, [0], 1, 3)),
                new Step("press", () => sewing.Opened([0, 1, 3], (0, 1), (0, 3))),
                new Step("other-sides", () => Sides(sewing, [0, 1, 3], 2, 4)),
                new Step("press-again", () => sewing.Opened(sewing.All, (0, 2), (0, 4))),
                new Step("trim", () => sewing.Finish(trim, triangles.Cut - triangles.Exactly, 1)),
            ]
        );
    }

    protected override ImmutableArray<RecipePiece> Pieces(
        UnitForm form,
        House house,
        Length usableWidth
    ) =>
        [
            Center(form, house).Square("center square", 0, 1),
            Triangles(form, house).Square("corner square", 1, 2, PieceCut.OnceDiagonally),
        ];

    protected override string? Refusal(UnitForm form, House house, Length usableWidth)
    {
        CutSize center = Center(form, house);
        return center.IsGenerous
            ? $"its center square of {Told.Decimal(center.Exactly)} is not near a mark of the ruler; the next, {Told.One(center.Cut)}, would cut off its points"
            : null;
    }

    // Triangles laid on two opposite sides of what is already sewn.
    private static Sketch Sides(Sewing sewing, ImmutableArray<int> sewn, int one, int other)
    {
        FrameDrawing drawing = sewing.Together(sewn, [one], sewing.Seam(0, one));
        return sewing.Onto(drawing, [other], sewing.Seam(0, other));
    }

    private static CutSize Center(UnitForm form, House house) =>
        CutSize.Close(house.Unfinished(Allowance.SideOfDiagonal(form.Width)), house);

    private static CutSize Triangles(UnitForm form, House house) =>
        CutSize.Trimmable((form.Width / 2) + Allowance.HalfSquare(house.Seam), house);
}
