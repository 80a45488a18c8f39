using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Kinds;
using PatternPress.Quilting.Techniques.Sketching;

namespace PatternPress.Quilting.Techniques.Ways;

/// <summary>A square cut to its unfinished size: finished + 2s.</summary>
public sealed class PlainSquares : Technique
{
    public override string Keyword => "plain-squares";

    public override string Kind => PlainSquare.Kind.Keyword;

    public override string Name => "Plain squares";

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
                new Step(
                    "cut",
                    () =>
                        new FrameDrawing()
                            .Shapes(sewing.RightSide(sewing.All))
                            .Size(sewing.Whole(), "square")
                ),
            ]
        );
    }

    protected override ImmutableArray<RecipePiece> Pieces(
        UnitForm form,
        House house,
        Length usableWidth
    ) => [CutSize.Close(house.Unfinished(form.Width), house).Square("square", 0, 1)];

    protected override bool NeedsFabricWidth => false;
}
