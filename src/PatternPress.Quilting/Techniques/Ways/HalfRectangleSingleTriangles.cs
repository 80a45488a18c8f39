using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Kinds;
using PatternPress.Quilting.Techniques.Sketching;

namespace PatternPress.Quilting.Techniques.Ways;

/// <summary>
/// Rectangles cut from corner to corner, all the same way as the unit leans, and a triangle of each fabric sewn together: two
/// units from a rectangle of each, to be trimmed.
/// </summary>
public sealed class HalfRectangleSingleTriangles : Technique
{
    public override string Keyword => "half-rectangle-single-triangles";

    public override string Kind => HalfRectangle.Kind.Keyword;

    public override string Name => "Half-rectangle triangles from single triangles";

    public override Recipe Recipe(
        UnitForm form,
        ImmutableArray<string> fabrics,
        Length usableWidth,
        House house
    )
    {
        ImmutableArray<RecipePiece> pieces = Pieces(form, house, usableWidth);
        var pictures = new HalfRectanglePictures(form, (pieces[0].Width, pieces[0].Height), house);
        return Batch.Of(
            this,
            form,
            house,
            pieces,
            2,
            trim: true,
            steps:
            [
                new Step("cut-triangles", pictures.CutSingles),
                new Step("sew", () => pictures.Half()),
                new Step("press", () => pictures.Open()),
                new Step("trim", () => pictures.Trim(2)),
            ]
        );
    }

    protected override ImmutableArray<RecipePiece> Pieces(
        UnitForm form,
        House house,
        Length usableWidth
    ) => HalfRectangles.Pieces(form, house);

    protected override string? Refusal(UnitForm form, House house, Length usableWidth) =>
        HalfRectangles.Refusal(form, house);
}
