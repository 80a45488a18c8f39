using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Kinds;
using PatternPress.Quilting.Techniques.Sketching;

namespace PatternPress.Quilting.Techniques.Ways;

/// <summary>
/// A square of the unfinished size with a square of half the finished size + 2s sewn corner to corner over each of
/// its corners and flipped open: one unit.
/// </summary>
public sealed class SquareInSquareQuickCorners : Technique
{
    public override string Keyword => "square-in-square-quick-corners";

    public override string Kind => SquareInSquare.Kind.Keyword;

    /// <summary>The center keeps the grain of the large square, so its slanted edges are on the bias too.</summary>
    public override ImmutableArray<int> BiasEdges(UnitForm form, int patch) =>
        patch == 0 ? [0, 1, 2, 3] : base.BiasEdges(form, patch);

    public override string Name => "Square-in-a-square, quick corners";

    public override Recipe Recipe(
        UnitForm form,
        ImmutableArray<string> fabrics,
        Length usableWidth,
        House house
    )
    {
        CutSize large = CutSize.Close(house.Unfinished(form.Width), house);
        CutSize corner = CutSize.Close(house.Unfinished(form.Width / 2), house);
        var sewing = new Sewing(form, house);
        var flips = new CornerFlips(
            large.Cut,
            large.Cut,
            corner.Cut,
            0,
            // Opposite corners first: their squares do not overlap.
            [
                (Corner.UpperLeft, 1),
                (Corner.LowerRight, 1),
                (Corner.UpperRight, 1),
                (Corner.LowerLeft, 1),
            ],
            house
        );
        return Batch.Of(
            this,
            form,
            house,
            Pieces(form, house, usableWidth),
            1,
            trim: large.IsGenerous,
            leftovers: Batch.Offcuts(corner, 4, house),
            steps:
            [
                .. flips.Steps("corner square", fabrics),
                new Step(
                    "trim",
                    () => sewing.Finish(large.IsGenerous, large.Cut - large.Exactly, 1)
                ),
            ]
        );
    }

    protected override ImmutableArray<RecipePiece> Pieces(
        UnitForm form,
        House house,
        Length usableWidth
    ) =>
        [
            CutSize.Close(house.Unfinished(form.Width), house).Square("large square", 0, 1),
            CutSize.Close(house.Unfinished(form.Width / 2), house).Square("corner square", 1, 4),
        ];
}
