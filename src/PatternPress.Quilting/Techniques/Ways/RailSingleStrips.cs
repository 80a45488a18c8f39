using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Kinds;
using PatternPress.Quilting.Techniques.Sketching;

namespace PatternPress.Quilting.Techniques.Ways;

/// <summary>
/// Strips cut to the length of the unit and sewn side by side: one unit. For when few are needed.
/// </summary>
public sealed class RailSingleStrips : Technique
{
    public override string Keyword => "rail-single-strips";

    public override string Kind => Rail.Kind.Keyword;

    public override string Name => "Rails from single strips";

    public override Recipe Recipe(
        UnitForm form,
        ImmutableArray<string> fabrics,
        Length usableWidth,
        House house
    )
    {
        var sewing = new Sewing(form, house);
        return Batch.Of(
            this,
            form,
            house,
            Pieces(form, house, usableWidth),
            1,
            trim: false,
            steps:
            [
                new Step("sew", () => GridPictures.SewRow(sewing, sewing.All)),
                new Step("press", () => GridPictures.PressRow(sewing, sewing.All, oneWay: true)),
                new Step("measure", () => sewing.Finish(false, Length.Zero, 1)),
            ]
        );
    }

    protected override ImmutableArray<RecipePiece> Pieces(
        UnitForm form,
        House house,
        Length usableWidth
    )
    {
        CutSize width = CutSize.Close(house.Unfinished(form.Width / form.RoleCount), house);
        CutSize height = CutSize.Close(house.Unfinished(form.Height), house);
        return
        [
            .. Enumerable
                .Range(0, form.RoleCount)
                .Select(role => CutSize.Rectangle("strip", role, 1, width, height)),
        ];
    }
}
