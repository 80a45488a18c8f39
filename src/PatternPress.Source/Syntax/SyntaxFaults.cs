using PatternPress.Source.Diagnostics;

namespace PatternPress.Source.Syntax;

/// <summary>The words of every finding about a file that is not, or not all, readable: codes PP0101 to PP0129.</summary>
internal static class SyntaxFaults
{
    /// <param name="bytes">Its length, or how much of it was looked at.</param>
    public static Diagnostic TooLarge(string file, long bytes) =>
        Diagnostic.Error(
            "PP0101",
            "this file is too large to be a pattern",
            Start(file),
            "the file begins here",
            $"It has {bytes} bytes or more; a pattern file may have {SourceGate.MaximumBytes} (1 MB).",
            "is this the right file?"
        );

    public static Diagnostic WrongEncoding(string file, string encoding) =>
        Diagnostic.Error(
            "PP0102",
            $"this file is saved as {encoding}, not as UTF-8",
            Start(file),
            "the file begins here",
            "",
            "save it again with the encoding UTF-8"
        );

    public static Diagnostic NotUtf8(Span span, byte found) =>
        Diagnostic.Error(
            "PP0102",
            "this file is not saved as UTF-8",
            span,
            $"the byte {found:X2} here is no UTF-8 character",
            "It was probably saved with an older encoding, such as Windows-1252.",
            "save it again with the encoding UTF-8"
        );

    public static Diagnostic ControlCharacter(Span span, char found) =>
        Diagnostic.Error(
            "PP0103",
            $"a control character (U+{(int)found:X4}) stands in the text",
            span,
            "nothing to see here, but the file has a character",
            "",
            "delete it and type the text again"
        );

    public static Diagnostic TabIndent(Span span, int lines) =>
        Diagnostic.Error(
            "PP0104",
            "this line is indented with a tab",
            span,
            "a tab; spaces are needed",
            (lines == 1 ? "" : $"{lines} lines of the file are indented with tabs. ")
                + "What follows this line was not read.",
            "indent with spaces; most editors can convert the whole file at once"
        );

    /// <summary>One finding for all places of a file: they go together.</summary>
    public static Diagnostic Reuse(IReadOnlyList<Label> places)
    {
        const int shown = 4;
        var first = Diagnostic.Error(
            "PP0111",
            "`&` and `*` name and repeat parts of a file, which patterns do not have",
            places[0].Span,
            places[0].Text,
            places.Count == 1 ? "" : $"They stand in {places.Count} places.",
            "write the values out; a text that begins with & or * needs quotation marks"
        );
        return first with { Others = [.. places.Skip(1).Take(shown)] };
    }

    public static Diagnostic Tag(Span span, string tag) =>
        Diagnostic.Error(
            "PP0112",
            $"`{Excerpt.Of(tag)}` gives a type, which patterns do not have",
            span,
            "typed here",
            "",
            "remove it; a text that begins with ! needs quotation marks"
        );

    public static Diagnostic SecondDocument(Span span) =>
        Diagnostic.Error(
            "PP0113",
            "a second document begins in this file",
            span,
            "another document begins here",
            "A file holds one pattern.",
            "move what follows to a file of its own, or remove the line"
        );

    public static Diagnostic Directive(Span span) =>
        Diagnostic.Error(
            "PP0113",
            "a line that begins with % gives orders to the YAML reader, which patterns do not have",
            span,
            "an order",
            "",
            "remove the line"
        );

    public static Diagnostic TooDeep(Span span, int limit) =>
        Diagnostic.Error(
            "PP0114",
            $"more than {limit} levels inside each other",
            span,
            "one level too many",
            "The rest of the file was not read."
        );

    public static Diagnostic TooManyNodes(Span span, int limit) =>
        Diagnostic.Error(
            "PP0115",
            $"more than {limit} values in one file",
            span,
            "one value too many",
            "The rest of the file was not read."
        );

    public static Diagnostic TooLong(Span span, int length, int limit) =>
        Diagnostic.Error(
            "PP0116",
            "this text is too long",
            span,
            "the text begins here",
            $"It has {length} characters; one text may have {limit}."
        );

    public static Diagnostic DuplicateKey(ScalarNode second, ScalarNode first) =>
        Diagnostic
            .Error(
                "PP0117",
                $"`{Excerpt.Of(second.Value)}` is given twice",
                second.Span,
                "given again here",
                "The first one was read, this one was not.",
                "remove or rename one of the two"
            )
            .With(first.Span, "first given here");

    public static Diagnostic KeyIsNoText(Span span) =>
        Diagnostic.Error(
            "PP0118",
            "a list or map stands where a key is expected",
            span,
            "this is not a plain key",
            "",
            "a text that begins with [ or { needs quotation marks"
        );

    public static Diagnostic KeyIsEmpty(Span span) =>
        Diagnostic.Error("PP0118", "a key is missing before the colon", span, "no key here");

    public static Diagnostic Empty(Span span) =>
        Diagnostic.Error(
            "PP0119",
            "this file is empty",
            span,
            "nothing to read",
            "",
            "`patternpress new` writes a small complete pattern to start from"
        );

    private static Span Start(string file) => new(file, 1, 1, 1, 1);
}
