using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Kinds;
using PatternPress.Quilting.Techniques.Sketching;

namespace PatternPress.Quilting.Techniques.Ways;

/// <summary>
/// One large square of finished width + s(2 + 2√2) and four small ones of finished height + s(2 + √2) become four
/// units without waste: the goose is a quarter of the large square, with its long edge an edge of that square, and
/// each sky triangle is half a small square.
/// </summary>
public sealed class GeeseFourAtATime : Technique
{
    public override string Keyword => "geese-four-at-a-time";

    public override string Kind => FlyingGeese.Kind.Keyword;

    public override string Name => "Flying geese, four at a time";

    public override Recipe Recipe(
        UnitForm form,
        ImmutableArray<string> fabrics,
        Length usableWidth,
        House house
    )
    {
        (CutSize large, CutSize small) = Sides(form, house);
        bool trim = Batch.Trims(house, large, small);
        var pictures = new FourGeesePictures(large.Cut, small.Cut, house);
        var sewing = new Sewing(form, house);
        return Batch.Of(
            this,
            form,
            house,
            Pieces(form, house, usableWidth),
            4,
            trim: trim,
            steps:
            [
                new Step("mark", () => pictures.Mark("small square")),
                new Step("sew", () => pictures.Sew("large square")),
                new Step("cut", pictures.Cut),
                new Step("press", pictures.Press),
                new Step("sew-again", pictures.SewAgain),
                new Step("cut-again", pictures.CutAgain),
                new Step(
                    "press-again",
                    () => new Sketch([sewing.Opened(sewing.All, (0, 2)).Done(count: 4)])
                ),
                new Step(
                    "trim",
                    () =>
                        sewing.Finish(
                            trim,
                            Length.Max(large.Cut - large.Exactly, small.Cut - small.Exactly),
                            4
                        )
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
        (CutSize large, CutSize small) = Sides(form, house);
        return [large.Square("large square", 0, 1), small.Square("small square", 1, 4)];
    }

    private static (CutSize Large, CutSize Small) Sides(UnitForm form, House house) =>
        (
            CutSize.Trimmable(form.Width + Allowance.QuarterSquare(house.Seam), house),
            CutSize.Trimmable(form.Height + Allowance.HalfSquare(house.Seam), house)
        );
}
