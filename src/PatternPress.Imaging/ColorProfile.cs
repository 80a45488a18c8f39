using System.Buffers.Binary;

namespace PatternPress.Imaging;

/// <summary>
/// An ICC profile (ISO 15076-1) of the kind that cameras, screens and scanners have: a curve for each channel and a matrix
/// to the colors of light, or one curve for greys. Read by hand, so that the same file gives the same pixels on every
/// machine. Profiles made of tables, as presses have, are refused.
/// </summary>
sealed class ColorProfile
{
    // The colorants of sRGB relative to the white of D50, as the ICC's own profile of sRGB has them ("sRGB2014.icc",
    // published values): rows X, Y, Z.
    static readonly double[] StandardColorants =
    [
        0.43607,
        0.38515,
        0.14307,
        0.22249,
        0.71687,
        0.06061,
        0.01392,
        0.09708,
        0.71410,
    ];

    static readonly double[] FromD50 = Inverse(StandardColorants);

    readonly double[][] curves;
    readonly double[] toStandard;

    ColorProfile(double[][] curves, double[] toStandard) =>
        (this.curves, this.toStandard) = (curves, toStandard);

    /// <summary>Whether it changes no 8-bit value by more than one, so that pixels can stay as they are.</summary>
    public bool IsStandard
    {
        get
        {
            Span<byte> pixel = stackalloc byte[3];
            foreach (var sample in Samples)
            {
                for (var i = 0; i < 3; i++)
                {
                    pixel[i] = (byte)(sample >> (16 - (8 * i)));
                }

                Convert(pixel);
                for (var i = 0; i < 3; i++)
                {
                    if (Math.Abs(pixel[i] - (byte)(sample >> (16 - (8 * i)))) > 1)
                    {
                        return false;
                    }
                }
            }

            return true;
        }
    }

    static ReadOnlySpan<int> Samples =>
        [
            0xFF0000,
            0x00FF00,
            0x0000FF,
            0xFFFF00,
            0x808080,
            0x204060,
            0xC08040,
            0x101010,
            0x3A9C5D,
            0xFFFFFF,
        ];

    /// <param name="channels">Of the image: 1 or 3.</param>
    /// <returns>Null, with the reason, for a profile that cannot be used.</returns>
    public static ColorProfile? Read(ReadOnlySpan<byte> profile, int channels, out string reason)
    {
        reason = "its color profile is broken";
        if (profile.Length < 132 || !profile[36..].StartsWith("acsp"u8))
        {
            return null;
        }

        var isGrey = profile[16..].StartsWith("GRAY"u8);
        if (!isGrey && !profile[16..].StartsWith("RGB "u8))
        {
            reason = $"its color profile is for \"{Name(profile.Slice(16, 4))}\", not for RGB";
            return null;
        }

        if (isGrey != (channels == 1))
        {
            // A grey image with a profile for colors, as some programs write, is grey by its first curve.
            if (isGrey)
            {
                reason = "its color profile is for greys and its pixels have colors";
                return null;
            }
        }

        if (isGrey)
        {
            return Curve(Tag(profile, "kTRC"u8)) is { } grey
                ? new([grey, grey, grey], [1, 0, 0, 0, 1, 0, 0, 0, 1])
                : null;
        }

        var curves = new double[3][];
        var matrix = new double[9];
        for (var i = 0; i < 3; i++)
        {
            var column = Tag(
                profile,
                i == 0 ? "rXYZ"u8
                    : i == 1 ? "gXYZ"u8
                    : "bXYZ"u8
            );
            var curve = Tag(
                profile,
                i == 0 ? "rTRC"u8
                    : i == 1 ? "gTRC"u8
                    : "bTRC"u8
            );
            if (column.Length < 20 || curve.IsEmpty || !profile[20..].StartsWith("XYZ "u8))
            {
                reason = "its color profile is made of tables, as that of a press or printer is";
                return null;
            }

            if (Curve(curve) is not { } read)
            {
                return null;
            }

            curves[i] = read;
            for (var row = 0; row < 3; row++)
            {
                matrix[(row * 3) + i] = Fixed(column[(8 + (4 * row))..]);
            }
        }

        return new(curves, Product(FromD50, matrix));
    }

    /// <summary>Turns pixels of red, green and blue into those of sRGB, in place.</summary>
    public void Convert(Span<byte> pixels)
    {
        var m = toStandard;
        for (var i = 0; i + 2 < pixels.Length; i += 3)
        {
            double r = curves[0][pixels[i]],
                g = curves[1][pixels[i + 1]],
                b = curves[2][pixels[i + 2]];
            pixels[i] = Encoded((m[0] * r) + (m[1] * g) + (m[2] * b));
            pixels[i + 1] = Encoded((m[3] * r) + (m[4] * g) + (m[5] * b));
            pixels[i + 2] = Encoded((m[6] * r) + (m[7] * g) + (m[8] * b));
        }
    }

    static byte Encoded(double light) =>
        StandardCurve.Encode((int)Math.Round(Math.Clamp(light, 0, 1) * StandardCurve.Full));

    static string Name(ReadOnlySpan<byte> four)
    {
        Span<char> name = stackalloc char[4];
        for (var i = 0; i < 4; i++)
        {
            name[i] = four[i] is >= 0x20 and < 0x7F ? (char)four[i] : '?';
        }

        return new string(name).Trim();
    }

    static ReadOnlySpan<byte> Tag(ReadOnlySpan<byte> profile, ReadOnlySpan<byte> name)
    {
        var count = Math.Min(BinaryPrimitives.ReadUInt32BigEndian(profile[128..]), 200);
        for (var i = 0; i < count; i++)
        {
            var entry = 132 + (12 * i);
            if (entry + 12 > profile.Length)
            {
                return default;
            }

            if (!profile[entry..].StartsWith(name))
            {
                continue;
            }

            var offset = BinaryPrimitives.ReadUInt32BigEndian(profile[(entry + 4)..]);
            var size = BinaryPrimitives.ReadUInt32BigEndian(profile[(entry + 8)..]);
            return offset <= profile.Length && size <= profile.Length - offset
                ? profile.Slice((int)offset, (int)size)
                : default;
        }

        return default;
    }

    // The light of each of the 256 code values; null for a curve that is not understood.
    static double[]? Curve(ReadOnlySpan<byte> tag)
    {
        if (tag.StartsWith("curv"u8) && tag.Length >= 12)
        {
            return Sampled(tag);
        }

        return tag.StartsWith("para"u8) && tag.Length >= 16 ? Parametric(tag) : null;
    }

    static double[]? Sampled(ReadOnlySpan<byte> tag)
    {
        var count = BinaryPrimitives.ReadUInt32BigEndian(tag[8..]);
        if (count > (tag.Length - 12) / 2)
        {
            return null;
        }

        var curve = new double[256];
        for (var v = 0; v < 256; v++)
        {
            var x = v / 255.0;
            if (count == 0)
            {
                curve[v] = x;
            }
            else if (count == 1)
            {
                curve[v] = Math.Pow(x, BinaryPrimitives.ReadUInt16BigEndian(tag[12..]) / 256.0);
            }
            else
            {
                var place = x * (count - 1);
                var low = Math.Min((int)place, (int)count - 2);
                double from = BinaryPrimitives.ReadUInt16BigEndian(tag[(12 + (2 * low))..]),
                    to = BinaryPrimitives.ReadUInt16BigEndian(tag[(14 + (2 * low))..]);
                curve[v] = (from + ((to - from) * (place - low))) / 65535;
            }
        }

        return curve;
    }

    // ISO 15076-1, table 68: kinds 0 to 4.
    static double[]? Parametric(ReadOnlySpan<byte> tag)
    {
        var kind = BinaryPrimitives.ReadUInt16BigEndian(tag[8..]);
        ReadOnlySpan<int> parameters = [1, 3, 4, 5, 7];
        if (kind > 4 || tag.Length < 12 + (4 * parameters[kind]))
        {
            return null;
        }

        Span<double> p = stackalloc double[7];
        for (var i = 0; i < parameters[kind]; i++)
        {
            p[i] = Fixed(tag[(12 + (4 * i))..]);
        }

        double g = p[0],
            a = kind == 0 ? 1 : p[1],
            b = p[2];
        var curve = new double[256];
        for (var v = 0; v < 256; v++)
        {
            var x = v / 255.0;
            var power = Math.Pow(Math.Max(0, (a * x) + b), g);
            var value = kind switch
            {
                0 => Math.Pow(x, g),
                1 => x >= -b / a ? power : 0,
                2 => x >= -b / a ? power + p[3] : p[3],
                3 => x >= p[4] ? power : p[3] * x,
                _ => x >= p[4] ? power + p[5] : (p[3] * x) + p[6],
            };
            if (!double.IsFinite(value))
            {
                return null;
            }

            curve[v] = Math.Clamp(value, 0, 1);
        }

        return curve;
    }

    static double Fixed(ReadOnlySpan<byte> bytes) =>
        BinaryPrimitives.ReadInt32BigEndian(bytes) / 65536.0;

    static double[] Product(double[] m, double[] n)
    {
        var product = new double[9];
        for (var row = 0; row < 3; row++)
        {
            for (var column = 0; column < 3; column++)
            {
                for (var i = 0; i < 3; i++)
                {
                    product[(row * 3) + column] += m[(row * 3) + i] * n[(i * 3) + column];
                }
            }
        }

        return product;
    }

    static double[] Inverse(double[] m)
    {
        double a = (m[4] * m[8]) - (m[5] * m[7]),
            b = (m[5] * m[6]) - (m[3] * m[8]),
            c = (m[3] * m[7]) - (m[4] * m[6]);
        var determinant = (m[0] * a) + (m[1] * b) + (m[2] * c);
        double[] adjugate =
        [
            a,
            (m[2] * m[7]) - (m[1] * m[8]),
            (m[1] * m[5]) - (m[2] * m[4]),
            b,
            (m[0] * m[8]) - (m[2] * m[6]),
            (m[2] * m[3]) - (m[0] * m[5]),
            c,
            (m[1] * m[6]) - (m[0] * m[7]),
            (m[0] * m[4]) - (m[1] * m[3]),
        ];
        return Array.ConvertAll(adjugate, one => one / determinant);
    }
}
