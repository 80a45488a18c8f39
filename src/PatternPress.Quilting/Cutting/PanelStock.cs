using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Cutting;

/// <summary>A panel of fabric on the cutting table: what it gives, on the ruler's marks, once it has shrunk.</summary>
/// <param name="Kind">As it is bought.</param>
/// <param name="BoughtWidth">Across the fabric it was cut from, as bought.</param>
/// <param name="Width">Across the fabric it was cut from.</param>
/// <param name="Height">Along that fabric.</param>
/// <param name="Directional">Whether its print has an up.</param>
public sealed record PanelStock(
    Panel Kind,
    Length BoughtWidth,
    Length Width,
    Length Height,
    bool Directional
)
{
    /// <summary>Length of a strip that is not cut into pieces: along the longer side, or across the fabric where the print has
    /// an up.</summary>
    public Length StripLength => Directional ? Width : Length.Max(Width, Height);

    /// <param name="usableWidth">Of the fabric, for a panel of its whole width: the ends of that are squared like those of any
    /// strip; a panel cut to size needs no squaring.</param>
    public static PanelStock Of(Panel kind, Length usableWidth, bool directional, House house) =>
        new(
            kind,
            kind.Width ?? usableWidth,
            kind.Width is { } width
                ? house.Ruler.Down(house.AsCut(width))
                : house.StripLength(usableWidth),
            house.Ruler.Down(house.AsCut(kind.Height)),
            directional
        );
}
