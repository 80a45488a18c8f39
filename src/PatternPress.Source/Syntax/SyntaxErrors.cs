using PatternPress.Source.Diagnostics;

namespace PatternPress.Source.Syntax;

/// <summary>
/// Puts a YAML syntax error into a designer's words (codes PP0105 to PP0110 and PP0120 to PP0129). The scanner says
/// what it was doing; a look at the line tells what was probably meant.
/// </summary>
internal static class SyntaxErrors
{
    private const string NotRead =
        "What follows was not read, up to the next key at the left edge.";

    /// <summary>Explains what the scanner stumbled over.</summary>
    /// <param name="message">The scanner's message; empty where it broke down without one.</param>
    public static Diagnostic Explain(SyntaxError error, string message)
    {
        if (message.Length == 0)
        {
            return UnclosedBracket(error, error.Readable) ?? Unreadable(error);
        }

        if (Says(message, "invalid comment", "found a comment", "comment without"))
        {
            return CommentWithoutBlank(error);
        }

        if (Says(message, "directive", "YAML document"))
        {
            return SyntaxFaults.Directive(LineOf(error, error.Start));
        }

        if (Says(message, "quoted scalar"))
        {
            return Says(message, "escape", "hexadecimal", "surrogates")
                ? BadEscape(error)
                : UnclosedQuotation(error);
        }

        if (Says(message, "block scalar"))
        {
            return Says(message, "spaces") ? BlanksInFirstLine(error) : TextAfterBlockSign(error);
        }

        if (Says(message, "invalid mapping", "mapping values"))
        {
            return UnexpectedColon(error);
        }

        if (Says(message, "could not find expected ':'"))
        {
            return MissingColon(error, error.Start);
        }

        if (Says(message, "cannot start any token", "anchor or alias", "tag"))
        {
            return ReservedCharacter(error);
        }

        return Says(message, "sequence entries") ? ListOnKeyLine(error) : Unreadable(error);
    }

    /// <summary>Something stands where a value was expected.</summary>
    public static Diagnostic NothingToRead(SyntaxError error) =>
        CharacterAt(error, error.Start) == ','
            ? StrayCharacter(error)
            : UnclosedBracket(error, error.Start) ?? StrayCharacter(error);

    private static bool Says(string message, params ReadOnlySpan<string> phrases)
    {
        foreach (var phrase in phrases)
        {
            if (message.Contains(phrase, StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }
        }

        return false;
    }

    private static Diagnostic UnclosedQuotation(SyntaxError error)
    {
        var mark = CharacterAt(error, error.Start);
        return Diagnostic.Error(
            "PP0121",
            "a quotation mark is opened and never closed",
            One(error, error.Start),
            "opened here",
            NotRead,
            mark == '\''
                ? "close it with ' on the same line; an apostrophe inside is written twice: ''"
                : "close it with \" on the same line; an inch mark inside is written \\\""
        );
    }

    private static Diagnostic BadEscape(SyntaxError error)
    {
        var at = Math.Max(
            error.Source.Text.LastIndexOf('\\', Math.Min(error.End, error.Readable - 1)),
            error.Start
        );
        return Diagnostic.Error(
            "PP0122",
            "a backslash stands before something it does not go with",
            One(error, at),
            "this backslash",
            "Inside \" marks a backslash gives the next character a special meaning. " + NotRead,
            "write \\\\ for a backslash, or use ' marks, inside which it is an ordinary character"
        );
    }

    private static Diagnostic TextAfterBlockSign(SyntaxError error) =>
        Diagnostic.Error(
            "PP0106",
            "text stands on the same line as the sign that begins a block of text",
            Rest(error, error.Start),
            "nothing may follow the sign on its line",
            NotRead,
            "begin the text on the line below, indented; a value that begins with | or > needs quotation marks"
        );

    private static Diagnostic BlanksInFirstLine(SyntaxError error)
    {
        var (line, _) = error.Source.At(error.End);
        do
        {
            line--;
        } while (line > 1 && error.Source.Line(line).AsSpan().Trim(' ').Length > 0);

        var blank = error.Source.Line(line);
        return Diagnostic.Error(
            "PP0107",
            "the empty first line of this block holds more blanks than the text below it",
            new Span(error.Source.File, line, 1, line, blank.Length + 1),
            $"{blank.Length} blanks",
            NotRead,
            "delete the blanks, or the line"
        );
    }

    private static Diagnostic CommentWithoutBlank(SyntaxError error)
    {
        var at = error.Source.Text.IndexOf('#', Math.Min(error.Start, error.Readable));
        return Diagnostic.Error(
            "PP0108",
            "a comment follows without a blank",
            One(error, at < 0 ? error.Start : at),
            "the comment begins here",
            NotRead,
            "put a blank before the #"
        );
    }

    /// <summary>A colon where a value goes on: a second one in the line, or a line indented into the value above.</summary>
    private static Diagnostic UnexpectedColon(SyntaxError error)
    {
        var (line, column) = error.Source.At(error.Start);
        var text = error.Source.Line(line);
        var before = text.AsSpan(0, Math.Min(column - 1, text.Length));
        var content = text.AsSpan().TrimStart(' ');
        if (content.Length > 1 && content[0] == '-' && content[1] is '{' or '[')
        {
            return DashWithoutBlank(error.Source, line);
        }

        if (before.Contains(": ", StringComparison.Ordinal))
        {
            return Diagnostic.Error(
                "PP0124",
                "a second colon stands in this line",
                One(error, error.Start),
                "this colon",
                "A colon and a blank end a key, so a value that holds them must say that it is text. "
                    + NotRead,
                "put the value in quotation marks"
            );
        }

        var above = LineAbove(error.Source, line);
        var aboveText = error.Source.Line(above).AsSpan().Trim(' ');
        if (aboveText.StartsWith("-") && !aboveText.StartsWith("- "))
        {
            return DashWithoutBlank(error.Source, above);
        }

        if (!aboveText.Contains(": ", StringComparison.Ordinal) && !aboveText.EndsWith(":"))
        {
            return MissingColonIn(error.Source, above);
        }

        return Diagnostic
            .Error(
                "PP0126",
                "this line is indented further than the line above, whose value it seems to continue",
                Lead(error.Source, line),
                $"indented by {IndentOf(error.Source, line)}",
                NotRead,
                $"indent it by {ContentIndentOf(error.Source, above)}, or put its text in quotation marks"
            )
            .With(
                Lead(error.Source, above),
                $"its key is indented by {ContentIndentOf(error.Source, above)}"
            );
    }

    private static Diagnostic DashWithoutBlank(SourceText source, int line)
    {
        var dash = source.Line(line).IndexOf('-');
        return Diagnostic.Error(
            "PP0126",
            "a dash stands without a blank after it",
            new Span(source.File, line, dash + 1, line, dash + 2),
            "this dash begins no list item",
            NotRead,
            "put a blank after the dash"
        );
    }

    /// <summary>Something else than a comma or the closing bracket stands between the items of brackets.</summary>
    public static Diagnostic FlowBroken(SyntaxError error)
    {
        var found = CharacterAt(error, error.Start);
        if (
            error.Start >= error.Readable
            || error.Source.Text.AsSpan(error.Start, error.Readable - error.Start).Trim().IsEmpty
        )
        {
            return UnclosedBracket(error, error.Readable) ?? Unreadable(error);
        }

        if (found is ']' or '}' && OpenBracket(error, error.Start) is var open and >= 0)
        {
            var opening = CharacterAt(error, open);
            return Diagnostic
                .Error(
                    "PP0125",
                    $"`{opening}` is closed with `{found}`",
                    One(error, error.Start),
                    $"expected `{Closing(opening)}`",
                    NotRead,
                    $"write `{Closing(opening)}` here"
                )
                .With(One(error, open), "opened here");
        }

        var (line, _) = error.Source.At(error.Start);
        if (OpenBracket(error, error.Start) is var bracket and >= 0)
        {
            var (bracketLine, _) = error.Source.At(bracket);
            if (
                bracketLine != line
                && IndentOf(error.Source, line) <= IndentOf(error.Source, bracketLine)
            )
            {
                return UnclosedBracket(error, error.Start)!;
            }
        }

        return Diagnostic.Error(
            "PP0129",
            "a comma is missing between two items",
            One(error, error.Start),
            "the next item was not expected here",
            "Inside brackets a comma ends each item. " + NotRead,
            "put a comma between the two items, or close the bracket"
        );
    }

    private static Diagnostic? UnclosedBracket(SyntaxError error, int until)
    {
        var open = OpenBracket(error, until, outermost: true);
        if (open < 0)
        {
            return null;
        }

        var opening = CharacterAt(error, open);
        var (line, column) = error.Source.At(open);
        if (RemarkInBrackets(error.Source.Line(line), column - 1) is var sign and >= 0)
        {
            return BracketCutOff(error, open, opening, line, sign);
        }

        return Diagnostic.Error(
            "PP0125",
            $"`{opening}` is opened and never closed",
            One(error, open),
            "opened here",
            NotRead,
            $"close it with `{Closing(opening)}`; a text that begins with `{opening}` needs quotation marks"
        );
    }

    /// <summary>The closing bracket stands behind a #, mostly that of a color: <c>{name: Rose, color: #d1495b}</c>.</summary>
    private static Diagnostic BracketCutOff(
        SyntaxError error,
        int open,
        char opening,
        int line,
        int sign
    )
    {
        var lines = 0;
        for (var other = 1; other <= error.Source.LineCount; other++)
        {
            lines += RemarkInBrackets(error.Source.Line(other), 0) >= 0 ? 1 : 0;
        }

        var text = error.Source.Line(line);
        var rest = text.AsSpan(sign);
        var end = rest.IndexOfAny(',', ']', '}');
        var value = rest[..(end < 0 ? rest.Length : end)].TrimEnd(' ').ToString();
        return Diagnostic
            .Error(
                "PP0125",
                $"a # cuts off the rest of this line with its `{Closing(opening)}`",
                new Span(error.Source.File, line, sign + 1, line, text.TrimEnd(' ').Length + 1),
                "read as a remark",
                "A # after a blank begins a remark. "
                    + (lines > 1 ? $"{lines} lines of the file have one inside brackets. " : "")
                    + NotRead,
                $"put the value in quotation marks: \"{Excerpt.Of(value)}\""
            )
            .With(One(error, open), "opened here");
    }

    /// <summary>
    /// Where a # without a blank after it makes a remark of the rest of a line inside brackets, their end among it; -1
    /// where none does.
    /// </summary>
    private static int RemarkInBrackets(ReadOnlySpan<char> line, int from)
    {
        var depth = 0;
        for (var i = from; i < line.Length; i++)
        {
            var startsWord = i == 0 || line[i - 1] is ' ' or '[' or '{' or ',';
            switch (line[i])
            {
                case '"' or '\'' when startsWord:
                    var close = line[(i + 1)..].IndexOf(line[i]);
                    if (close < 0)
                    {
                        return -1;
                    }

                    i += close + 1;
                    break;
                case '#' when startsWord:
                    return
                        depth > 0
                        && i + 1 < line.Length
                        && line[i + 1] is not (' ' or '#')
                        && line[i..].IndexOfAny(']', '}') > 0
                        ? i
                        : -1;
                case '[' or '{' when startsWord:
                    depth++;
                    break;
                case ']' or '}':
                    depth--;
                    break;
            }
        }

        return -1;
    }

    private static char Closing(char opening) => opening == '[' ? ']' : '}';

    /// <summary>The innermost (or outermost) bracket still open at a place, quotation marks and comments stepped over; -1 for none.</summary>
    private static int OpenBracket(SyntaxError error, int until, bool outermost = false)
    {
        var text = error.Source.Text;
        var open = new Stack<int>();
        for (var i = error.From; i < until && i < text.Length; i++)
        {
            var startsWord = i == 0 || text[i - 1] is ' ' or '\n' or '[' or '{' or ',';
            switch (text[i])
            {
                case '"' or '\'' when startsWord:
                    var close = text.IndexOf(text[i], i + 1);
                    i = close < 0 ? until : close;
                    break;
                case '#' when startsWord:
                    var end = text.IndexOf('\n', i);
                    i = end < 0 ? until : end;
                    break;
                case '[' or '{' when startsWord || open.Count > 0:
                    open.Push(i);
                    break;
                case ']' or '}' when open.Count > 0:
                    open.Pop();
                    break;
            }
        }

        if (open.Count == 0)
        {
            return -1;
        }

        return outermost ? open.Last() : open.Peek();
    }

    /// <summary>Something stands where the next key or dash was expected.</summary>
    public static Diagnostic UnexpectedLine(SyntaxError error, bool inList)
    {
        var (line, column) = error.Source.At(error.Start);
        var text = error.Source.Line(line);
        var before = text.AsSpan(0, Math.Min(column - 1, text.Length)).TrimEnd(' ');
        if (before.Length > 0 && before.TrimStart(" -").Length > 0)
        {
            return TextAfterEnd(error, before[^1]);
        }

        var content = text.AsSpan(column - 1);
        var isItem = content.StartsWith("- ") || content is "-";
        var isKey =
            content.Contains(": ", StringComparison.Ordinal) || content.TrimEnd(' ').EndsWith(":");
        var isInside = error.Indents is [.., var parent] && column - 1 > parent;
        if (error.AfterBlock && !isItem && (isInside || !isKey))
        {
            return Diagnostic.Error(
                "PP0126",
                "this line is indented less than the first line of its block of text",
                Lead(error.Source, line),
                $"indented by {column - 1}",
                NotRead,
                "indent every line of the block at least as far as its first"
            );
        }

        if (!isItem && !isKey)
        {
            return MissingColonIn(error.Source, line);
        }

        return WrongIndent(error, line, isItem, inList);
    }

    private static Diagnostic WrongIndent(SyntaxError error, int line, bool isItem, bool inList)
    {
        var indent = IndentOf(error.Source, line);
        string title;
        string? hint = null;
        if (isItem)
        {
            title = "a list item stands among keys";
        }
        else if (inList && error.Indents.Contains(indent))
        {
            title = "a key stands among list items";
            hint =
                $"indent it by {ContentIndentOf(error.Source, LineAbove(error.Source, line))} "
                + "to make it part of the item above";
        }
        else
        {
            title = "this line is indented like none of the lines above";
        }

        return Diagnostic.Error(
            "PP0126",
            title,
            Lead(error.Source, line),
            $"indented by {indent}",
            $"The lines above are indented by {IndentsAbove(error.Source, line)}. {NotRead}",
            hint ?? "indent it like the lines it belongs to"
        );
    }

    /// <summary>The indentations of the lines a line may belong with: "0, 2 or 4".</summary>
    private static string IndentsAbove(SourceText source, int line)
    {
        var indents = new SortedSet<int>();
        for (var above = LineAbove(source, line); ; above = LineAbove(source, above))
        {
            indents.Add(IndentOf(source, above));
            if (above == 1 || IndentOf(source, above) == 0)
            {
                break;
            }
        }

        var words = string.Join(", ", indents);
        var last = words.LastIndexOf(", ", StringComparison.Ordinal);
        return last < 0 ? words : $"{words[..last]} or {words[(last + 2)..]}";
    }

    private static Diagnostic TextAfterEnd(SyntaxError error, char end) =>
        end is '"' or '\''
            ? Diagnostic.Error(
                "PP0128",
                "text goes on after the closing quotation mark",
                Rest(error, error.Start),
                "this stands outside the quotation marks",
                NotRead,
                end == '"'
                    ? "put all of it inside; a \" inside is written \\\""
                    : "put all of it inside; an apostrophe inside is written twice: ''"
            )
            : Diagnostic.Error(
                "PP0128",
                end is ']' or '}'
                    ? "text goes on after the closing bracket"
                    : "this text was not expected here",
                Rest(error, error.Start),
                "this belongs to nothing",
                NotRead,
                "remove it, or put the whole value in quotation marks"
            );

    private static Diagnostic MissingColon(SyntaxError error, int at) =>
        MissingColonIn(error.Source, error.Source.At(at).Line);

    private static Diagnostic MissingColonIn(SourceText source, int line)
    {
        var text = source.Line(line).AsSpan();
        var content = text.Trim(' ');
        var colon = content.IndexOf(':');
        var glued = colon > 0 && colon < content.Length - 1;
        return Diagnostic.Error(
            "PP0123",
            glued ? "a colon stands without a blank after it" : "a colon is missing after the key",
            Lead(source, line),
            glued ? "this line has no key" : "expected `key: value`",
            NotRead,
            glued
                ? $"put a blank after the colon: `{content[..colon]}: {content[(colon + 1)..]}`"
                : "put a colon and a blank between the key and its value"
        );
    }

    private static Diagnostic ReservedCharacter(SyntaxError error)
    {
        var found = CharacterAt(error, error.Start);
        return Diagnostic.Error(
            "PP0127",
            $"a value cannot begin with `{found}`",
            One(error, error.Start),
            "this sign has a meaning of its own in YAML",
            NotRead,
            "put the value in quotation marks"
        );
    }

    private static Diagnostic ListOnKeyLine(SyntaxError error) =>
        Diagnostic.Error(
            "PP0105",
            "a list begins on the line of its key",
            One(error, error.Start),
            "this dash begins a list item",
            NotRead,
            "begin the list on the line below; a value that begins with a dash needs quotation marks"
        );

    private static Diagnostic StrayCharacter(SyntaxError error)
    {
        var found = CharacterAt(error, error.Start);
        return found switch
        {
            ',' => Diagnostic.Error(
                "PP0129",
                "a comma stands where an item is expected",
                One(error, error.Start),
                "nothing stands before this comma",
                NotRead,
                "remove the comma, or write the missing item"
            ),
            ']' or '}' => Diagnostic.Error(
                "PP0125",
                $"`{found}` closes nothing",
                One(error, error.Start),
                "no bracket was opened",
                NotRead,
                "remove it"
            ),
            _ => Unreadable(error),
        };
    }

    private static Diagnostic Unreadable(SyntaxError error) =>
        Diagnostic.Error(
            "PP0120",
            "this cannot be read as YAML",
            Rest(error, error.Start),
            "reading stopped here",
            NotRead,
            "compare it with a line that is read, or put the value in quotation marks"
        );

    private static char CharacterAt(SyntaxError error, int index) =>
        index >= 0 && index < error.Source.Text.Length ? error.Source.Text[index] : '\0';

    private static Span One(SyntaxError error, int index) =>
        error.Source.SpanOf(index, CharacterAt(error, index) is '\0' or '\n' ? index : index + 1);

    /// <summary>From a place to the end of its line.</summary>
    private static Span Rest(SyntaxError error, int index)
    {
        var (line, column) = error.Source.At(index);
        var end = error.Source.Line(line).TrimEnd(' ').Length + 1;
        return new Span(error.Source.File, line, column, line, Math.Max(end, column));
    }

    private static Span LineOf(SyntaxError error, int index) =>
        Lead(error.Source, error.Source.At(index).Line);

    /// <summary>The content of a line without the blanks before and after it.</summary>
    private static Span Lead(SourceText source, int line)
    {
        var text = source.Line(line);
        var start = IndentOf(source, line);
        return new Span(
            source.File,
            line,
            start + 1,
            line,
            Math.Max(text.TrimEnd(' ').Length, start) + 1
        );
    }

    private static int IndentOf(SourceText source, int line)
    {
        var text = source.Line(line);
        return text.Length - text.TrimStart(' ').Length;
    }

    /// <summary>The indentation of what stands behind the dashes of a line.</summary>
    private static int ContentIndentOf(SourceText source, int line)
    {
        var text = source.Line(line).AsSpan();
        var at = IndentOf(source, line);
        while (text[at..].StartsWith("- "))
        {
            at += text[at..].Length - text[(at + 1)..].TrimStart(' ').Length;
        }

        return at;
    }

    /// <summary>The nearest line above that is neither empty nor a comment.</summary>
    private static int LineAbove(SourceText source, int line)
    {
        do
        {
            line--;
        } while (line > 1 && source.Line(line).AsSpan().Trim(' ') is [] or ['#', ..]);

        return Math.Max(line, 1);
    }
}
