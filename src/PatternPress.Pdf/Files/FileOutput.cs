using System.Buffers;
using System.Text;

namespace PatternPress.Pdf.Files;

/// <summary>Collects the bytes of a file and knows where each object begins.</summary>
sealed class FileOutput
{
    readonly ArrayBufferWriter<byte> bytes = new(64 * 1024);

    public FileOutput()
    {
        Ascii("%PDF-1.7\n%");
        // Four bytes above 127 tell programs that move files that this one is not text.
        bytes.Write<byte>([0xE2, 0xE3, 0xCF, 0xD3, (byte)'\n']);
    }

    public long Position => bytes.WrittenCount;

    public void Ascii(string text) => bytes.Write(Encoding.ASCII.GetBytes(text));

    /// <summary>Writes an object; the place where it begins.</summary>
    public long Object(int number, ReadOnlySpan<byte> content)
    {
        var start = Position;
        Ascii($"{number} 0 obj\n");
        bytes.Write(content);
        Ascii("\nendobj\n");
        return start;
    }

    /// <summary>Writes a stream object, compressed; the place where it begins.</summary>
    /// <param name="keys">The keys of its dictionary beyond length and filter.</param>
    public long Stream(int number, string keys, byte[] content)
    {
        var packed = PdfObjects.Deflated(content);
        var head = Encoding.ASCII.GetBytes(
            $"<<{keys}/Filter/FlateDecode/Length {packed.Length}>>\nstream\n"
        );
        return Object(number, [.. head, .. packed, .. "\nendstream"u8]);
    }

    public byte[] End(long table)
    {
        Ascii($"startxref\n{table}\n%%EOF\n");
        return bytes.WrittenSpan.ToArray();
    }

    public static string TrailerKeys(SavedFile file, byte[] fingerprint)
    {
        var id = Convert.ToHexStringLower(fingerprint, 0, 16);
        return $"/Root {file.Root} 0 R/Info {file.Information} 0 R/ID[<{id}><{id}>]";
    }
}
