using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Kinds;
using PatternPress.Quilting.Techniques.Sketching;

namespace PatternPress.Quilting.Techniques.Ways;

/// <summary>
/// A square or rectangle of the unfinished size with a square of the corner's finished size + 2s sewn corner to
/// corner over each corner to be changed and flipped open: one unit.
/// </summary>
public sealed class CornersStitchAndFlip : Technique
{
    public override string Keyword => "corners-stitch-and-flip";

    public override string Kind => FlippedCorners.Kind.Keyword;

    public override string Name => "Corners, stitch and flip";

    public override Recipe Recipe(
        UnitForm form,
        ImmutableArray<string> fabrics,
        Length usableWidth,
        House house
    )
    {
        CutSize corner = CutSize.Close(house.Unfinished(form.Measure), house);
        var sewing = new Sewing(form, house);
        ImmutableArray<int> corners = FlippedCorners.CornersOf(form);
        // Of four, opposite corners first: their squares overlap least.
        ImmutableArray<int> order =
            corners.Length == 4 ? [0, 2, 1, 3] : [.. Enumerable.Range(0, corners.Length)];
        var flips = new CornerFlips(
            CutSize.Close(house.Unfinished(form.Width), house).Cut,
            CutSize.Close(house.Unfinished(form.Height), house).Cut,
            corner.Cut,
            form.RoleCount - 1,
            [.. order.Select(role => (corners[role], role))],
            house
        );
        return Batch.Of(
            this,
            form,
            house,
            Pieces(form, house, usableWidth),
            1,
            trim: false,
            leftovers: Batch.Offcuts(corner, form.RoleCount - 1, house),
            steps:
            [
                .. flips.Steps("corner square", fabrics),
                new Step("trim", () => sewing.Finish(false, Length.Zero, 1)),
            ]
        );
    }

    protected override ImmutableArray<RecipePiece> Pieces(
        UnitForm form,
        House house,
        Length usableWidth
    )
    {
        CutSize corner = CutSize.Close(house.Unfinished(form.Measure), house);
        int ground = form.RoleCount - 1;
        return
        [
            CutSize.Rectangle(
                form.Width == form.Height ? "large square" : "rectangle",
                ground,
                1,
                CutSize.Close(house.Unfinished(form.Width), house),
                CutSize.Close(house.Unfinished(form.Height), house)
            ),
            .. Enumerable.Range(0, ground).Select(role => corner.Square("corner square", role, 1)),
        ];
    }
}
