using System.Buffers.Binary;
using System.Text;

namespace PatternPress.Typesetting.Fonts;

/// <summary>
/// A TrueType file taken apart as far as setting and embedding text need it (OpenType specification 1.9: head, hhea, OS/2,
/// maxp, hmtx, cmap, name, post). Distances are in units of the font.
/// </summary>
public sealed class TrueTypeFont
{
    readonly Dictionary<string, (int Offset, int Length)> tables = new(StringComparer.Ordinal);
    readonly int horizontalMetrics;
    readonly CharacterMap characters;

    TrueTypeFont(byte[] data)
    {
        Data = data;
        ReadDirectory();
        var head = Table("head");
        UnitsPerEm = BinaryPrimitives.ReadUInt16BigEndian(head[18..]);
        Bounds = (Int16(head, 36), Int16(head, 38), Int16(head, 40), Int16(head, 42));
        LongOffsets = Int16(head, 50) != 0;
        GlyphCount = BinaryPrimitives.ReadUInt16BigEndian(Table("maxp")[4..]);
        var hhea = Table("hhea");
        Ascender = Int16(hhea, 4);
        Descender = Int16(hhea, 6);
        horizontalMetrics = BinaryPrimitives.ReadUInt16BigEndian(hhea[34..]);
        var os2 = Table("OS/2");
        Weight = BinaryPrimitives.ReadUInt16BigEndian(os2[4..]);
        EmbeddingRights = BinaryPrimitives.ReadUInt16BigEndian(os2[8..]);
        var hasHeights = BinaryPrimitives.ReadUInt16BigEndian(os2) >= 2 && os2.Length >= 90;
        XHeight = hasHeights ? Int16(os2, 86) : UnitsPerEm / 2;
        CapHeight = hasHeights ? Int16(os2, 88) : UnitsPerEm * 7 / 10;
        var post = Table("post");
        ItalicAngle = BinaryPrimitives.ReadInt32BigEndian(post[4..]) / 65536.0;
        UnderlinePosition = Int16(post, 8);
        UnderlineThickness = Int16(post, 10);
        PostScriptName = ReadPostScriptName();
        characters = CharacterMap.Read(Table("cmap"));
        if (UnitsPerEm is < 16 or > 16384 || horizontalMetrics == 0 || GlyphCount == 0)
        {
            throw new InvalidDataException("The font's tables contradict each other.");
        }
    }

    /// <summary>The whole file.</summary>
    public byte[] Data { get; }

    public int UnitsPerEm { get; }

    public int GlyphCount { get; }

    /// <summary>The smallest box around all glyphs.</summary>
    public (int Left, int Bottom, int Right, int Top) Bounds { get; }

    public int Ascender { get; }

    /// <summary>Below the baseline: negative.</summary>
    public int Descender { get; }

    public int CapHeight { get; }

    public int XHeight { get; }

    /// <summary>400 is regular, 700 bold.</summary>
    public int Weight { get; }

    public double ItalicAngle { get; }

    public int UnderlinePosition { get; }

    public int UnderlineThickness { get; }

    /// <summary>The OS/2 table's fsType; 0 permits embedding of any kind.</summary>
    public int EmbeddingRights { get; }

    public string PostScriptName { get; }

    internal bool LongOffsets { get; }

    /// <exception cref="InvalidDataException">The bytes are not a TrueType font with glyf outlines.</exception>
    public static TrueTypeFont Read(byte[] data)
    {
        try
        {
            return new TrueTypeFont(data);
        }
        catch (Exception fault)
            when (fault is ArgumentOutOfRangeException or IndexOutOfRangeException)
        {
            throw new InvalidDataException("The font file is cut short or damaged.", fault);
        }
    }

    /// <summary>The glyph of a character; 0 where the font has none.</summary>
    public ushort GlyphOf(int codePoint) => characters.GlyphOf(codePoint);

    /// <summary>A glyph's own advance, without kerning.</summary>
    public int AdvanceOf(int glyph) =>
        BinaryPrimitives.ReadUInt16BigEndian(
            Table("hmtx")[(4 * Math.Min(glyph, horizontalMetrics - 1))..]
        );

    /// <summary>The box around a glyph's outline; nothing for a glyph without ink.</summary>
    public (int Left, int Bottom, int Right, int Top)? BoundsOf(int glyph)
    {
        var outline = GlyphDescription(glyph);
        return outline.Length < 10
            ? null
            : (Int16(outline, 2), Int16(outline, 4), Int16(outline, 6), Int16(outline, 8));
    }

    /// <summary>Whether the file has a table.</summary>
    public bool Has(string tag) => tables.ContainsKey(tag);

    /// <summary>A table's bytes.</summary>
    public ReadOnlySpan<byte> Table(string tag) =>
        tables.TryGetValue(tag, out var place)
            ? Data.AsSpan(place.Offset, place.Length)
            : throw new InvalidDataException($"The font has no '{tag}' table.");

    /// <summary>A glyph's entry in the glyf table; empty for a glyph without ink.</summary>
    public ReadOnlySpan<byte> GlyphDescription(int glyph)
    {
        var loca = Table("loca");
        var (from, to) = LongOffsets
            ? (
                (long)BinaryPrimitives.ReadUInt32BigEndian(loca[(4 * glyph)..]),
                (long)BinaryPrimitives.ReadUInt32BigEndian(loca[(4 * (glyph + 1))..])
            )
            : (
                2L * BinaryPrimitives.ReadUInt16BigEndian(loca[(2 * glyph)..]),
                2L * BinaryPrimitives.ReadUInt16BigEndian(loca[(2 * (glyph + 1))..])
            );
        return to <= from ? [] : Table("glyf")[(int)from..(int)to];
    }

    void ReadDirectory()
    {
        if (
            Data.Length < 12
            || BinaryPrimitives.ReadUInt32BigEndian(Data) is not (0x00010000 or 0x74727565)
        )
        {
            throw new InvalidDataException(
                "The font is not a TrueType file (.ttf with glyf outlines). Collections and CFF outlines cannot be embedded."
            );
        }

        var count = BinaryPrimitives.ReadUInt16BigEndian(Data.AsSpan(4));
        for (var i = 0; i < count; i++)
        {
            var entry = Data.AsSpan(12 + (16 * i), 16);
            var offset = (int)BinaryPrimitives.ReadUInt32BigEndian(entry[8..]);
            var length = (int)BinaryPrimitives.ReadUInt32BigEndian(entry[12..]);
            if (offset < 0 || length < 0 || (long)offset + length > Data.Length)
            {
                throw new InvalidDataException("The font file is cut short or damaged.");
            }

            tables[Encoding.ASCII.GetString(entry[..4])] = (offset, length);
        }

        foreach (var needed in (string[])["glyf", "loca"])
        {
            if (!Has(needed))
            {
                throw new InvalidDataException(
                    $"The font has no '{needed}' table: only TrueType outlines can be embedded."
                );
            }
        }
    }

    string ReadPostScriptName()
    {
        const int postScript = 6;
        var name = Table("name");
        var (count, storage) = (
            BinaryPrimitives.ReadUInt16BigEndian(name[2..]),
            BinaryPrimitives.ReadUInt16BigEndian(name[4..])
        );
        for (var i = 0; i < count; i++)
        {
            var entry = name[(6 + (12 * i))..];
            if (BinaryPrimitives.ReadUInt16BigEndian(entry[6..]) != postScript)
            {
                continue;
            }

            var platform = BinaryPrimitives.ReadUInt16BigEndian(entry);
            var length = BinaryPrimitives.ReadUInt16BigEndian(entry[8..]);
            var bytes = name.Slice(
                storage + BinaryPrimitives.ReadUInt16BigEndian(entry[10..]),
                length
            );
            var text =
                platform == 1
                    ? Encoding.ASCII.GetString(bytes)
                    : Encoding.BigEndianUnicode.GetString(bytes);
            var clean = string.Concat(
                text.Where(letter => char.IsAsciiLetterOrDigit(letter) || letter is '-' or '_')
            );
            if (clean.Length > 0)
            {
                return clean;
            }
        }

        return "Font";
    }

    static int Int16(ReadOnlySpan<byte> table, int offset) =>
        BinaryPrimitives.ReadInt16BigEndian(table[offset..]);
}
