using System.Text;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Tests.Quilting.Rules;

/// <summary>Sets a source and what was found in it one below the other, so that a message is judged with its cause.</summary>
internal static class MessageText
{
    public static string Of(SourceText source, IReadOnlyList<Diagnostic> found)
    {
        var text = new StringBuilder();
        text.AppendLine($"----- {source.File}");
        text.AppendLine(source.Text.TrimEnd());
        text.AppendLine();
        text.AppendLine($"----- {found.Count} found");
        foreach (Diagnostic diagnostic in found)
        {
            Append(text, source, diagnostic);
        }
        return text.ToString().TrimEnd() + "\n";
    }

    private static void Append(StringBuilder text, SourceText source, Diagnostic d)
    {
        text.AppendLine($"{d.Severity.ToString().ToLowerInvariant()}[{d.Code}]: {d.Title}");
        if (!d.Primary.Span.IsNone)
        {
            text.AppendLine($"  --> {d.Primary.Span}");
            foreach (
                Label label in d
                    .Others.Prepend(d.Primary)
                    .OrderBy(l => l.Span.StartLine)
                    .ThenBy(l => l.Span.StartColumn)
            )
            {
                string line = source.Line(label.Span.StartLine);
                int end =
                    label.Span.EndLine == label.Span.StartLine
                        ? label.Span.EndColumn
                        : line.Length + 1;
                string mark = new(
                    label == d.Primary ? '^' : '-',
                    Math.Max(1, end - label.Span.StartColumn)
                );
                text.AppendLine($"{label.Span.StartLine, 4} | {line}");
                text.AppendLine(
                    $"     | {new string(' ', label.Span.StartColumn - 1)}{mark} {label.Text}".TrimEnd()
                );
            }
        }
        foreach (string line in d.Text.Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            text.AppendLine($"     = {line}");
        }
        if (d.Sizes.Length > 0)
        {
            text.AppendLine($"     sizes: {string.Join(", ", d.Sizes)}");
        }
        if (d.Hint is { } hint)
        {
            text.AppendLine($"     hint: {hint}");
        }
        text.AppendLine();
    }
}
