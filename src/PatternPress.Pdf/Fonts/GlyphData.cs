using System.Buffers.Binary;
using PatternPress.Typesetting.Fonts;

namespace PatternPress.Pdf.Fonts;

/// <summary>
/// Glyph descriptions for a subset: parts numbered anew, instructions for screens of few dots left out (OpenType
/// specification 1.9, glyf table).
/// </summary>
static class GlyphData
{
    const int WordArguments = 1;
    const int HasScale = 8;
    const int MoreComponents = 32;
    const int HasTwoScales = 64;
    const int HasMatrix = 128;
    const int HasInstructions = 256;

    /// <summary>The glyphs that a composite glyph is made of.</summary>
    public static List<ushort> PartsOf(TrueTypeFont font, int glyph)
    {
        var parts = new List<ushort>();
        var data = font.GlyphDescription(glyph);
        if (!IsComposite(data))
        {
            return parts;
        }

        for (var at = 10; ; at = Next(data, at))
        {
            parts.Add(BinaryPrimitives.ReadUInt16BigEndian(data[(at + 2)..]));
            if ((Flags(data, at) & MoreComponents) == 0)
            {
                return parts;
            }
        }
    }

    public static byte[] Rewrite(TrueTypeFont font, int glyph, Func<ushort, ushort> newId)
    {
        var data = font.GlyphDescription(glyph);
        return data.Length < 10 ? []
            : IsComposite(data) ? Composite(data, newId)
            : Simple(data);
    }

    static byte[] Composite(ReadOnlySpan<byte> data, Func<ushort, ushort> newId)
    {
        var copy = data.ToArray();
        for (var at = 10; ; at = Next(data, at))
        {
            var flags = Flags(data, at);
            BinaryPrimitives.WriteUInt16BigEndian(
                copy.AsSpan(at),
                (ushort)(flags & ~HasInstructions)
            );
            BinaryPrimitives.WriteUInt16BigEndian(
                copy.AsSpan(at + 2),
                newId(BinaryPrimitives.ReadUInt16BigEndian(data[(at + 2)..]))
            );
            if ((flags & MoreComponents) == 0)
            {
                return copy[..Next(data, at)];
            }
        }
    }

    static byte[] Simple(ReadOnlySpan<byte> data)
    {
        var contours = BinaryPrimitives.ReadInt16BigEndian(data);
        var lengthAt = 10 + (2 * contours);
        if (contours <= 0 || lengthAt + 2 > data.Length)
        {
            return data.ToArray();
        }

        var instructions = BinaryPrimitives.ReadUInt16BigEndian(data[lengthAt..]);
        return [.. data[..lengthAt], 0, 0, .. data[(lengthAt + 2 + instructions)..]];
    }

    static bool IsComposite(ReadOnlySpan<byte> data) =>
        data.Length >= 10 && BinaryPrimitives.ReadInt16BigEndian(data) < 0;

    static int Flags(ReadOnlySpan<byte> data, int at) =>
        BinaryPrimitives.ReadUInt16BigEndian(data[at..]);

    static int Next(ReadOnlySpan<byte> data, int at)
    {
        var flags = Flags(data, at);
        return at
            + 4
            + ((flags & WordArguments) != 0 ? 4 : 2)
            + (
                (flags & HasScale) != 0 ? 2
                : (flags & HasTwoScales) != 0 ? 4
                : (flags & HasMatrix) != 0 ? 8
                : 0
            );
    }
}
