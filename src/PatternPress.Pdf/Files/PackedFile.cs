using System.Buffers.Binary;
using System.Text;

namespace PatternPress.Pdf.Files;

/// <summary>
/// A file whose small objects are packed together and compressed (ISO 32000-1, 7.5.7 and 7.5.8): the structure tree of a
/// booklet is thousands of them, and takes a tenth of the room.
/// </summary>
static class PackedFile
{
    const int MostInPack = 200;

    // Bytes per entry of the cross-reference stream: kind, place, index.
    const int PlaceBytes = 4;
    const int EntryBytes = 1 + PlaceBytes + 2;

    public static byte[] Write(SavedFile file, byte[] fingerprint)
    {
        var output = new FileOutput();
        var packs = Enumerable
            .Range(1, file.Objects.Length)
            .Where(number => !IsStream(file.Objects[number - 1].Span))
            .Chunk(MostInPack)
            .ToList();
        var count = file.Objects.Length + packs.Count + 2;
        var entries = new byte[count * EntryBytes];
        // Entry 0 is the head of the list of free numbers.
        BinaryPrimitives.WriteUInt16BigEndian(entries.AsSpan(1 + PlaceBytes), ushort.MaxValue);
        for (var number = 1; number <= file.Objects.Length; number++)
        {
            if (IsStream(file.Objects[number - 1].Span))
            {
                Placed(number, output.Object(number, file.Objects[number - 1].Span));
            }
        }

        for (var pack = 0; pack < packs.Count; pack++)
        {
            var number = file.Objects.Length + 1 + pack;
            var (keys, content) = Pack(file, packs[pack]);
            Placed(number, output.Stream(number, keys, content));
            for (var index = 0; index < packs[pack].Length; index++)
            {
                Entry(packs[pack][index], 2, number, index);
            }
        }

        var table = output.Position;
        Placed(count - 1, table);
        output.Stream(
            count - 1,
            $"/Type/XRef/Size {count}/W[1 {PlaceBytes} 2]{FileOutput.TrailerKeys(file, fingerprint)}",
            entries
        );
        return output.End(table);

        void Placed(int number, long place) => Entry(number, 1, place, 0);

        void Entry(int number, byte kind, long place, int index)
        {
            var entry = entries.AsSpan(number * EntryBytes);
            entry[0] = kind;
            BinaryPrimitives.WriteUInt32BigEndian(entry[1..], (uint)place);
            BinaryPrimitives.WriteUInt16BigEndian(entry[(1 + PlaceBytes)..], (ushort)index);
        }
    }

    static (string Keys, byte[] Content) Pack(SavedFile file, int[] numbers)
    {
        var (index, body) = (new StringBuilder(), new MemoryStream());
        foreach (var number in numbers)
        {
            index.Append(number).Append(' ').Append(body.Length).Append(' ');
            body.Write(file.Objects[number - 1].Span);
            body.WriteByte((byte)'\n');
        }

        var head = Encoding.ASCII.GetBytes(index.ToString());
        return (
            $"/Type/ObjStm/N {numbers.Length}/First {head.Length}",
            [.. head, .. body.ToArray()]
        );
    }

    static bool IsStream(ReadOnlySpan<byte> content) => content.EndsWith("endstream"u8);
}
