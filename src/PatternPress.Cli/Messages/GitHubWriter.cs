using System.Text;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Cli.Messages;

/// <summary>Findings as workflow commands, which GitHub shows beside the lines of a pull request.</summary>
public sealed class GitHubWriter : IMessageWriter
{
    public void Write(MessageList messages, TextWriter output)
    {
        foreach (var message in messages.All)
        {
            output.Write($"::{Command(message.Severity)} ");
            WritePlace(message, output);
            output.Write(
                $"title={Property($"{message.Code}: {message.Title}")}::{Data(Text(message))}\n"
            );
        }
    }

    private static void WritePlace(Diagnostic message, TextWriter output)
    {
        var span = message.Primary.Span;
        if (span.IsNone)
        {
            return;
        }

        output.Write(
            $"file={Property(span.File.Replace('\\', '/'))},line={span.StartLine},endLine={span.EndLine},"
        );
        // GitHub refuses columns on a span of several lines.
        if (span.StartLine == span.EndLine)
        {
            output.Write($"col={span.StartColumn},endColumn={span.EndColumn},");
        }
    }

    private static string Text(Diagnostic message)
    {
        var text = new StringBuilder(message.Title);
        if (message.Primary.Text.Length > 0)
        {
            text.Append(": ").Append(message.Primary.Text);
        }

        foreach (var other in message.Others)
        {
            text.Append('\n').Append(other.Span).Append(": ").Append(other.Text);
        }

        if (message.Text.Length > 0)
        {
            text.Append('\n').Append(message.Text);
        }

        if (message.Sizes.Length > 0)
        {
            text.Append("\nsizes: ").AppendJoin(", ", message.Sizes);
        }

        if (message.Hint is { Length: > 0 } hint)
        {
            text.Append("\nhint: ").Append(hint);
        }

        return text.ToString();
    }

    private static string Command(Severity severity) =>
        severity switch
        {
            Severity.Error => "error",
            Severity.Warning => "warning",
            _ => "notice",
        };

    private static string Data(string text) =>
        text.Replace("%", "%25").Replace("\r", "%0D").Replace("\n", "%0A");

    private static string Property(string text) =>
        Data(text).Replace(":", "%3A").Replace(",", "%2C");
}
