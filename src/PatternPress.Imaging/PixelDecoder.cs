using System.Collections.Immutable;
using System.Runtime.InteropServices;
using SkiaSharp;

namespace PatternPress.Imaging;

/// <summary>The one place that knows the imaging library: files to pixels and back. Colors are left as the file has them.</summary>
static class PixelDecoder
{
    /// <summary>How good the JPEGs are that we write: little is lost, and they are a tenth of the pixels.</summary>
    const int Quality = 88;

    /// <param name="longest">A JPEG may be unpacked at a half, a quarter or an eighth, as long as it stays larger than this.</param>
    public static (PixelGrid? Pixels, string? Damage) Decode(
        ReadOnlyMemory<byte> file,
        ImageHead head,
        int longest
    )
    {
        using var stream = new SKMemoryStream(file.ToArray());
        using var codec = SKCodec.Create(stream, out var made);
        if (codec is null)
        {
            return (
                null,
                made == SKCodecResult.IncompleteInput
                    ? "it ends in the middle of its head"
                    : "its head is garbled"
            );
        }

        if (codec.Info.Width != head.Width || codec.Info.Height != head.Height)
        {
            return (null, "it contradicts itself about how many pixels it has");
        }

        var size = codec.Info.Size;
        for (var part = 8; head.IsJpeg && part > 1; part /= 2)
        {
            var scaled = codec.GetScaledDimensions(1f / part);
            if (Math.Max(scaled.Width, scaled.Height) >= 2 * longest)
            {
                size = scaled;
                break;
            }
        }

        var info = new SKImageInfo(
            size.Width,
            size.Height,
            SKColorType.Rgba8888,
            SKAlphaType.Unpremul
        );
        var unpacked = new byte[info.BytesSize];
        var handle = GCHandle.Alloc(unpacked, GCHandleType.Pinned);
        SKCodecResult result;
        try
        {
            result = codec.GetPixels(info, handle.AddrOfPinnedObject());
        }
        finally
        {
            handle.Free();
        }

        if (result != SKCodecResult.Success)
        {
            return (
                null,
                result == SKCodecResult.IncompleteInput
                    ? "it ends before its last pixel"
                    : "its pixels are garbled"
            );
        }

        return (
            new PixelGrid(size.Width, size.Height, OnWhite(unpacked)).Upright(
                (int)codec.EncodedOrigin
            ),
            null
        );
    }

    /// <summary>The pixels as a file.</summary>
    public static ImmutableArray<byte> Encode(PixelGrid grid, bool asJpeg)
    {
        var pixels = new byte[grid.Width * grid.Height * 4];
        for (int from = 0, to = 0; from < grid.Pixels.Length; from += 3, to += 4)
        {
            grid.Pixels.AsSpan(from, 3).CopyTo(pixels.AsSpan(to));
            pixels[to + 3] = 255;
        }

        var info = new SKImageInfo(
            grid.Width,
            grid.Height,
            SKColorType.Rgba8888,
            SKAlphaType.Opaque
        );
        var handle = GCHandle.Alloc(pixels, GCHandleType.Pinned);
        try
        {
            using var pixmap = new SKPixmap(info, handle.AddrOfPinnedObject());
            using var data = pixmap.Encode(
                asJpeg ? SKEncodedImageFormat.Jpeg : SKEncodedImageFormat.Png,
                Quality
            );
            return data is null
                ? throw new InvalidOperationException("The imaging library did not write an image.")
                : [.. data.AsSpan()];
        }
        finally
        {
            handle.Free();
        }
    }

    // What is transparent lies on white paper.
    static byte[] OnWhite(byte[] rgba)
    {
        var rgb = new byte[rgba.Length / 4 * 3];
        for (int from = 0, to = 0; from < rgba.Length; from += 4, to += 3)
        {
            int alpha = rgba[from + 3];
            for (var i = 0; i < 3; i++)
            {
                rgb[to + i] = (byte)(
                    ((rgba[from + i] * alpha) + (255 * (255 - alpha)) + 127) / 255
                );
            }
        }

        return rgb;
    }
}
