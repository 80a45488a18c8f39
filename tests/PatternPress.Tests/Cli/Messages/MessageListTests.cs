using PatternPress.Cli.Messages;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Tests.Cli.Messages;

public sealed class MessageListTests
{
    private static Diagnostic At(string file, int line, int column, string code) =>
        Diagnostic.Error(code, "wrong", new Span(file, line, column, line, column + 1), "here");

    [Test]
    public void Findings_are_ordered_by_file_line_column_and_code()
    {
        Diagnostic[] ordered =
        [
            At("A.yaml", 9, 9, "PP0130"),
            At("a.yaml", 1, 2, "PP0131"),
            At("a.yaml", 1, 10, "PP0130"),
            At("a.yaml", 1, 10, "PP0131"),
            At("a.yaml", 10, 1, "PP0130"),
            At("b.yaml", 1, 1, "PP0130"),
            Diagnostic.Error("PP0101", "wrong", Span.None, ""),
        ];
        new MessageList(ordered.Reverse(), []).All.ShouldBe(ordered);
    }

    [Test]
    public void The_summary_counts()
    {
        var error = At("patterns/a.yaml", 1, 1, "PP0130");
        var warning = error with { Severity = Severity.Warning };
        var note = error with { Severity = Severity.Note };
        Summary(error, error, warning).ShouldBe("2 errors, 1 warning in a.yaml");
        Summary(warning, warning).ShouldBe("2 warnings in a.yaml");
        Summary(error, At("patterns/b.yaml", 1, 1, "PP0130"), note)
            .ShouldBe("2 errors, 1 note in 2 files");
        Summary(Diagnostic.Error("PP0101", "wrong", Span.None, "")).ShouldBe("1 error");
        Summary().ShouldBe("nothing found");
    }

    private static string Summary(params Diagnostic[] found) =>
        new MessageList(found, []).Summary();
}
