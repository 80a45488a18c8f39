namespace PatternPress.Source.Syntax;

/// <summary>
/// For every character of a scalar's value, where in the file it is written. Found by walking the value and the file
/// side by side: what was escaped, unindented or folded on the way in is stepped over.
/// </summary>
internal sealed class ScalarOffsets
{
    private readonly int[] starts;
    private readonly int[] ends;
    private readonly int end;
    private int count;

    private ScalarOffsets(int length, int end)
    {
        starts = new int[length];
        ends = new int[length];
        this.end = end;
    }

    public int StartOf(int offset) =>
        offset < starts.Length ? starts[offset]
        : starts.Length > 0 ? ends[^1]
        : end;

    public int EndOf(int offset) => ends[offset];

    public static ScalarOffsets Find(
        string text,
        string value,
        ScalarStyle style,
        int start,
        int end,
        int parentIndent
    )
    {
        var quotes = style is ScalarStyle.SingleQuoted or ScalarStyle.DoubleQuoted ? 1 : 0;
        var from = Math.Min(start + quotes, end);
        var offsets = new ScalarOffsets(value.Length, value.Length == 0 ? from : end);
        if (style is ScalarStyle.Literal or ScalarStyle.Folded)
        {
            offsets.WalkBlock(text, start, end, parentIndent, style == ScalarStyle.Folded);
        }
        else
        {
            offsets.WalkFlow(text, from, end - quotes, style);
        }

        // Should a walk fall short of the value, the rest is at the end: a message then points near, not nowhere.
        while (offsets.count < value.Length)
        {
            offsets.Add(end, end);
        }

        return offsets;
    }

    private void Add(int from, int to)
    {
        if (count < starts.Length)
        {
            starts[count] = from;
            ends[count] = to;
            count++;
        }
    }

    /// <summary>Plain and quoted scalars: line breaks fold, quotation marks and backslashes escape.</summary>
    private void WalkFlow(string text, int at, int end, ScalarStyle style)
    {
        while (at < end && count < starts.Length)
        {
            if (
                text[at] is ' ' or '\t' or '\n'
                && FoldedRun(text, at, end, out var next, out var breaks)
            )
            {
                AddFold(text, at, next, breaks);
                at = next;
            }
            else if (style == ScalarStyle.SingleQuoted && text[at] == '\'')
            {
                Add(at, at + 2);
                at += 2;
            }
            else if (style == ScalarStyle.DoubleQuoted && text[at] == '\\')
            {
                at = AddEscape(text, at, end);
            }
            else
            {
                Add(at, at + 1);
                at++;
            }
        }
    }

    /// <summary>Whether the blanks that begin here hold a line break, and if so how many and where they stop.</summary>
    private static bool FoldedRun(string text, int at, int end, out int next, out int breaks)
    {
        next = at;
        breaks = 0;
        while (next < end && text[next] is ' ' or '\t' or '\n')
        {
            breaks += text[next] == '\n' ? 1 : 0;
            next++;
        }

        return breaks > 0;
    }

    /// <summary>One line break folds to a space; of more, all but the first stay.</summary>
    private void AddFold(string text, int at, int next, int breaks)
    {
        if (breaks == 1)
        {
            Add(at, next);
            return;
        }

        var first = true;
        for (var i = at; i < next; i++)
        {
            if (text[i] == '\n')
            {
                if (!first)
                {
                    Add(i, i + 1);
                }

                first = false;
            }
        }
    }

    private int AddEscape(string text, int at, int end)
    {
        if (at + 1 >= end)
        {
            return end;
        }

        if (text[at + 1] == '\n')
        {
            // A backslash before the line break joins the lines; empty lines that follow stay breaks.
            FoldedRun(text, at + 1, end, out var next, out _);
            for (var i = at + 2; i < next; i++)
            {
                if (text[i] == '\n')
                {
                    Add(i, i + 1);
                }
            }

            return next;
        }

        var digits = text[at + 1] switch
        {
            'x' => 2,
            'u' => 4,
            'U' => 8,
            _ => 0,
        };
        var after = Math.Min(at + 2 + digits, end);
        Add(at, after);
        if (digits == 8 && IsPair(text.AsSpan(at + 2, after - at - 2)))
        {
            Add(at, after);
        }

        return after;
    }

    /// <summary>A code point above FFFF takes two characters of the value.</summary>
    private static bool IsPair(ReadOnlySpan<char> hex) =>
        hex.Length == 8 && !hex[..4].SequenceEqual("0000");

    /// <summary>Block scalars: indentation is stepped over line by line; in the folded kind breaks become spaces.</summary>
    private void WalkBlock(string text, int start, int end, int parentIndent, bool folded)
    {
        var at = text.IndexOf('\n', start) + 1;
        if (at == 0 || at > end)
        {
            return;
        }

        var indent = BlockIndent(text, start, at, end, parentIndent);
        var breaksFrom = -1;
        var previousIndented = true;
        var pending = new List<int>();
        while (at < end && count < starts.Length)
        {
            var content = at;
            while (content < end && content - at < indent && text[content] == ' ')
            {
                content++;
            }

            var lineEnd = text.IndexOf('\n', content);
            lineEnd = lineEnd < 0 || lineEnd > end ? end : lineEnd;
            if (content < lineEnd)
            {
                var indented = text[content] is ' ' or '\t';
                FlushBreaks(pending, folded && !indented && !previousIndented, breaksFrom, content);
                for (var i = content; i < lineEnd; i++)
                {
                    Add(i, i + 1);
                }

                previousIndented = indented;
                breaksFrom = lineEnd;
            }

            if (lineEnd < end)
            {
                pending.Add(lineEnd);
            }

            at = lineEnd + 1;
        }

        FlushBreaks(pending, fold: false, breaksFrom, end);
    }

    private void FlushBreaks(List<int> pending, bool fold, int from, int to)
    {
        if (fold && pending.Count == 1)
        {
            Add(from, to);
        }
        else
        {
            for (var i = fold ? 1 : 0; i < pending.Count; i++)
            {
                Add(pending[i], pending[i] + 1);
            }
        }

        pending.Clear();
    }

    /// <summary>The indentation of a block: as its header says (<c>|2</c>), else that of its first line with content.</summary>
    private static int BlockIndent(string text, int start, int body, int end, int parentIndent)
    {
        for (var i = start; i < body && text[i] != '#'; i++)
        {
            if (char.IsAsciiDigit(text[i]))
            {
                return Math.Max(parentIndent, 0) + text[i] - '0';
            }
        }

        var widest = 0;
        for (var at = body; at < end; )
        {
            var content = at;
            while (content < end && text[content] == ' ')
            {
                content++;
            }

            widest = Math.Max(widest, content - at);
            if (content < end && text[content] != '\n')
            {
                return content - at;
            }

            at = content + 1;
        }

        return widest;
    }
}
