using System.Buffers.Binary;
using System.Collections.Immutable;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Typesetting.Fonts;

/// <summary>The shapes of letters as paths (OpenType specification 1.9, glyf table).</summary>
public static class GlyphOutlines
{
    // Bits of simple glyphs' flags and of composite glyphs' component flags.
    const int OnCurve = 1;
    const int XShort = 2;
    const int YShort = 4;
    const int Repeat = 8;
    const int XSame = 16;
    const int YSame = 32;
    const int WordArguments = 1;
    const int ArgumentsAreOffsets = 2;
    const int HasScale = 8;
    const int MoreComponents = 32;
    const int HasTwoScales = 64;
    const int HasMatrix = 128;
    const int MostNesting = 6;

    /// <summary>The outline of some words with their start on the baseline at (0, 0), y down, in points.</summary>
    public static VectorPath Of(FontFace face, Points size, ShapedText shape)
    {
        var scale = size.Value / face.Font.UnitsPerEm;
        var paths = new List<VectorPath>();
        long x = 0;
        foreach (var glyph in shape.Glyphs)
        {
            var place = new Transform(
                scale,
                0,
                0,
                -scale,
                (x + glyph.XOffset) * scale,
                -glyph.YOffset * scale
            );
            paths.Add(Of(face.Font, glyph.Id).Transformed(place));
            x += glyph.Advance;
        }

        return VectorPath.Combine(paths);
    }

    /// <summary>The outline of a glyph in units of the font, y up.</summary>
    public static VectorPath Of(TrueTypeFont font, int glyph)
    {
        var builder = new PathBuilder();
        Add(font, glyph, Transform.Identity, builder, 0);
        return builder.ToPath();
    }

    static void Add(TrueTypeFont font, int glyph, Transform place, PathBuilder path, int depth)
    {
        var data = font.GlyphDescription(glyph);
        if (data.Length < 10 || depth > MostNesting)
        {
            return;
        }

        var contours = BinaryPrimitives.ReadInt16BigEndian(data);
        if (contours >= 0)
        {
            AddSimple(data, contours, place, path);
        }
        else
        {
            AddComponents(font, data, place, path, depth);
        }
    }

    static void AddComponents(
        TrueTypeFont font,
        ReadOnlySpan<byte> data,
        Transform place,
        PathBuilder path,
        int depth
    )
    {
        for (var at = 10; ; )
        {
            var flags = BinaryPrimitives.ReadUInt16BigEndian(data[at..]);
            int glyph = BinaryPrimitives.ReadUInt16BigEndian(data[(at + 2)..]);
            at += 4;
            var (dx, dy) =
                (flags & WordArguments) != 0
                    ? (
                        BinaryPrimitives.ReadInt16BigEndian(data[at..]),
                        BinaryPrimitives.ReadInt16BigEndian(data[(at + 2)..])
                    )
                    : ((short)(sbyte)data[at], (short)(sbyte)data[at + 1]);
            at += (flags & WordArguments) != 0 ? 4 : 2;
            var (a, b, c, d) = (1.0, 0.0, 0.0, 1.0);
            if ((flags & HasScale) != 0)
            {
                a = d = Fraction(data, ref at);
            }
            else if ((flags & HasTwoScales) != 0)
            {
                (a, d) = (Fraction(data, ref at), Fraction(data, ref at));
            }
            else if ((flags & HasMatrix) != 0)
            {
                (a, b, c, d) = (
                    Fraction(data, ref at),
                    Fraction(data, ref at),
                    Fraction(data, ref at),
                    Fraction(data, ref at)
                );
            }

            // Components placed by matching points instead of by offsets do not occur in the fonts of today.
            var offset =
                (flags & ArgumentsAreOffsets) != 0 ? (X: (double)dx, Y: (double)dy) : (0, 0);
            Add(
                font,
                glyph,
                new Transform(a, b, c, d, offset.X, offset.Y).Then(place),
                path,
                depth + 1
            );
            if ((flags & MoreComponents) == 0)
            {
                return;
            }
        }

        static double Fraction(ReadOnlySpan<byte> data, ref int at)
        {
            var value = BinaryPrimitives.ReadInt16BigEndian(data[at..]) / 16384.0;
            at += 2;
            return value;
        }
    }

    static void AddSimple(ReadOnlySpan<byte> data, int contours, Transform place, PathBuilder path)
    {
        if (contours == 0)
        {
            return;
        }

        var at = 10;
        var ends = new int[contours];
        for (var i = 0; i < contours; i++, at += 2)
        {
            ends[i] = BinaryPrimitives.ReadUInt16BigEndian(data[at..]);
        }

        at += 2 + BinaryPrimitives.ReadUInt16BigEndian(data[at..]);
        var count = ends[^1] + 1;
        var flags = new byte[count];
        for (var i = 0; i < count; )
        {
            var flag = data[at++];
            var times = (flag & Repeat) != 0 ? data[at++] + 1 : 1;
            for (; times > 0 && i < count; times--)
            {
                flags[i++] = flag;
            }
        }

        var xs = Coordinates(data, ref at, flags, XShort, XSame);
        var ys = Coordinates(data, ref at, flags, YShort, YSame);
        var start = 0;
        foreach (var end in ends)
        {
            AddContour(start, end, flags, xs, ys, place, path);
            start = end + 1;
        }
    }

    static int[] Coordinates(
        ReadOnlySpan<byte> data,
        ref int at,
        byte[] flags,
        int isShort,
        int same
    )
    {
        var (values, value) = (new int[flags.Length], 0);
        for (var i = 0; i < flags.Length; i++)
        {
            if ((flags[i] & isShort) != 0)
            {
                value += (flags[i] & same) != 0 ? data[at] : -data[at];
                at++;
            }
            else if ((flags[i] & same) == 0)
            {
                value += BinaryPrimitives.ReadInt16BigEndian(data[at..]);
                at += 2;
            }

            values[i] = value;
        }

        return values;
    }

    // Quadratic curves with implied points between two control points, turned into cubic ones.
    static void AddContour(
        int start,
        int end,
        byte[] flags,
        int[] xs,
        int[] ys,
        Transform place,
        PathBuilder path
    )
    {
        var count = end - start + 1;
        if (count < 2)
        {
            return;
        }

        var first = Enumerable.Range(0, count).FirstOrDefault(i => On(i), -1);
        var from = first >= 0 ? At(first) : At(0).Towards(At(count - 1), 0.5);
        var begin = from;
        path.MoveTo(place.Apply(from));
        XY? control = null;
        for (var step = 1; step <= count; step++)
        {
            var i = (Math.Max(first, 0) + step - (first >= 0 ? 0 : 1)) % count;
            var point = At(i);
            if (On(i))
            {
                Close(point);
            }
            else
            {
                if (control is { } earlier)
                {
                    Close(earlier.Towards(point, 0.5));
                }

                control = point;
            }
        }

        if (control is not null)
        {
            Close(begin);
        }

        path.Close();

        void Close(XY to)
        {
            if (control is { } middle)
            {
                path.CurveTo(
                    place.Apply(from.Towards(middle, 2.0 / 3)),
                    place.Apply(to.Towards(middle, 2.0 / 3)),
                    place.Apply(to)
                );
            }
            else
            {
                path.LineTo(place.Apply(to));
            }

            (from, control) = (to, null);
        }

        bool On(int i) => (flags[start + i] & OnCurve) != 0;

        XY At(int i) => new(xs[start + i], ys[start + i]);
    }
}
