using System.Collections.Immutable;

namespace PatternPress.Imaging;

/// <summary>An image made ready for print: upright, opaque, in the colors of sRGB (IEC 61966-2-1), no larger than asked for.</summary>
/// <param name="Width">In pixels.</param>
/// <param name="Height">In pixels.</param>
/// <param name="Pixels">Red, green, blue of each pixel, row by row from the upper left.</param>
/// <param name="MediaType">Of <paramref name="Encoded"/>: image/jpeg for what was a JPEG, else image/png.</param>
/// <param name="Encoded">The same image as a file, without a color profile.</param>
public sealed record StandardImage(
    int Width,
    int Height,
    ImmutableArray<byte> Pixels,
    string MediaType,
    ImmutableArray<byte> Encoded
)
{
    /// <summary>Width and height of the image before it was made smaller, in pixels: its true shape.</summary>
    public (int Width, int Height) Original { get; init; } = (Width, Height);
}
