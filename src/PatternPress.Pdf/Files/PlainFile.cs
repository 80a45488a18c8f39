using System.Globalization;
using System.Text;

namespace PatternPress.Pdf.Files;

/// <summary>A file with a cross-reference table that can be read with the eye (ISO 32000-1, 7.5.4).</summary>
static class PlainFile
{
    public static byte[] Write(SavedFile file, byte[] fingerprint)
    {
        var output = new FileOutput();
        var offsets = file
            .Objects.Select((content, index) => output.Object(index + 1, content.Span))
            .ToList();
        var table = output.Position;
        output.Ascii(
            string.Create(
                CultureInfo.InvariantCulture,
                $"xref\n0 {offsets.Count + 1}\n0000000000 65535 f \n"
            )
        );
        foreach (var offset in offsets)
        {
            output.Ascii(
                string.Create(CultureInfo.InvariantCulture, $"{offset:0000000000} 00000 n \n")
            );
        }

        output.Ascii(
            $"trailer\n<</Size {offsets.Count + 1}{FileOutput.TrailerKeys(file, fingerprint)}>>\n"
        );
        return output.End(table);
    }
}
