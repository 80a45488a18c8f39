using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Kinds;

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
        return Batch.Of(
            this,
            form,
            house,
            Pieces(form, house, usableWidth),
            form.Variant == QuarterSquare.TwoFabrics ? 2 : 4,
            trim: Batch.Trims(house, side)
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
