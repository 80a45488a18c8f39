using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Model;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>How a fabric is drawn everywhere in a booklet.</summary>
/// <param name="Key">The letter that stands for it.</param>
/// <param name="Color">Its flat colour; white where only black is printed.</param>
/// <param name="Print">Its print, for pictures of the finished quilt; null for a solid.</param>
/// <param name="Hatch">Tells it from all others without colour.</param>
/// <param name="LetterInk">The ink of letters on it: light on dark fabrics, dark on light ones.</param>
public sealed record FabricLook(
    string Key,
    string Name,
    Ink Color,
    PrintTexture? Print,
    HatchFill Hatch,
    Ink LetterInk
)
{
    /// <summary>The designer's picture of it, drawn instead of the print; null for none and where only black is printed.</summary>
    public FabricCloth? Cloth { get; init; }

    /// <summary>Whether the print has an up, so that it turns with the pieces it is on.</summary>
    public bool IsDirectional { get; init; }

    /// <summary>How the print lies on a piece, in degrees; the same for all where it has no up.</summary>
    public int PrintDegrees(Turn piece) => IsDirectional ? piece.Degrees : 0;

    /// <summary>The wrong side of the fabric: the colour washed out.</summary>
    public Ink WrongSide => Color.MixedWith(Ink.White, 0.72);

    internal static Ink InkOf(Color color) => new(color.Red, color.Green, color.Blue);
}
