using PatternPress.Cli.Messages;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Tests.Cli.Messages;

/// <summary>Findings that show what a message can hold, over two small files.</summary>
internal static class SampleMessages
{
    public static SourceText Pattern { get; } =
        new(
            "patterns/harbor lights.quilt.yaml",
            string.Join(
                '\n',
                "pattern:",
                "  title: Harbor Lights",
                "fabrics:",
                "  A: {name: Ink, colour: blue}",
                "  B: {name: 深い藍 🧵 cafe\u0301, print:\tdot, colr: red}",
                "house:",
                "  usable-width: 40 in",
                "blocks:",
                "  lamp:",
                "    map: |",
                "      s G G s",
                "      E C",
                "      E C C W",
                "    units:",
                "      L: 42 1/2 in",
                ""
            )
        );

    public static SourceText House { get; } =
        new("templates/house.yaml", "seam: 1/4 in\nruler: 1/8 in\n");

    public static Diagnostic Strip { get; } =
        Diagnostic
            .Error(
                "PP0203",
                "this strip is wider than the fabric",
                In(Pattern, 15, "42 1/2 in"),
                "the strip needs this much",
                "Queen: 42 1/2 in > 40 in, so 2 1/2 in are missing.\nThe seam takes 100% of the rest.",
                "cut two strips of 21 1/2 in and join them"
            )
            .With(In(Pattern, 7, "40 in"), "the fabric is this wide")
            .With(In(House, 1, "1/4 in"), "the seam comes from here") with
        {
            Sizes = ["queen", "king"],
        };

    public static Diagnostic Wide { get; } =
        Diagnostic
            .Warning(
                "PP0130",
                "`colr` is no key of a fabric",
                In(Pattern, 5, "colr"),
                "unknown key",
                hint: "did you mean `color`?"
            )
            .With(In(Pattern, 5, "深い藍"), "three wide characters")
            .With(In(Pattern, 5, "cafe\u0301"), "four characters, one of two parts");

    public static Diagnostic Rows { get; } =
        Diagnostic.Error(
            "PP0201",
            "the rows of this map differ in length",
            new Span(Pattern.File, 11, 7, 13, 14),
            "4, 2 and 4 letters"
        );

    public static Diagnostic Elsewhere { get; } =
        Diagnostic.Error(
            "PP0901",
            "a template cannot be read",
            new Span("templates/cover.md", 3, 1, 3, 5),
            "this was not loaded"
        );

    public static Diagnostic Nowhere { get; } =
        Diagnostic.Error(
            "PP0902",
            "no pattern was found",
            Span.None,
            "",
            "Looked in patterns."
        ) with
        {
            Severity = Severity.Note,
        };

    public static MessageList All { get; } =
        new([Nowhere, Strip, Rows, Elsewhere, Wide], [Pattern, House]);

    /// <summary>The place of some words in a line.</summary>
    public static Span In(SourceText source, int line, string words)
    {
        var column = source.Line(line).IndexOf(words, StringComparison.Ordinal) + 1;
        column.ShouldBeGreaterThan(0);
        return new Span(source.File, line, column, line, column + words.Length);
    }

    public static string Written(IMessageWriter writer, MessageList messages)
    {
        var output = new StringWriter { NewLine = "\n" };
        writer.Write(messages, output);
        return output.ToString();
    }

    public static void ShouldMatch(string name, string actual) =>
        Golden.ShouldMatch(
            Path.Combine(
                Repository.Root,
                "tests",
                "PatternPress.Tests",
                "Cli",
                "Messages",
                $"{name}.expected.txt"
            ),
            actual
        );
}
