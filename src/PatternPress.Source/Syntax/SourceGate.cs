using System.Buffers;
using System.Text;
using System.Text.Unicode;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Source.Syntax;

/// <summary>
/// What every source file passes before it is read: not too large, UTF-8, no control characters, no tabs as
/// indentation, plain line feeds. Whatever would slow or confuse the YAML scanner is stopped here.
/// </summary>
public static class SourceGate
{
    /// <summary>A pattern of a hundred pages of notes is a tenth of this.</summary>
    public const int MaximumBytes = 1 << 20;

    /// <summary>The refusal of a file by its length alone, for callers who know the length before they load the file.</summary>
    public static Diagnostic? TooLarge(string file, long bytes) =>
        bytes <= MaximumBytes ? null : SyntaxFaults.TooLarge(file, bytes);

    /// <summary>Decodes a file. Where it cannot be decoded the text is empty or what could be made of it, for snippets.</summary>
    /// <param name="readable">How much of the text, from its start, may be read on.</param>
    internal static SourceText Open(
        string file,
        ReadOnlySpan<byte> bytes,
        DiagnosticList diagnostics,
        out int readable
    )
    {
        readable = 0;
        if (bytes.Length > MaximumBytes)
        {
            diagnostics.Add(SyntaxFaults.TooLarge(file, bytes.Length));
            return new SourceText(file, "");
        }

        if (OtherEncoding(bytes) is { } encoding)
        {
            diagnostics.Add(SyntaxFaults.WrongEncoding(file, encoding));
            return new SourceText(file, "");
        }

        if (bytes.StartsWith("\uFEFF"u8))
        {
            bytes = bytes[3..];
        }

        var bad = InvalidUtf8At(bytes);
        var source = new SourceText(file, Normalize(Encoding.UTF8.GetString(bytes)));
        if (bad >= 0)
        {
            var at = Normalize(Encoding.UTF8.GetString(bytes[..bad])).Length;
            diagnostics.Add(SyntaxFaults.NotUtf8(source.SpanOf(at, at + 1), bytes[bad]));
            return source;
        }

        readable = Check(source, diagnostics);
        return source;
    }

    /// <summary>Checks a decoded text and says how much of it may be read.</summary>
    internal static int Check(SourceText source, DiagnosticList diagnostics)
    {
        var text = source.Text;
        var control = ControlCharacterAt(text);
        if (control >= 0)
        {
            diagnostics.Add(
                SyntaxFaults.ControlCharacter(source.SpanOf(control, control + 1), text[control])
            );
        }

        var tab = TabIndentAt(text, out var lines);
        if (tab >= 0)
        {
            diagnostics.Add(SyntaxFaults.TabIndent(source.SpanOf(tab, tab + 1), lines));
        }

        // Reading stops at the start of the first line that cannot be trusted; what comes before is still checked.
        var stop = Math.Min(control < 0 ? text.Length : control, tab < 0 ? text.Length : tab);
        return stop == text.Length ? stop : text.LastIndexOf('\n', Math.Max(stop - 1, 0)) + 1;
    }

    /// <summary>
    /// CR LF and lone CR become LF, so that an index means the same to everyone; tabs in otherwise empty lines become
    /// spaces, since nobody sees them and YAML takes some of them for indentation. So do no-break spaces that indent a line.
    /// </summary>
    internal static string Normalize(string text)
    {
        if (text.Contains('\r'))
        {
            text = text.Replace("\r\n", "\n").Replace('\r', '\n');
        }

        text = text.Contains('\u00A0') ? BlankIndents(text) : text;
        return text.Contains('\t') ? BlankTabs(text) : text;
    }

    /// <summary>No-break spaces that begin a line, as pages and word processors leave them, become the blanks they look like.</summary>
    private static string BlankIndents(string text) =>
        string.Create(
            text.Length,
            text,
            static (result, text) =>
            {
                text.CopyTo(result);
                for (var at = 0; at < result.Length; )
                {
                    var line = result[at..];
                    var end = line.IndexOf('\n');
                    line = end < 0 ? line : line[..end];
                    var indent = line.IndexOfAnyExcept(' ', '\u00A0');
                    (indent < 0 ? line : line[..indent]).Replace('\u00A0', ' ');
                    at += line.Length + 1;
                }
            }
        );

    private static string BlankTabs(string text) =>
        string.Create(
            text.Length,
            text,
            static (result, text) =>
            {
                text.CopyTo(result);
                for (var at = 0; at < result.Length; )
                {
                    var line = result[at..];
                    var end = line.IndexOf('\n');
                    line = end < 0 ? line : line[..end];
                    if (line.IndexOfAnyExcept(' ', '\t') < 0)
                    {
                        line.Fill(' ');
                    }

                    at += line.Length + 1;
                }
            }
        );

    private static string? OtherEncoding(ReadOnlySpan<byte> bytes) =>
        bytes switch
        {
            [0xFF, 0xFE, 0, 0, ..] or [0, 0, 0xFE, 0xFF, ..] => "UTF-32",
            [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..] => "UTF-16",
            [0, not 0, ..] or [not 0, 0, ..] => "UTF-16 without its mark",
            [0, 0, 0, not 0, ..] => "UTF-32 without its mark",
            _ => null,
        };

    private static int InvalidUtf8At(ReadOnlySpan<byte> bytes)
    {
        if (Utf8.IsValid(bytes))
        {
            return -1;
        }

        var at = 0;
        while (Rune.DecodeFromUtf8(bytes[at..], out _, out var length) == OperationStatus.Done)
        {
            at += length;
        }

        return at;
    }

    /// <summary>
    /// A character that no editor shows and no designer means. The line separators U+0085, U+2028 and U+2029 count
    /// among them: editors and YAML disagree on whether they end a line.
    /// </summary>
    private static int ControlCharacterAt(ReadOnlySpan<char> text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (IsUnwanted(text[i]))
            {
                return i;
            }
        }

        return -1;
    }

    internal static bool IsUnwanted(char character) =>
        character switch
        {
            '\n' or '\t' => false,
            < ' ' or (>= '\u007F' and <= '\u009F') => true,
            '\u200B' or '\u2028' or '\u2029' or '\u2060' or '\uFEFF' or '\uFFFE' or '\uFFFF' =>
                true,
            _ => false,
        };

    private static int TabIndentAt(ReadOnlySpan<char> text, out int lines)
    {
        var first = -1;
        lines = 0;
        for (var at = 0; at < text.Length; )
        {
            var line = text[at..];
            var end = line.IndexOf('\n');
            line = end < 0 ? line : line[..end];
            var indent = line.Length - line.TrimStart(" \t").Length;
            var tab = line[..indent].IndexOf('\t');
            if (tab >= 0)
            {
                first = first < 0 ? at + tab : first;
                lines++;
            }

            at += line.Length + 1;
        }

        return first;
    }
}
