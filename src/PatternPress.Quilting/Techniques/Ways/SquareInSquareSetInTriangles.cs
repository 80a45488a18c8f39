using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Kinds;

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
        return Batch.Of(
            this,
            form,
            house,
            Pieces(form, house, usableWidth),
            1,
            trim: Batch.Trims(house, Triangles(form, house))
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

    private static CutSize Center(UnitForm form, House house) =>
        CutSize.Close(house.Unfinished(Allowance.SideOfDiagonal(form.Width)), house);

    private static CutSize Triangles(UnitForm form, House house) =>
        CutSize.Trimmable((form.Width / 2) + Allowance.HalfSquare(house.Seam), house);
}
