using System.Collections.Immutable;

namespace PatternPress.Quilting.Pictures;

/// <summary>A picture of a fabric's print, upright, in the colors of sRGB (IEC 61966-2-1).</summary>
/// <param name="Width">In pixels.</param>
/// <param name="Height">In pixels.</param>
/// <param name="Pixels">Red, green and blue of each pixel, row by row from the upper left.</param>
/// <param name="MediaType">Of <paramref name="Encoded"/>: image/jpeg or image/png.</param>
/// <param name="Encoded">The same pixels as a file.</param>
public sealed record FabricPicture(
    int Width,
    int Height,
    ImmutableArray<byte> Pixels,
    string MediaType,
    ImmutableArray<byte> Encoded
)
{
    /// <summary>Width and height of the picture before it was made smaller, in pixels: its true shape.</summary>
    public (int Width, int Height) Original { get; init; } = (Width, Height);
}
