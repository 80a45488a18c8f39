using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Kinds;
using PatternPress.Quilting.Techniques.Sketching;

namespace PatternPress.Quilting.Techniques.Ways;

/// <summary>
/// Two rectangles right sides together, the upper one turned so that its diagonal lies on that of the lower, sewn to either
/// side of it and cut apart on it: two units that lean the same way, to be trimmed. Laid exactly on each other they would
/// open to kites.
/// </summary>
public sealed class HalfRectangleTwoAtATime : Technique
{
    public override string Keyword => "half-rectangle-two-at-a-time";

    public override string Kind => HalfRectangle.Kind.Keyword;

    public override string Name => "Half-rectangle triangles, two at a time";

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
                new Step("mark", pictures.Mark),
                new Step("sew", () => pictures.Sew()),
                new Step(
                    "cut",
                    () =>
                        new Sketch([pictures.Cut().Done(), pictures.Half().Done(FrameLink.Then, 2)])
                ),
                new Step("press", () => new Sketch([pictures.Open().Done(count: 2)])),
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
