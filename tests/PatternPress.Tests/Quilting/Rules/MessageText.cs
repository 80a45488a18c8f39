using PatternPress.Cli.Messages;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Tests.Quilting.Rules;

/// <summary>Sets a source and its messages one below the other, so that a message is judged with its cause.</summary>
internal static class MessageText
{
    /// <summary>The width of a usual terminal.</summary>
    private const int Columns = 100;

    public static string Of(SourceText source, IReadOnlyList<Diagnostic> found)
    {
        var text = new StringWriter { NewLine = "\n" };
        text.WriteLine($"----- {source.File}");
        text.WriteLine(source.Text.TrimEnd());
        text.WriteLine();
        text.WriteLine("----- messages");
        new TerminalWriter(new TerminalStyle(Color: false, Columns)).Write(
            new MessageList(found, [source]),
            text
        );
        return text.ToString();
    }
}
