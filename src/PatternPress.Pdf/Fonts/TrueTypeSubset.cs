using System.Buffers.Binary;
using System.Text;
using PatternPress.Typesetting.Fonts;

namespace PatternPress.Pdf.Fonts;

/// <summary>
/// Writes a TrueType file of only some glyphs, with the tables that a CIDFontType2 needs (ISO 32000-1, 9.9: glyf, head,
/// hhea, hmtx, loca, maxp).
/// </summary>
static class TrueTypeSubset
{
    // The whole file's checksum becomes this when head's adjustment is right (OpenType specification, head table).
    const uint Magic = 0xB1B0AFBA;

    public static byte[] Write(SubsetFont font)
    {
        var count = font.OldIds.Count;
        var (glyf, loca) = (new MemoryStream(), new byte[4 * (count + 1)]);
        var hmtx = new byte[4 * count];
        for (var i = 0; i < count; i++)
        {
            var data = GlyphData.Rewrite(font.Source, font.OldIds[i], font.NewIdOf);
            BinaryPrimitives.WriteUInt32BigEndian(loca.AsSpan(4 * i), (uint)glyf.Length);
            glyf.Write(data);
            glyf.Write(new byte[(4 - (data.Length % 4)) % 4]);
            BinaryPrimitives.WriteUInt16BigEndian(
                hmtx.AsSpan(4 * i),
                (ushort)font.Source.AdvanceOf(font.OldIds[i])
            );
            BinaryPrimitives.WriteInt16BigEndian(
                hmtx.AsSpan((4 * i) + 2),
                (short)(font.Source.BoundsOf(font.OldIds[i])?.Left ?? 0)
            );
        }

        BinaryPrimitives.WriteUInt32BigEndian(loca.AsSpan(4 * count), (uint)glyf.Length);
        var head = font.Source.Table("head").ToArray();
        BinaryPrimitives.WriteUInt32BigEndian(head.AsSpan(8), 0);
        // Offsets in loca are long ones.
        BinaryPrimitives.WriteInt16BigEndian(head.AsSpan(50), 1);
        var hhea = font.Source.Table("hhea").ToArray();
        BinaryPrimitives.WriteUInt16BigEndian(hhea.AsSpan(34), (ushort)count);
        var maxp = font.Source.Table("maxp").ToArray();
        BinaryPrimitives.WriteUInt16BigEndian(maxp.AsSpan(4), (ushort)count);
        return Assemble([
            ("glyf", glyf.ToArray()),
            ("head", head),
            ("hhea", hhea),
            ("hmtx", hmtx),
            ("loca", loca),
            ("maxp", maxp),
        ]);
    }

    static byte[] Assemble((string Tag, byte[] Data)[] tables)
    {
        var directory = 12 + (16 * tables.Length);
        var file = new byte[directory + tables.Sum(table => Padded(table.Data.Length))];
        BinaryPrimitives.WriteUInt32BigEndian(file, 0x00010000);
        BinaryPrimitives.WriteUInt16BigEndian(file.AsSpan(4), (ushort)tables.Length);
        var power = (int)Math.Log2(tables.Length);
        BinaryPrimitives.WriteUInt16BigEndian(file.AsSpan(6), (ushort)(16 << power));
        BinaryPrimitives.WriteUInt16BigEndian(file.AsSpan(8), (ushort)power);
        BinaryPrimitives.WriteUInt16BigEndian(
            file.AsSpan(10),
            (ushort)((16 * tables.Length) - (16 << power))
        );
        var (at, head) = (directory, 0);
        for (var i = 0; i < tables.Length; i++)
        {
            var (tag, data) = tables[i];
            var entry = file.AsSpan(12 + (16 * i));
            data.CopyTo(file, at);
            Encoding.ASCII.GetBytes(tag, entry);
            BinaryPrimitives.WriteUInt32BigEndian(
                entry[4..],
                Checksum(file.AsSpan(at, Padded(data.Length)))
            );
            BinaryPrimitives.WriteUInt32BigEndian(entry[8..], (uint)at);
            BinaryPrimitives.WriteUInt32BigEndian(entry[12..], (uint)data.Length);
            head = tag == "head" ? at : head;
            at += Padded(data.Length);
        }

        BinaryPrimitives.WriteUInt32BigEndian(
            file.AsSpan(head + 8),
            unchecked(Magic - Checksum(file))
        );
        return file;
    }

    static int Padded(int length) => (length + 3) / 4 * 4;

    static uint Checksum(ReadOnlySpan<byte> data)
    {
        var sum = 0u;
        for (var i = 0; i + 4 <= data.Length; i += 4)
        {
            sum = unchecked(sum + BinaryPrimitives.ReadUInt32BigEndian(data[i..]));
        }

        return sum;
    }
}
