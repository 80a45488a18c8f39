using System.Collections.Immutable;

namespace PatternPress.Typesetting.Drawings;

/// <summary>
/// A picture of pixels in the colours of sRGB (IEC 61966-2-1). It is one and the same wherever it is used: a file holds each
/// once.
/// </summary>
/// <param name="Name">What it shows, for dumps and messages.</param>
/// <param name="Width">In pixels.</param>
/// <param name="Height">In pixels.</param>
/// <param name="Pixels">Red, green and blue of each pixel, row by row from the upper left.</param>
/// <param name="MediaType">Of <paramref name="Encoded"/>: image/jpeg or image/png.</param>
/// <param name="Encoded">The same pixels as a file.</param>
public sealed record RasterImage(
    string Name,
    int Width,
    int Height,
    ImmutableArray<byte> Pixels,
    string MediaType,
    ImmutableArray<byte> Encoded
)
{
    public const string Jpeg = "image/jpeg";

    public bool Equals(RasterImage? other) => ReferenceEquals(this, other);

    public override int GetHashCode() =>
        System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(this);
}
