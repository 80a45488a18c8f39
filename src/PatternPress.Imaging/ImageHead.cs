using System.Buffers.Binary;
using System.IO.Compression;

namespace PatternPress.Imaging;

/// <summary>
/// What a PNG (W3C Recommendation) or JPEG (ITU-T T.81, JFIF, Adobe's and ICC's application segments) says of itself before
/// its pixels: read by hand, so that limits are kept before a decoder sees the file.
/// </summary>
/// <param name="Profile">The embedded ICC profile; null for none.</param>
/// <param name="Channels">1 grey, 3 color, 4 printing inks; a PNG's transparency is not counted.</param>
sealed record ImageHead(bool IsJpeg, int Width, int Height, int Channels, byte[]? Profile)
{
    /// <summary>A profile larger than this is not that of a camera or screen.</summary>
    const int MostProfileBytes = 4_000_000;

    static ReadOnlySpan<byte> PngSignature =>
        [0x89, (byte)'P', (byte)'N', (byte)'G', 13, 10, 26, 10];

    /// <returns>The head, or what is wrong.</returns>
    public static (ImageHead? Head, ImageFault? Fault) Read(ReadOnlySpan<byte> file)
    {
        if (file.StartsWith(PngSignature))
        {
            return Png(file);
        }

        return file.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xD8, 0xFF])
            ? Jpeg(file)
            : (null, new(ImageFaultKind.WrongType, OtherType(file), "save it as PNG or JPEG"));
    }

    static string OtherType(ReadOnlySpan<byte> file)
    {
        var name =
            file.IsEmpty ? "empty"
            : file.StartsWith("GIF8"u8) ? "a GIF"
            : file.StartsWith("RIFF"u8) && file.Length > 12 && file[8..].StartsWith("WEBP"u8)
                ? "a WebP"
            : file.StartsWith("BM"u8) ? "a BMP"
            : file.StartsWith("II*\0"u8) || file.StartsWith("MM\0*"u8) ? "a TIFF"
            : file.StartsWith("%PDF"u8) ? "a PDF"
            : file.Length > 12 && file[4..].StartsWith("ftyp"u8) ? "a HEIF or AVIF"
            : file.StartsWith("<"u8) ? "a text, perhaps an SVG"
            : "no image that is known";
        return $"it is neither PNG nor JPEG but {name}";
    }

    static (ImageHead?, ImageFault?) Png(ReadOnlySpan<byte> file)
    {
        var rest = file[8..];
        int width = 0,
            height = 0,
            channels = 0;
        byte[]? profile = null;
        while (rest.Length >= 12)
        {
            var length = BinaryPrimitives.ReadUInt32BigEndian(rest);
            var type = rest.Slice(4, 4);
            if (length > rest.Length - 12)
            {
                // Of the pixels themselves the decoder says more.
                return type.SequenceEqual("IDAT"u8) && width > 0
                    ? (new(false, width, height, channels, profile), null)
                    : Broken("it ends in the middle of its head");
            }

            var data = rest.Slice(8, (int)length);
            if (type.SequenceEqual("IHDR"u8) && length == 13)
            {
                var (w, h) = (
                    BinaryPrimitives.ReadUInt32BigEndian(data),
                    BinaryPrimitives.ReadUInt32BigEndian(data[4..])
                );
                if (w is 0 or > int.MaxValue || h is 0 or > int.MaxValue)
                {
                    return Broken("it says that it has no pixels");
                }

                (width, height) = ((int)w, (int)h);
                channels = data[9] is 0 or 4 ? 1 : 3;
            }
            else if (type.SequenceEqual("iCCP"u8))
            {
                profile = Unpacked(data);
                if (profile is null)
                {
                    return Broken("its color profile cannot be unpacked");
                }
            }
            else if (type.SequenceEqual("IDAT"u8))
            {
                break;
            }

            rest = rest[(int)(length + 12)..];
        }

        return width > 0
            ? (new(false, width, height, channels, profile), null)
            : Broken("it ends in the middle of its head");
    }

    // A name, a zero, the way of packing, and the profile as a zlib stream.
    static byte[]? Unpacked(ReadOnlySpan<byte> data)
    {
        var name = data.IndexOf((byte)0);
        if (name < 0 || name + 2 >= data.Length)
        {
            return null;
        }

        try
        {
            using var packed = new MemoryStream(data[(name + 2)..].ToArray());
            using var zlib = new ZLibStream(packed, CompressionMode.Decompress);
            var profile = new MemoryStream();
            var buffer = new byte[8192];
            int read;
            while ((read = zlib.Read(buffer)) > 0)
            {
                profile.Write(buffer, 0, read);
                if (profile.Length > MostProfileBytes)
                {
                    return null;
                }
            }

            return profile.ToArray();
        }
        catch (InvalidDataException)
        {
            return null;
        }
    }

    static (ImageHead?, ImageFault?) Jpeg(ReadOnlySpan<byte> file)
    {
        var parts = new SortedDictionary<int, byte[]>();
        var at = 2;
        while (at + 4 <= file.Length)
        {
            if (file[at] != 0xFF)
            {
                return Broken("its head is garbled");
            }

            var marker = file[at + 1];
            if (marker == 0xFF)
            {
                at++;
                continue;
            }

            if (marker is 0x01 or (>= 0xD0 and <= 0xD7))
            {
                at += 2;
                continue;
            }

            int length = BinaryPrimitives.ReadUInt16BigEndian(file[(at + 2)..]);
            if (length < 2 || at + 2 + length > file.Length)
            {
                return Broken("it ends in the middle of its head");
            }

            var data = file.Slice(at + 4, length - 2);
            switch (marker)
            {
                case 0xE2 when data.Length > 14 && data.StartsWith("ICC_PROFILE\0"u8):
                    parts[data[12]] = data[14..].ToArray();
                    break;
                case 0xDA or 0xD9:
                    return Broken("it has no head");
                case >= 0xC0 and <= 0xCF and not (0xC4 or 0xC8 or 0xCC) when data.Length >= 6:
                    int height = BinaryPrimitives.ReadUInt16BigEndian(data[1..]),
                        width = BinaryPrimitives.ReadUInt16BigEndian(data[3..]);
                    return width == 0 || height == 0
                        ? Broken("it says that it has no pixels")
                        : (
                            new(
                                true,
                                width,
                                height,
                                data[5],
                                WithLater(parts, file[(at + 2 + length)..])
                            ),
                            null
                        );
            }

            at += 2 + length;
        }

        return Broken("it ends in the middle of its head");
    }

    // The parts of a profile may follow the frame's head, up to the first scan.
    static byte[]? WithLater(SortedDictionary<int, byte[]> parts, ReadOnlySpan<byte> rest)
    {
        while (rest.Length >= 4 && rest[0] == 0xFF && rest[1] is not (0xDA or 0xD9))
        {
            int length = BinaryPrimitives.ReadUInt16BigEndian(rest[2..]);
            if (length < 2 || length + 2 > rest.Length)
            {
                break;
            }

            var data = rest.Slice(4, length - 2);
            if (rest[1] == 0xE2 && data.Length > 14 && data.StartsWith("ICC_PROFILE\0"u8))
            {
                parts[data[12]] = data[14..].ToArray();
            }

            rest = rest[(length + 2)..];
        }

        return parts.Count == 0 ? null : [.. parts.Values.SelectMany(part => part)];
    }

    static (ImageHead?, ImageFault?) Broken(string what) =>
        (
            null,
            new(ImageFaultKind.Broken, what, "save it again, or copy it again from where it came")
        );
}
