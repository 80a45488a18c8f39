using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace PatternPress.Pdf.Files;

/// <summary>
/// A file as PDFsharp saves it, taken apart into its objects by its cross-reference table. PDFsharp writes objects one
/// after another, numbered from 1; whatever differs from that is refused rather than guessed at.
/// </summary>
sealed partial record SavedFile(
    ImmutableArray<ReadOnlyMemory<byte>> Objects,
    int Root,
    int Information
)
{
    /// <exception cref="InvalidDataException">The file is not built as PDFsharp builds files.</exception>
    public static SavedFile Read(byte[] bytes)
    {
        var table = StartOfTable(bytes);
        var text = Encoding.Latin1.GetString(bytes, table, bytes.Length - table);
        var lines = text.Split('\n', StringSplitOptions.TrimEntries);
        var header = lines.Length > 1 ? lines[1].Split(' ') : [];
        if (lines[0] != "xref" || header.Length != 2 || header[0] != "0")
        {
            throw Unexpected("its table of objects is not of one piece");
        }

        // Entry 0 is the head of the free list.
        var count = int.Parse(header[1], CultureInfo.InvariantCulture) - 1;
        var starts = lines
            .Skip(3)
            .Take(count)
            .Select(line => int.Parse(line.AsSpan(0, 10), CultureInfo.InvariantCulture))
            .Append(table)
            .ToArray();
        var objects = Enumerable.Range(1, count).Select(number => Content(bytes, number, starts));
        return new([.. objects], Reference(text, "Root"), Reference(text, "Info"));
    }

    static int StartOfTable(byte[] bytes)
    {
        var tail = Encoding.Latin1.GetString(
            bytes,
            Math.Max(0, bytes.Length - 64),
            Math.Min(64, bytes.Length)
        );
        var match = StartOfTablePattern().Match(tail);
        return match.Success
            ? int.Parse(match.Groups[1].ValueSpan, CultureInfo.InvariantCulture)
            : throw Unexpected("its end does not tell where its table of objects begins");
    }

    // What stands between "obj" and "endobj".
    static ReadOnlyMemory<byte> Content(byte[] bytes, int number, int[] starts)
    {
        var (start, end) = (starts[number - 1], starts[number]);
        var head = Encoding.ASCII.GetBytes($"{number} 0 obj");
        if (
            start < 0
            || end > bytes.Length
            || end - start < head.Length
            || !bytes.AsSpan(start).StartsWith(head)
        )
        {
            throw Unexpected($"object {number} is not where it should be");
        }

        start += head.Length;
        var close = bytes.AsSpan()[start..end].LastIndexOf("endobj"u8);
        return close >= 0
            ? Trimmed(bytes.AsMemory(start, close))
            : throw Unexpected($"object {number} does not end");
    }

    static ReadOnlyMemory<byte> Trimmed(ReadOnlyMemory<byte> content)
    {
        var span = content.Span;
        var (from, to) = (0, span.Length);
        while (from < to && span[from] is (byte)'\n' or (byte)'\r' or (byte)' ')
        {
            from++;
        }

        while (to > from && span[to - 1] is (byte)'\n' or (byte)'\r' or (byte)' ')
        {
            to--;
        }

        return content[from..to];
    }

    static int Reference(string trailer, string key)
    {
        var match = Regex.Match(trailer, $@"/{key}\s+(\d+) 0 R");
        return match.Success
            ? int.Parse(match.Groups[1].ValueSpan, CultureInfo.InvariantCulture)
            : throw Unexpected($"its trailer has no {key}");
    }

    static InvalidDataException Unexpected(string what) =>
        new($"A file saved by PDFsharp is not built as expected: {what}.");

    [GeneratedRegex(@"startxref\s+(\d+)")]
    private static partial Regex StartOfTablePattern();
}
