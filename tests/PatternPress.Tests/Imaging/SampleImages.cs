using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;
using PatternPress.Imaging;
using SkiaSharp;

namespace PatternPress.Tests.Imaging;

/// <summary>Images made for tests: PNGs written by hand, so that each part can be spoiled, and JPEGs by the library.</summary>
internal static class SampleImages
{
    public delegate (int Red, int Green, int Blue) Paint(int x, int y);

    /// <summary>A cloth with rings on a ground, larger than it is used.</summary>
    public static (int, int, int) Rings(int x, int y)
    {
        double dx = (x % 40) - 20,
            dy = (y % 40) - 20,
            r = Math.Sqrt((dx * dx) + (dy * dy));
        return r is > 9 and < 14 ? (240, 220, 190) : (30, 60, 110);
    }

    public static Paint Flat(int red, int green, int blue) => (_, _) => (red, green, blue);

    /// <param name="profile">An ICC profile to embed.</param>
    /// <param name="claimed">What the head says of the size, where that is not so.</param>
    public static byte[] Png(
        int width,
        int height,
        Paint paint,
        byte[]? profile = null,
        (int Width, int Height)? claimed = null
    )
    {
        var rows = new byte[height * ((width * 3) + 1)];
        for (int y = 0, at = 0; y < height; y++)
        {
            at++;
            for (int x = 0; x < width; x++, at += 3)
            {
                (int r, int g, int b) = paint(x, y);
                (rows[at], rows[at + 1], rows[at + 2]) = ((byte)r, (byte)g, (byte)b);
            }
        }
        using var file = new MemoryStream();
        file.Write([0x89, (byte)'P', (byte)'N', (byte)'G', 13, 10, 26, 10]);
        (int w, int h) = claimed ?? (width, height);
        Chunk(file, "IHDR", [.. Number(w), .. Number(h), 8, 2, 0, 0, 0]);
        if (profile is not null)
        {
            Chunk(file, "iCCP", [.. "icc"u8, 0, 0, .. Packed(profile)]);
        }
        Chunk(file, "IDAT", Packed(rows));
        Chunk(file, "IEND", []);
        return file.ToArray();
    }

    public static byte[] Jpeg(int width, int height, Paint paint, int quality = 90)
    {
        using var bitmap = new SKBitmap(width, height, SKColorType.Rgba8888, SKAlphaType.Opaque);
        for (int y = 0; y < height; y++)
        {
            for (int x = 0; x < width; x++)
            {
                (int r, int g, int b) = paint(x, y);
                bitmap.SetPixel(x, y, new SKColor((byte)r, (byte)g, (byte)b));
            }
        }
        using SKData data =
            bitmap.Encode(SKEncodedImageFormat.Jpeg, quality)
            ?? throw new InvalidOperationException();
        return data.ToArray();
    }

    /// <summary>A JPEG with one more segment right after its start.</summary>
    public static byte[] WithSegment(byte[] jpeg, byte marker, byte[] content) =>
        [
            .. jpeg[..2],
            0xFF,
            marker,
            (byte)((content.Length + 2) >> 8),
            (byte)(content.Length + 2),
            .. content,
            .. jpeg[2..],
        ];

    /// <summary>An Exif segment that says how the camera was held.</summary>
    public static byte[] Held(byte[] jpeg, byte orientation) =>
        WithSegment(
            jpeg,
            0xE1,
            [
                .. "Exif\0\0MM"u8,
                0,
                42,
                0,
                0,
                0,
                8,
                0,
                1,
                1,
                0x12,
                0,
                3,
                0,
                0,
                0,
                1,
                0,
                orientation,
                0,
                0,
                0,
                0,
                0,
                0,
            ]
        );

    /// <summary>An ICC profile of a curve and a matrix.</summary>
    /// <param name="colorants">X, Y, Z of red, of green, of blue, relative to D50.</param>
    /// <param name="gamma">In 1/256.</param>
    public static byte[] Profile(
        double[] colorants,
        int gamma,
        string space = "RGB ",
        bool tables = false
    )
    {
        byte[] curve = [.. "curv"u8, 0, 0, 0, 0, 0, 0, 0, 1, (byte)(gamma >> 8), (byte)gamma, 0, 0];
        var tags = new List<(string Name, byte[] Data)>();
        if (space == "GRAY")
        {
            tags.Add(("kTRC", curve));
        }
        else if (tables)
        {
            tags.Add(("A2B0", new byte[64]));
        }
        else
        {
            for (int i = 0; i < 3; i++)
            {
                tags.Add(
                    (
                        "rgb"[i] + "XYZ",
                        [
                            .. "XYZ "u8,
                            0,
                            0,
                            0,
                            0,
                            .. Number((int)Math.Round(colorants[3 * i] * 65536)),
                            .. Number((int)Math.Round(colorants[(3 * i) + 1] * 65536)),
                            .. Number((int)Math.Round(colorants[(3 * i) + 2] * 65536)),
                        ]
                    )
                );
                tags.Add(("rgb"[i] + "TRC", curve));
            }
        }
        var table = new List<byte>(Number(tags.Count));
        var data = new List<byte>();
        int start = 132 + (12 * tags.Count);
        foreach ((string name, byte[] content) in tags)
        {
            table.AddRange(Encoding.ASCII.GetBytes(name));
            table.AddRange(Number(start + data.Count));
            table.AddRange(Number(content.Length));
            data.AddRange(content);
        }
        var head = new byte[128];
        Number(start + data.Count).CopyTo(head, 0);
        head[8] = 2;
        Encoding.ASCII.GetBytes("mntr" + space + "XYZ ").CopyTo(head, 12);
        Encoding.ASCII.GetBytes("acsp").CopyTo(head, 36);
        return [.. head, .. table, .. data];
    }

    public static StandardImage Read(byte[] file, int across = 600)
    {
        (StandardImage? image, ImageFault? fault) = ImageReader.Read(file, across);
        fault.ShouldBeNull(fault?.What);
        return image!;
    }

    public static ImageFault Refused(byte[] file)
    {
        (StandardImage? image, ImageFault? fault) = ImageReader.Read(file, 600);
        image.ShouldBeNull();
        fault!.Remedy.ShouldNotBeNullOrWhiteSpace();
        return fault;
    }

    public static (int, int, int) At(StandardImage image, int x, int y)
    {
        int at = ((y * image.Width) + x) * 3;
        return (image.Pixels[at], image.Pixels[at + 1], image.Pixels[at + 2]);
    }

    public static byte[] Number(int value)
    {
        var bytes = new byte[4];
        BinaryPrimitives.WriteInt32BigEndian(bytes, value);
        return bytes;
    }

    private static byte[] Packed(byte[] content)
    {
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.Optimal, leaveOpen: true))
        {
            zlib.Write(content);
        }
        return packed.ToArray();
    }

    private static void Chunk(MemoryStream file, string type, byte[] data)
    {
        byte[] named = [.. Encoding.ASCII.GetBytes(type), .. data];
        file.Write(Number(data.Length));
        file.Write(named);
        file.Write(Number((int)Crc(named)));
    }

    // The check sum of PNG: ISO 3309's CRC-32.
    private static uint Crc(byte[] bytes)
    {
        uint crc = uint.MaxValue;
        foreach (byte one in bytes)
        {
            crc ^= one;
            for (int bit = 0; bit < 8; bit++)
            {
                crc = (crc & 1) != 0 ? 0xEDB88320 ^ (crc >> 1) : crc >> 1;
            }
        }
        return ~crc;
    }
}
