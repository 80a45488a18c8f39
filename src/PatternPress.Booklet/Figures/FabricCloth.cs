using PatternPress.Quilting.Model;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>A fabric's print as its designer's picture shows it, ready to be laid over patches.</summary>
/// <param name="WidthInches">How wide the cloth in the picture is.</param>
/// <param name="HeightInches">How high it is.</param>
public sealed record FabricCloth(RasterImage Image, double WidthInches, double HeightInches)
{
    internal static FabricCloth? Of(Fabric fabric) =>
        fabric.Cloth is { } cloth
            ? new(
                new RasterImage(
                    cloth.File,
                    cloth.Picture.Width,
                    cloth.Picture.Height,
                    cloth.Picture.Pixels,
                    cloth.Picture.MediaType,
                    cloth.Picture.Encoded
                ),
                cloth.Width.Inches.ToDouble(),
                cloth.Height.Inches.ToDouble()
            )
            : null;

    /// <summary>The cloth at a scale, one repeat of it with its upper left corner at a place, then turned about that.</summary>
    /// <param name="pointsPerInch">How large an inch of the quilt is on paper.</param>
    internal ImageFill At(Drafting.Spot corner, double pointsPerInch, int degrees) =>
        new(
            Image,
            Transform
                .Scale(
                    Math.Round(WidthInches * pointsPerInch, 3),
                    Math.Round(HeightInches * pointsPerInch, 3)
                )
                .Then(Transform.Turn(degrees))
                .Then(Transform.Move(Math.Round(corner.X, 2), Math.Round(corner.Y, 2)))
        );
}
