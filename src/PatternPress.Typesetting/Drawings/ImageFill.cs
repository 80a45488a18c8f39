namespace PatternPress.Typesetting.Drawings;

/// <summary>An image laid over an area again and again, edge to edge, as cloth is printed.</summary>
/// <param name="Tile">
/// Where one of them lies: from the square of side 1, y down, to the drawing's units or, on a page, to points.
/// </param>
public sealed record ImageFill(RasterImage Image, Transform Tile)
{
    /// <summary>Width of one on paper or in the drawing.</summary>
    public double Width => Math.Sqrt((Tile.A * Tile.A) + (Tile.B * Tile.B));

    /// <summary>Height of one on paper or in the drawing.</summary>
    public double Height => Math.Sqrt((Tile.C * Tile.C) + (Tile.D * Tile.D));
}
