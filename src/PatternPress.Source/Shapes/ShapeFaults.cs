using System.Collections.Immutable;
using System.Text;
using PatternPress.Source.Diagnostics;
using PatternPress.Source.Syntax;

namespace PatternPress.Source.Shapes;

/// <summary>The words of every finding about a tree that has not the shape it should: codes PP0130 to PP0139.</summary>
internal static class ShapeFaults
{
    public static Diagnostic UnknownKey(
        ScalarNode key,
        MapShape shape,
        string subject,
        string? hint
    ) =>
        Diagnostic.Error(
            "PP0130",
            $"`{Excerpt.Of(key.Value)}` is no key of {shape.What}",
            key.Span,
            "unknown key",
            $"{Capital(subject)} may have {List([.. shape.Names], "and")}.",
            hint
        );

    /// <summary>A line below a key without a value that should have been indented.</summary>
    public static Diagnostic NotIndented(ScalarNode key, ScalarNode above, MapShape shape) =>
        Diagnostic
            .Error(
                "PP0130",
                $"`{Excerpt.Of(key.Value)}` is no key of {shape.What}",
                key.Span,
                "not indented",
                $"What belongs to `{above.Value}` stands on the lines below it, indented further.",
                $"indent this line, and those like it below, by {above.Span.StartColumn + 1} blanks"
            )
            .With(above.Span, "has no value so far");

    public static Diagnostic MissingKey(Span owner, Key key, string subject) =>
        Diagnostic.Error(
            "PP0131",
            $"{subject} has no `{key.Name}`",
            owner,
            $"`{key.Name}` is missing here",
            key.Value.Description,
            key.Value.Examples is [var example, ..] && !example.Contains('\n')
                ? $"add `{key.Name}: {AsYaml(example)}`"
                : $"add `{key.Name}:`"
        );

    public static Diagnostic OneMissing(Span owner, MapShape shape, string subject) =>
        Diagnostic.Error(
            "PP0131",
            $"{subject} says nothing of how",
            owner,
            "one key is missing here",
            $"Exactly one of {List(shape.ExactlyOneOf, "or")} is needed."
        );

    public static Diagnostic OneTooMany(ScalarNode second, ScalarNode first, MapShape shape) =>
        Diagnostic
            .Error(
                "PP0132",
                $"`{first.Value}` and `{second.Value}` exclude each other",
                second.Span,
                "this one or the other",
                $"Exactly one of {List(shape.ExactlyOneOf, "or")} is needed.",
                "keep one of the two"
            )
            .With(first.Span, "the other");

    public static Diagnostic NoValue(ScalarNode empty, Shape shape, string? key, Span owner) =>
        Diagnostic.Error(
            "PP0133",
            key is null ? $"expected {Expected(shape)}, found nothing" : $"`{key}` has no value",
            empty.Span.StartColumn == empty.Span.EndColumn ? owner : empty.Span,
            $"expected {Expected(shape)}",
            shape.Description,
            CommentFollows(empty)
                ? "a # after a blank begins a comment: put the value in quotation marks"
                : null
        );

    public static Diagnostic WrongKind(Node node, Shape shape, string? key) =>
        Diagnostic.Error(
            "PP0134",
            $"expected {Expected(shape)}, found {Found(node)}",
            FirstLine(node),
            key is null ? $"this is {Found(node)}" : $"`{key}` is {Expected(shape)}",
            shape.Description,
            KindHint(node, shape, key)
        );

    public static Diagnostic WrongForm(ScalarNode found, TextShape shape) =>
        Diagnostic.Error(
            "PP0135",
            $"`{Excerpt.Of(found.Value)}` is not {shape.What}",
            FirstLine(found),
            $"expected {Expected(shape)}",
            shape.Description,
            FormHint(found.Value.Trim(), shape)
        );

    /// <summary>The value as it was probably meant, or a good one.</summary>
    private static string? FormHint(string value, TextShape shape)
    {
        var bare = value.Trim('\u201C', '\u201D', '\u201E', '\u2018', '\u2019', '\u00AB', '\u00BB');
        if (bare.Length < value.Length && shape.Form!.Matches(bare))
        {
            return $"use straight quotation marks: \"{bare}\"";
        }

        foreach (var meant in new[] { $"#{value}", $"{value}.0", $"{value}.0.0" })
        {
            if (shape.Form!.Matches(meant))
            {
                return $"did you mean {AsYaml(meant)}?";
            }
        }

        return InLine(shape) is { } example ? $"write it like this: {example}" : null;
    }

    /// <summary>The lines of a drawing that is not begun with |.</summary>
    public static Diagnostic RowsRunTogether(ScalarNode found, TextShape shape, string? key) =>
        Diagnostic.Error(
            "PP0139",
            $"the rows of {key ?? shape.What} run together into one",
            FirstLine(found),
            $"{found.Span.EndLine - found.Span.StartLine + 1} lines, read as one",
            "Lines count only in a text that begins with | and is indented below it.",
            $"write {key ?? "the key"}: | and the rows on the lines below it, indented"
        );

    /// <summary>The remark that cuts off a text written without quotation marks; null without one.</summary>
    /// <remarks>A remark whose # is followed by a blank is meant as one.</remarks>
    public static Span? RemarkIn(ScalarNode text)
    {
        if (text.Style != ScalarStyle.Plain)
        {
            return null;
        }

        var line = text.Source.Line(text.Span.EndLine).AsSpan();
        var from = Math.Min(text.Span.EndColumn - 1, line.Length);
        var rest = line[from..];
        var sign = rest.IndexOf('#');
        return
            sign > 0
            && rest[..sign].Trim(' ').IsEmpty
            && sign + 1 < rest.Length
            && rest[sign + 1] is not (' ' or '#')
            ? text.Span with
            {
                StartLine = text.Span.EndLine,
                StartColumn = from + sign + 1,
                EndColumn = line.TrimEnd(' ').Length + 1,
            }
            : null;
    }

    public static Diagnostic RemarkInText(
        ScalarNode found,
        Span remark,
        TextShape shape,
        string? key
    ) =>
        Diagnostic.Warning(
            "PP0109",
            $"{shape.What} ends before a #",
            remark,
            "read as a remark and not printed",
            $"A # after a blank begins a remark. `{key ?? shape.Noun}` is read as `{Excerpt.Of(found.Value)}`.",
            "put the whole text in quotation marks; if it is a remark, put a blank after the #"
        );

    public static Diagnostic UnknownWord(ScalarNode found, ChoiceShape shape) =>
        Diagnostic.Error(
            "PP0136",
            $"`{Excerpt.Of(found.Value)}` is not {shape.What}",
            FirstLine(found),
            "unknown word",
            $"It can be {List(shape.Words, "or")}.",
            Nearest.To(found.Value, shape.Words) is { } nearest
                ? $"did you mean `{nearest}`?"
                : null
        );

    public static Diagnostic WrongName(ScalarNode key, NamesShape shape) =>
        Diagnostic.Error(
            "PP0137",
            $"`{Excerpt.Of(key.Value)}` cannot be {shape.Name.What}",
            key.Span,
            "not a name",
            shape.Name.Description
        );

    public static Diagnostic NoNames(Span span, NamesShape shape, string? key) =>
        Diagnostic.Error(
            "PP0138",
            $"{(key is null ? shape.What : $"`{key}`")} is empty",
            span,
            $"at least {shape.Value.What} is needed",
            shape.Description
        );

    /// <summary>What a shape wants, in words: "a list of borders", "a color such as "#15233b"".</summary>
    private static string Expected(Shape shape) =>
        shape switch
        {
            MapShape map => $"{map.What} with keys such as {List([.. map.Names.Take(3)], "and")}",
            NamesShape names => $"{names.What}: a name and a colon for each",
            ChoiceShape choice => $"{choice.What}: {List(choice.Words, "or")}",
            EitherShape either => Joined([.. either.Shapes.Select(Expected)], ", or "),
            { Examples: [var example, ..] } when !example.Contains('\n') =>
                $"{shape.What} such as `{AsYaml(example)}`",
            _ => shape.What,
        };

    private static string Found(Node node) =>
        node switch
        {
            MapNode => "keys with values",
            ListNode => "a list",
            ScalarNode { Style: ScalarStyle.Literal or ScalarStyle.Folded } => "a block of text",
            ScalarNode scalar => $"the text `{Excerpt.Of(scalar.Value)}`",
            _ => "something else",
        };

    private static string? KindHint(Node node, Shape shape, string? key) =>
        (node, shape) switch
        {
            (MapNode or ScalarNode, ListShape) =>
                "put a dash and a space before each item, or brackets around them: [ ... ]",
            (ScalarNode scalar, MapShape map) when map.GluedKey(scalar.Value) is { } glued =>
                $"put a space after the colon: `{glued}: ...`",
            (MapNode or ListNode, TextShape { Use: TextUse.Prose }) =>
                "a text that contains a colon or begins with { or [ needs quotation marks",
            _ when InLine(shape) is { } example =>
                $"write it like this: `{(key is null ? "- " : $"{key}: ")}{example}`",
            _ when Below(shape) is { } example && key is not null =>
                $"write `{key}:` and below it, indented: `{example}`",
            (MapNode or ListNode, TextShape { Use: TextUse.Drawing }) when key is not null =>
                $"write {key}: | and the rows on the lines below it, indented",
            _ => null,
        };

    /// <summary>A good value on the line of its key: of a text its example, of a map the keys that it needs.</summary>
    private static string? InLine(Shape shape)
    {
        switch (shape)
        {
            case { Sample: { } sample }:
                return sample;
            case { Examples: [var example, ..] }:
                return example.Contains('\n') ? null : AsYaml(example);
            case ChoiceShape { Words: [var word, ..] }:
                return word;
            case EitherShape either:
                return InLine(either.Shapes[0]);
            case MapShape map:
                var needed = map
                    .Keys.Where(key =>
                        key.Required || (map.OneOrMoreOf is [var usual, ..] && usual == key.Name)
                    )
                    .Select(key => (key.Name, Example: InLine(key.Value)))
                    .ToList();
                return
                    needed.Count is > 0 and < 5 && needed.TrueForAll(key => key.Example is not null)
                    ? $"{{{string.Join(", ", needed.Select(key => $"{key.Name}: {key.Example}"))}}}"
                    : null;
            default:
                return null;
        }
    }

    /// <summary>A good entry below its key, of a map whose names the designer chooses.</summary>
    private static string? Below(Shape shape) =>
        shape is NamesShape { Name.Examples: [var name, ..] } names
        && InLine(names.Value) is { } value
            ? $"{name}: {value}"
            : null;

    /// <summary>Whether a comment stands where the value should: <c>color: #15233b</c>.</summary>
    private static bool CommentFollows(ScalarNode empty) =>
        empty.Style == ScalarStyle.Plain
        && empty
            .Source.Line(empty.Span.StartLine)
            .AsSpan(Math.Max(empty.Span.StartColumn - 1, 0))
            .TrimStart()
            .StartsWith("#");

    /// <summary>Of a long node only the first line is underlined.</summary>
    private static Span FirstLine(Node node) =>
        node.Span.StartLine == node.Span.EndLine
            ? node.Span
            : node.Span with
            {
                EndLine = node.Span.StartLine,
                EndColumn = node.Span.StartColumn + 1,
            };

    /// <summary>A text as it would stand in the file: in quotation marks where YAML would take it for something else.</summary>
    private static string AsYaml(string text) =>
        text.Length == 0
        || "#&*!|>'\"%@`{}[]".Contains(text[0])
        || text.Contains(": ")
        || text.Contains(" #")
            ? $"\"{text}\""
            : text;

    private static string Capital(string text) =>
        text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary><c>`a`, `b` and `c`</c>.</summary>
    private static string List(IReadOnlyList<string> words, string last)
    {
        var text = new StringBuilder();
        for (var i = 0; i < words.Count; i++)
        {
            if (i > 0)
            {
                text.Append(i == words.Count - 1 ? $" {last} " : ", ");
            }

            text.Append('`').Append(words[i]).Append('`');
        }

        return text.ToString();
    }

    private static string Joined(ImmutableArray<string> parts, string separator) =>
        string.Join(separator, parts);
}
