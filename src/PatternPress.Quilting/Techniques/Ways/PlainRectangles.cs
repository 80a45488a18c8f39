using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Kinds;
using PatternPress.Quilting.Techniques.Sketching;

namespace PatternPress.Quilting.Techniques.Ways;

/// <summary>A rectangle cut to its unfinished size: finished + 2s both ways.</summary>
public sealed class PlainRectangles : Technique
{
    public override string Keyword => "plain-rectangles";

    public override string Kind => PlainRectangle.Kind.Keyword;

    public override string Name => "Plain rectangles";

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
                            .Size(
                                sewing.Whole(),
                                Batch.WidthOf("rectangle"),
                                Batch.HeightOf("rectangle")
                            )
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
            CutSize.Rectangle(
                "rectangle",
                0,
                1,
                CutSize.Close(house.Unfinished(form.Width), house),
                CutSize.Close(house.Unfinished(form.Height), house)
            ),
        ];

    protected override bool NeedsFabricWidth => false;
}
