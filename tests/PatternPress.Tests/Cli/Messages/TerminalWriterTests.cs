using PatternPress.Cli.Messages;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Tests.Cli.Messages;

public sealed class TerminalWriterTests
{
    private static string Write(TerminalStyle style, params Diagnostic[] found) =>
        SampleMessages.Written(
            new TerminalWriter(style),
            new MessageList(found, [SampleMessages.Pattern, SampleMessages.House])
        );

    [Test]
    public void All_parts_of_a_message_are_shown() =>
        SampleMessages.ShouldMatch(
            "terminal",
            SampleMessages.Written(new TerminalWriter(new TerminalStyle()), SampleMessages.All)
        );

    [Test]
    public void Colors_are_used_when_told_so() =>
        SampleMessages.ShouldMatch(
            "terminal-color",
            Write(new TerminalStyle(Color: true), SampleMessages.Strip, SampleMessages.Wide)
                .Replace("\e", "<ESC>")
        );

    [Test]
    public void Colors_add_nothing_but_colors()
    {
        var plain = SampleMessages.Written(
            new TerminalWriter(new TerminalStyle(Width: 70)),
            SampleMessages.All
        );
        var painted = SampleMessages.Written(
            new TerminalWriter(new TerminalStyle(Color: true, Width: 70)),
            SampleMessages.All
        );
        System.Text.RegularExpressions.Regex.Replace(painted, "\e\\[[0-9;]*m", "").ShouldBe(plain);
        painted.ShouldNotBe(plain);
        plain.ShouldNotContain('\e');
    }

    [Test]
    public void A_narrow_terminal_wraps() =>
        SampleMessages.ShouldMatch(
            "terminal-narrow",
            Write(
                new TerminalStyle(Width: 44),
                SampleMessages.Strip,
                Diagnostic.Warning(
                    "PP0499",
                    "a title that is so long that no narrow terminal shows it in one line",
                    SampleMessages.In(SampleMessages.Pattern, 4, "colour"),
                    "a label that is too long to stand beside its carets and goes below",
                    "Facts that go on and on for more than one line of a narrow terminal.",
                    "a hint that needs two lines as well, since it has many words"
                )
            )
        );

    [TestCase(30)]
    [TestCase(44)]
    [TestCase(80)]
    public void No_line_is_wider_than_the_terminal(int width)
    {
        var text = SampleMessages.Written(
            new TerminalWriter(new TerminalStyle(Width: width)),
            SampleMessages.All
        );
        foreach (var line in text.Split('\n'))
        {
            // A path or a command is not broken.
            if (!line.Contains("--> ") && !line.Contains("::: ") && !line.Contains("more: "))
            {
                CellWidth.Of(line).ShouldBeLessThanOrEqualTo(width, line);
            }
        }
    }

    [Test]
    public void A_long_source_line_is_cut_around_the_place()
    {
        var source = new SourceText(
            "long.yaml",
            $"a: {new string('x', 500)} here {new string('y', 100_000)}"
        );
        var found = Diagnostic.Error(
            "PP0100",
            "too long",
            SampleMessages.In(source, 1, "here"),
            "in the middle"
        );
        var text = SampleMessages.Written(
            new TerminalWriter(new TerminalStyle(Width: 60)),
            new([found], [source])
        );
        var lines = text.Split('\n');
        lines.ShouldAllBe(line => line.Length <= 60);
        var shown = lines.Single(line => line.Contains("here"));
        shown.ShouldContain("...x");
        var carets = lines.Single(line => line.Contains("^^^^"));
        carets.IndexOf('^').ShouldBe(shown.IndexOf("here", StringComparison.Ordinal));
    }

    [Test]
    public void Nothing_in_a_file_reaches_the_terminal_s_controls()
    {
        var source = new SourceText("a.yaml", "a: \e[2J\u0007b\u202Ec");
        var found = Diagnostic.Error(
            "PP0103",
            "bad \e[31m",
            SampleMessages.In(source, 1, "b"),
            "label\r",
            "text\u009b1m",
            "hint\u0007"
        );
        var text = SampleMessages.Written(
            new TerminalWriter(new TerminalStyle()),
            new([found], [source])
        );
        text.ShouldAllBe(character => character == '\n' || !char.IsControl(character));
        text.ShouldNotContain('\u202E');
        text.ShouldContain("a: ␛[2J␇b\uFFFDc");
        text.Split('\n')[4].IndexOf('^').ShouldBe(text.Split('\n')[3].IndexOf('b'));
    }

    [TestCase("abc", 3)]
    [TestCase("", 0)]
    [TestCase("漢字", 4)]
    [TestCase("e\u0301", 1)]
    [TestCase("½", 1)]
    [TestCase("🧵", 2)]
    [TestCase("👩‍🎨", 2)]
    [TestCase("✂️", 2)]
    [TestCase("ｱ", 1)]
    [TestCase("Ａ", 2)]
    [TestCase("한글", 4)]
    public void Cells_are_counted_as_terminals_do(string text, int cells) =>
        CellWidth.Of(text).ShouldBe(cells);
}
