using System.Buffers.Binary;

namespace PatternPress.Typesetting.Fonts;

/// <summary>From characters to glyphs: the cmap table in format 12 (all of Unicode) or 4 (the basic plane).</summary>
sealed class CharacterMap
{
    // (first character, last character, first glyph, or -1 with an index into glyphs for format 4's arrays)
    readonly List<(int First, int Last, int Delta, int ArrayStart)> ranges = [];
    readonly List<ushort> glyphs = [];

    public static CharacterMap Read(ReadOnlySpan<byte> cmap)
    {
        var count = BinaryPrimitives.ReadUInt16BigEndian(cmap[2..]);
        var (best, bestFormat) = (-1, 0);
        for (var i = 0; i < count; i++)
        {
            var platform = BinaryPrimitives.ReadUInt16BigEndian(cmap[(4 + (8 * i))..]);
            var offset = (int)BinaryPrimitives.ReadUInt32BigEndian(cmap[(8 + (8 * i))..]);
            var format = BinaryPrimitives.ReadUInt16BigEndian(cmap[offset..]);
            if (platform is 0 or 3 && format is 4 or 12 && format > bestFormat)
            {
                (best, bestFormat) = (offset, format);
            }
        }

        var map = new CharacterMap();
        switch (bestFormat)
        {
            case 12:
                map.ReadGroups(cmap[best..]);
                break;
            case 4:
                map.ReadSegments(cmap[best..]);
                break;
            default:
                throw new InvalidDataException("The font has no Unicode character map.");
        }

        return map;
    }

    public ushort GlyphOf(int codePoint)
    {
        var (low, high) = (0, ranges.Count - 1);
        while (low <= high)
        {
            var middle = (low + high) / 2;
            var (first, last, delta, arrayStart) = ranges[middle];
            if (codePoint < first)
            {
                high = middle - 1;
            }
            else if (codePoint > last)
            {
                low = middle + 1;
            }
            else if (arrayStart < 0)
            {
                return (ushort)(codePoint + delta);
            }
            else
            {
                var glyph = glyphs[arrayStart + codePoint - first];
                return glyph == 0 ? (ushort)0 : (ushort)(glyph + delta);
            }
        }

        return 0;
    }

    void ReadGroups(ReadOnlySpan<byte> table)
    {
        var count = (int)BinaryPrimitives.ReadUInt32BigEndian(table[12..]);
        for (var i = 0; i < count; i++)
        {
            var group = table[(16 + (12 * i))..];
            var first = (int)BinaryPrimitives.ReadUInt32BigEndian(group);
            var last = (int)BinaryPrimitives.ReadUInt32BigEndian(group[4..]);
            ranges.Add(
                (first, last, (int)BinaryPrimitives.ReadUInt32BigEndian(group[8..]) - first, -1)
            );
        }
    }

    void ReadSegments(ReadOnlySpan<byte> table)
    {
        var count = BinaryPrimitives.ReadUInt16BigEndian(table[6..]) / 2;
        var (ends, starts) = (14, 16 + (2 * count));
        var (deltas, offsets) = (starts + (2 * count), starts + (4 * count));
        for (var i = 0; i < count; i++)
        {
            var (first, last) = (At(table, starts + (2 * i)), At(table, ends + (2 * i)));
            var (delta, offset) = (At(table, deltas + (2 * i)), At(table, offsets + (2 * i)));
            if (offset == 0)
            {
                ranges.Add((first, last, delta, -1));
                continue;
            }

            ranges.Add((first, last, delta, glyphs.Count));
            for (var code = first; code <= last; code++)
            {
                var place = offsets + (2 * i) + offset + (2 * (code - first));
                glyphs.Add(place + 2 <= table.Length ? At(table, place) : (ushort)0);
            }
        }

        static ushort At(ReadOnlySpan<byte> bytes, int place) =>
            BinaryPrimitives.ReadUInt16BigEndian(bytes[place..]);
    }
}
