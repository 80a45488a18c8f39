using System.Collections.Immutable;

namespace PatternPress.Imaging;

/// <summary>Makes an image of PNG or JPEG ready for print. Whatever the bytes are, the answer is an image or what is wrong.</summary>
public static class ImageReader
{
    /// <summary>No image has more pixels on its longer side when it is ready: more cannot be seen on a page.</summary>
    public const int MostPixels = 600;

    const int LeastPixels = 64;

    /// <param name="file">The file's bytes.</param>
    /// <param name="across">
    /// How many pixels are wanted across the width: more are left out, within 64 and <see cref="MostPixels"/> on the longer side.
    /// </param>
    public static (StandardImage? Image, ImageFault? Fault) Read(
        ReadOnlyMemory<byte> file,
        int across,
        ImageLimits? limits = null
    )
    {
        limits ??= ImageLimits.Default;
        if (file.Length > limits.Bytes)
        {
            return (null, TooManyBytes(file.Length, limits));
        }

        var (head, fault) = ImageHead.Read(file.Span);
        fault ??= Fault(head!, limits);
        if (fault is not null)
        {
            return (null, fault);
        }

        ColorProfile? profile = null;
        if (head!.Profile is { } bytes)
        {
            profile = ColorProfile.Read(bytes, head.Channels, out var reason);
            if (profile is null)
            {
                return (null, new(ImageFaultKind.WrongColors, reason, SaveAsStandard));
            }
        }

        var (pixels, damage) = PixelDecoder.Decode(file, head, MostPixels);
        if (pixels is null)
        {
            return (
                null,
                new(
                    ImageFaultKind.Broken,
                    damage!,
                    "save it again, or copy it again from where it came"
                )
            );
        }

        if (profile is { IsStandard: false })
        {
            profile.Convert(pixels.Pixels);
        }

        var original = (pixels.Width, pixels.Height);
        if (head.IsJpeg)
        {
            // It may have been unpacked at a half or less, which rounds.
            var swapped = (pixels.Width > pixels.Height) != (head.Width > head.Height);
            original = swapped ? (head.Height, head.Width) : (head.Width, head.Height);
        }

        var shape = (double)pixels.Height / pixels.Width;
        var longest = Math.Clamp(across * Math.Max(1, shape), LeastPixels, MostPixels);
        pixels = pixels.Within((int)Math.Round(longest));
        return (
            new(
                pixels.Width,
                pixels.Height,
                ImmutableArray.Create(pixels.Pixels),
                head.IsJpeg ? "image/jpeg" : "image/png",
                PixelDecoder.Encode(pixels, head.IsJpeg)
            )
            {
                Original = original,
            },
            null
        );
    }

    /// <summary>A file that need not be read to know that it is too large.</summary>
    public static ImageFault TooManyBytes(long bytes, ImageLimits limits) =>
        new(
            ImageFaultKind.TooLarge,
            $"it has {bytes / 1e6:0.0} MB; {limits.Bytes / 1e6:0} MB is the most",
            "save it smaller: 1,000 pixels on its longer side are plenty"
        );

    const string SaveAsStandard = "save it with the color profile sRGB";

    static ImageFault? Fault(ImageHead head, ImageLimits limits)
    {
        var size = $"{head.Width:N0} × {head.Height:N0} pixels";
        if (
            head.Width > limits.Side
            || head.Height > limits.Side
            || (long)head.Width * head.Height > limits.Pixels
        )
        {
            return new(
                ImageFaultKind.TooLarge,
                $"it has {size}; {limits.Pixels / 1_000_000:N0} million in all and {limits.Side:N0} a side are the most",
                "save it smaller: 1,000 pixels on its longer side are plenty"
            );
        }

        if (Math.Min(head.Width, head.Height) < limits.LeastSide)
        {
            return new(
                ImageFaultKind.TooSmall,
                $"it has only {size}; {limits.LeastSide} a side are the least",
                "take a larger picture, or leave it out and give a color and a print"
            );
        }

        return head.Channels is 1 or 3
            ? null
            : new(
                ImageFaultKind.WrongColors,
                head.Channels == 4
                    ? "its colors are those of a press (CMYK)"
                    : $"it has {head.Channels} color channels",
                SaveAsStandard
            );
    }
}
