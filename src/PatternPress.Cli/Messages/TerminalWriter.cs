using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Cli.Messages;

/// <summary>
/// Findings for people: what is wrong, the lines it is about with carets, the facts, the sizes, what to do, where to
/// read more; and a summary at the end.
/// </summary>
public sealed class TerminalWriter(TerminalStyle style) : IMessageWriter
{
    /// <summary>Below this a label is not squeezed beside its carets but goes below them.</summary>
    private const int NarrowestLabel = 24;

    private readonly Paint paint = new(style.Color);

    public void Write(MessageList messages, TextWriter output)
    {
        foreach (var message in messages.All)
        {
            Write(message, messages, output);
            output.Write('\n');
        }

        if (!messages.All.IsEmpty)
        {
            WriteWrapped(messages.Summary(), "", output);
        }
    }

    private void Write(Diagnostic message, MessageList messages, TextWriter output)
    {
        var heading = $"{Word(message.Severity)}[{message.Code}]:";
        var lines = Wrap(message.Title, heading.Length + 1, indent: 2);
        output.Write($"{paint.Severity(message.Severity, heading)} {paint.Strong(lines[0])}\n");
        foreach (var line in lines.Skip(1))
        {
            output.Write($"  {paint.Strong(line)}\n");
        }

        var gutter = Gutter(message, messages);
        var marks = Marks(message);
        var isFirst = true;
        foreach (var file in marks.Select(mark => mark.Label.Span.File).Distinct())
        {
            var ofFile = marks.Where(mark => mark.Label.Span.File == file).ToList();
            WriteFile(ofFile, messages.Source(file), gutter, isFirst, output);
            isFirst = false;
        }

        WriteFacts(message, gutter, output);
    }

    /// <summary>A place to show; the primary one is underlined with carets.</summary>
    private readonly record struct Mark(Label Label, Severity? Primary);

    private static List<Mark> Marks(Diagnostic message)
    {
        var marks = new List<Mark>();
        if (!message.Primary.Span.IsNone)
        {
            marks.Add(new Mark(message.Primary, message.Severity));
        }

        foreach (var other in message.Others)
        {
            if (!other.Span.IsNone)
            {
                marks.Add(new Mark(other, null));
            }
        }

        return marks;
    }

    /// <summary>The width of the widest line number shown.</summary>
    private static int Gutter(Diagnostic message, MessageList messages)
    {
        var last = 0;
        foreach (var mark in Marks(message))
        {
            if (messages.Source(mark.Label.Span.File) is not null)
            {
                last = Math.Max(last, mark.Label.Span.StartLine);
            }
        }

        return Math.Max(last.ToString().Length, 1);
    }

    private void WriteFile(
        List<Mark> marks,
        SourceText? source,
        int gutter,
        bool isFirst,
        TextWriter output
    )
    {
        var blank = new string(' ', gutter);
        var arrow = isFirst ? "-->" : ":::";
        output.Write(
            $"{blank}{paint.Frame(arrow)} {DisplayLine.Harmless(marks[0].Label.Span.ToString())}\n"
        );
        if (source is null)
        {
            foreach (var mark in marks.Where(mark => mark.Label.Text.Length > 0))
            {
                WriteWrapped(mark.Label.Text, $"{blank} = ", output);
            }

            return;
        }

        output.Write($"{blank} {paint.Frame("|")}\n");
        foreach (
            var line in marks.GroupBy(mark => mark.Label.Span.StartLine).OrderBy(line => line.Key)
        )
        {
            WriteLine(
                source,
                line.Key,
                [.. line.OrderBy(mark => mark.Label.Span.StartColumn)],
                gutter,
                output
            );
        }

        output.Write($"{blank} {paint.Frame("|")}\n");
    }

    private void WriteLine(
        SourceText source,
        int number,
        List<Mark> marks,
        int gutter,
        TextWriter output
    )
    {
        var line = DisplayLine.Of(source.Line(number));
        var room = style.Width > 0 ? Math.Max(style.Width - gutter - 3, 10) : 0;
        var lead = $"{paint.Frame(number.ToString().PadLeft(gutter))} {paint.Frame("|")}";
        int? shown = null;
        foreach (var mark in marks)
        {
            // A line too long for the room is shown again for a place that the first part leaves out.
            var (text, shift) = line.Show(room, line.CellOf(mark.Label.Span.StartColumn));
            if (shift != shown)
            {
                output.Write($"{lead} {text}".TrimEnd() + "\n");
                shown = shift;
            }

            WriteMark(line, mark, shift, room, gutter, output);
        }
    }

    private void WriteMark(
        DisplayLine line,
        Mark mark,
        int shift,
        int room,
        int gutter,
        TextWriter output
    )
    {
        var span = mark.Label.Span;
        var goesOn = span.EndLine > span.StartLine;
        var start = Math.Max(line.CellOf(span.StartColumn) - shift, 0);
        var end = (goesOn ? line.Cells : line.EndCellOf(span.EndColumn)) - shift;
        end = Math.Max(room > 0 ? Math.Min(end, room) : end, start + 1);
        var label = mark.Label.Text;
        if (goesOn)
        {
            label += label.Length > 0 ? $" (to line {span.EndLine})" : $"to line {span.EndLine}";
        }

        var frame = $"{new string(' ', gutter)} {paint.Frame("|")} ";
        var underline = new string(mark.Primary is null ? '-' : '^', end - start);
        var beside = room == 0 || room - end - 1 >= Math.Min(NarrowestLabel, CellWidth.Of(label));
        var labelAt = beside ? end + 1 : Math.Min(start, Math.Max(room - NarrowestLabel, 0));
        var lines = Wrap(label, gutter + 3 + labelAt, gutter + 3 + labelAt);
        output.Write($"{frame}{new string(' ', start)}{Painted(mark, underline)}");
        if (beside && label.Length > 0)
        {
            output.Write($" {Painted(mark, lines[0])}");
            lines.RemoveAt(0);
        }

        output.Write('\n');
        foreach (var rest in lines.Where(rest => rest.Length > 0))
        {
            output.Write($"{frame}{new string(' ', labelAt)}{Painted(mark, rest)}\n");
        }
    }

    private string Painted(Mark mark, string text) =>
        mark.Primary is { } severity ? paint.Severity(severity, text) : paint.Other(text);

    private void WriteFacts(Diagnostic message, int gutter, TextWriter output)
    {
        var blank = new string(' ', gutter + 1);
        if (message.Text.Length > 0)
        {
            foreach (var line in message.Text.Split('\n'))
            {
                WriteWrapped(line, $"{blank}{paint.Frame("=")} ", output, gutter + 3);
            }
        }

        if (message.Sizes.Length > 0)
        {
            WriteWrapped(string.Join(", ", message.Sizes), $"{blank}sizes: ", output, gutter + 8);
        }

        if (message.Hint is { Length: > 0 } hint)
        {
            WriteWrapped(hint, $"{blank}{paint.Hint("hint:")} ", output, gutter + 7);
        }

        output.Write($"{blank}more: patternpress explain {message.Code}\n");
    }

    private void WriteWrapped(string text, string lead, TextWriter output, int? leadCells = null)
    {
        var indent = leadCells ?? lead.Length;
        var lines = Wrap(text, indent, indent);
        output.Write($"{lead}{lines[0]}\n");
        foreach (var line in lines.Skip(1))
        {
            output.Write($"{new string(' ', indent)}{line}\n");
        }
    }

    private static string Word(Severity severity) =>
        severity switch
        {
            Severity.Error => "error",
            Severity.Warning => "warning",
            _ => "note",
        };

    /// <summary>Breaks a text into lines between words; a word longer than a line stays whole.</summary>
    /// <param name="used">Cells already taken in the first line.</param>
    /// <param name="indent">Cells taken at the start of every further line.</param>
    private List<string> Wrap(string text, int used, int indent)
    {
        text = DisplayLine.Harmless(text);
        if (style.Width <= 0 || used + CellWidth.Of(text) <= style.Width)
        {
            return [text];
        }

        var lines = new List<string>();
        var line = "";
        var cells = used;
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var width = CellWidth.Of(word);
            if (line.Length > 0 && cells + 1 + width > style.Width)
            {
                lines.Add(line);
                line = "";
                cells = indent;
            }

            cells += width + (line.Length > 0 ? 1 : 0);
            line += line.Length > 0 ? " " + word : word;
        }

        lines.Add(line);
        return lines;
    }
}
