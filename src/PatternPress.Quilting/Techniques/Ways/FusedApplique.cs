using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Kinds;
using PatternPress.Quilting.Techniques.Sketching;

namespace PatternPress.Quilting.Techniques.Ways;

/// <summary>
/// Shapes traced in reverse onto paper-backed fusible web, fused to the back of a rectangle of fabric, cut out on the line and
/// fused to the ground. A rectangle reaches 1/4 in beyond its shape on every side.
/// </summary>
public sealed class FusedApplique : Technique
{
    /// <summary>What a rectangle of fabric reaches beyond its shape (common practice, no source).</summary>
    public static Length Margin { get; } = Length.FromInches(0, 1, 4);

    public override string Keyword => "fused-applique";

    public override string Kind => AppliqueBlock.Kind.Keyword;

    public override string Name => "Fused appliqué";

    public override Recipe Recipe(
        UnitForm form,
        ImmutableArray<string> fabrics,
        Length usableWidth,
        House house
    )
    {
        var pictures = new AppliquePictures(form, house);
        return Batch.Of(
            this,
            form,
            house,
            Pieces(form, house, usableWidth),
            1,
            trim: false,
            steps:
            [
                new Step("trace", pictures.Traced),
                new Step("fuse", pictures.Fused),
                new Step("cut", pictures.CutOut),
                new Step("place", pictures.Placed),
                new Step("finish", pictures.Finished),
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
                "ground",
                form.RoleCount - 1,
                1,
                CutSize.Close(house.Unfinished(form.Width), house),
                CutSize.Close(house.Unfinished(form.Height), house)
            ),
            .. form.Overlays.Select(
                (overlay, i) =>
                {
                    Rect bounds = overlay.Shape.Bounds;
                    Length width = house.Ruler.Up(bounds.Width + (Margin * 2)),
                        height = house.Ruler.Up(bounds.Height + (Margin * 2));
                    return new RecipePiece(
                        $"shape {i + 1}",
                        overlay.Role,
                        width,
                        height,
                        (width, height),
                        1,
                        PieceCut.None,
                        false
                    );
                }
            ),
        ];
}
