using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Kinds;
using PatternPress.Quilting.Techniques.Sketching;

namespace PatternPress.Quilting.Techniques.Ways;

/// <summary>
/// Squares of finished + s(2 + 2√2) become half-square units two at a time; two of those, seams crossed over each
/// other, sewn s to either side of the other diagonal and cut apart, become two units. Each pass takes s√2 off a
/// side. Needs one fabric on two opposite sides: then both units of a pair are alike.
/// </summary>
public sealed class QuarterSquareTwoAtATime : Technique
{
    public override string Keyword => "quarter-square-two-at-a-time";

    public override string Kind => QuarterSquare.Kind.Keyword;

    public override string Name => "Quarter-square triangles, two at a time";

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
        var pictures = new QuarterSquarePictures(form, side.Cut, house);
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
                new Step("mark", pictures.Mark),
                new Step("sew", pictures.Sew),
                new Step("cut", pictures.Cut),
                new Step("press", pictures.Press),
                new Step("mark-again", pictures.MarkAgain),
                new Step("sew-again", pictures.SewAgain),
                new Step("cut-again", pictures.CutAgain),
                new Step(
                    "press-again",
                    () => new Sketch([sewing.Opened(sewing.All, (3, 0)).Done(count: yield)])
                ),
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
        return form.Variant == QuarterSquare.TwoFabrics
            ? [side.Square("square", 0, 1), side.Square("square", 1, 1)]
            :
            [
                side.Square("square", 0, 2),
                side.Square("square", 1, 1),
                side.Square("square", 2, 1),
            ];
    }

    protected override string? Refusal(UnitForm form, House house, Length usableWidth) =>
        form.Variant == QuarterSquare.FourFabrics
            ? "made two at a time, a quarter-square has one fabric on two opposite sides; this one has four parts"
            : null;

    private static CutSize Side(UnitForm form, House house) =>
        CutSize.Trimmable(form.Width + Allowance.QuarterSquare(house.Seam), house);
}
