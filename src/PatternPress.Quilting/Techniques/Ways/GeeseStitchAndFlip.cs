using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Kinds;
using PatternPress.Quilting.Techniques.Sketching;

namespace PatternPress.Quilting.Techniques.Ways;

/// <summary>
/// A rectangle of the unfinished size with a square of the unfinished height sewn corner to corner over each end
/// and flipped open: one unit. The corners cut off make two small half-square units.
/// </summary>
public sealed class GeeseStitchAndFlip : Technique
{
    public override string Keyword => "geese-stitch-and-flip";

    public override string Kind => FlyingGeese.Kind.Keyword;

    public override string Name => "Flying geese, stitch and flip";

    public override Recipe Recipe(
        UnitForm form,
        ImmutableArray<string> fabrics,
        Length usableWidth,
        House house
    )
    {
        CutSize square = CutSize.Close(house.Unfinished(form.Height), house);
        var sewing = new Sewing(form, house);
        var flips = new CornerFlips(
            CutSize.Close(house.Unfinished(form.Width), house).Cut,
            square.Cut,
            square.Cut,
            0,
            [(Corner.UpperLeft, 1), (Corner.UpperRight, 1)],
            house
        );
        return Batch.Of(
            this,
            form,
            house,
            Pieces(form, house, usableWidth),
            1,
            trim: square.IsGenerous,
            leftovers: Batch.Offcuts(square, 2, house),
            steps:
            [
                .. flips.Steps("square", fabrics),
                new Step(
                    "trim",
                    () => sewing.Finish(square.IsGenerous, square.Cut - square.Exactly, 1)
                ),
            ]
        );
    }

    protected override ImmutableArray<RecipePiece> Pieces(
        UnitForm form,
        House house,
        Length usableWidth
    )
    {
        CutSize height = CutSize.Close(house.Unfinished(form.Height), house);
        return
        [
            CutSize.Rectangle(
                "rectangle",
                0,
                1,
                CutSize.Close(house.Unfinished(form.Width), house),
                height
            ),
            height.Square("square", 1, 2),
        ];
    }
}
