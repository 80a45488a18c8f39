using System.Security.Cryptography;
using System.Text;
using PatternPress.Typesetting;

namespace PatternPress.Pdf.Files;

/// <summary>
/// Makes a saved file reproducible and small: PDFsharp's metadata, with its random numbers, is replaced, and so are the
/// file's identifiers; objects are packed.
/// </summary>
static class FileFinisher
{
    public static byte[] Finish(byte[] bytes, DocumentInformation information, PdfOptions options)
    {
        var saved = SavedFile.Read(bytes);
        // PDFsharp adds its metadata as the very last object, while it saves.
        var last = saved.Objects[^1];
        if (last.Span.IndexOf("/Metadata"u8) < 0)
        {
            throw new InvalidDataException(
                "A file saved by PDFsharp is not built as expected: its metadata is not the last object."
            );
        }

        var fingerprint = Fingerprint(saved);
        var metadata = Metadata.Write(
            information,
            options.ClaimsAccessibility && options.Tagged,
            fingerprint
        );
        var head = Encoding.ASCII.GetBytes(
            $"<</Type/Metadata/Subtype/XML/Length {metadata.Length}>>\nstream\n"
        );
        // Metadata stay uncompressed, so that programs which do not know PDF can find them.
        byte[] packet = [.. head, .. metadata, .. "\nendstream"u8];
        var finished = saved with
        {
            Objects = saved.Objects.SetItem(saved.Objects.Length - 1, packet),
        };
        return options.Compressed
            ? PackedFile.Write(finished, fingerprint)
            : PlainFile.Write(finished, fingerprint);
    }

    static byte[] Fingerprint(SavedFile saved)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var content in saved.Objects[..^1])
        {
            hash.AppendData(content.Span);
        }

        return hash.GetHashAndReset();
    }
}
