namespace PatternPress.Source;

/// <summary>
/// The text of one source file, with its lines. Line breaks are single line feeds: <see cref="Syntax.SourceGate"/>
/// takes the others out on the way in. Columns count UTF-16 code units, as editors do.
/// </summary>
/// <param name="file">The name to show in messages.</param>
/// <param name="text">The whole text, decoded.</param>
public sealed class SourceText(string file, string text)
{
    private int[]? lineStarts;

    public string File { get; } = file;

    public string Text { get; } = text;

    public int LineCount => LineStarts.Length;

    private int[] LineStarts => lineStarts ??= FindLineStarts(Text);

    /// <summary>The text of a line (counting from 1) without its line feed; empty where there is no such line.</summary>
    public string Line(int number)
    {
        if (number < 1 || number > LineCount)
        {
            return "";
        }

        var start = LineStarts[number - 1];
        var end = number == LineCount ? Text.Length : LineStarts[number] - 1;
        return Text[start..end];
    }

    /// <summary>Line and column, both counting from 1, of a place in the text. A place outside is moved to the nearer end.</summary>
    public (int Line, int Column) At(int index)
    {
        index = Math.Clamp(index, 0, Text.Length);
        var starts = LineStarts;
        // The last line that starts at or before the place. By hand: the library's generic search would be compiled
        // for the occasion.
        var line = 0;
        for (var step = starts.Length; step > 0; step /= 2)
        {
            while (line + step < starts.Length && starts[line + step] <= index)
            {
                line += step;
            }
        }

        return (line + 1, index - LineStarts[line] + 1);
    }

    /// <summary>The span from one index up to, not including, another.</summary>
    public Span SpanOf(int start, int end)
    {
        var (startLine, startColumn) = At(start);
        var (endLine, endColumn) = At(Math.Max(start, end));
        return new Span(File, startLine, startColumn, endLine, endColumn);
    }

    /// <summary>The text a span of this file covers.</summary>
    public string Slice(Span span)
    {
        var start = IndexOf(span.StartLine, span.StartColumn);
        var end = IndexOf(span.EndLine, span.EndColumn);
        return end > start ? Text[start..end] : "";
    }

    private int IndexOf(int line, int column)
    {
        if (line < 1)
        {
            return 0;
        }

        return line > LineCount
            ? Text.Length
            : Math.Clamp(LineStarts[line - 1] + column - 1, 0, Text.Length);
    }

    private static int[] FindLineStarts(string text)
    {
        var starts = new List<int> { 0 };
        for (var at = text.IndexOf('\n'); at >= 0; at = text.IndexOf('\n', at + 1))
        {
            starts.Add(at + 1);
        }

        return [.. starts];
    }
}
