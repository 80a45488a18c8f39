using System.Collections.Immutable;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Rules;
using PatternPress.Quilting.Tables;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;
using PatternPress.Source.Syntax;

namespace PatternPress.Booklet.Words;

/// <summary>Checks the designer's texts without setting them, and words what is wrong with them.</summary>
public static class ProseCheck
{
    /// <summary>
    /// Everything wrong with the pattern's texts: figures, pictures, links, places of notes. Costs next to nothing
    /// where no text quotes a figure or links: neither the template language nor Markdown is even loaded.
    /// </summary>
    /// <param name="sections">Names of the sections that a text may point to and notes may stand in.</param>
    public static ImmutableArray<Diagnostic> Check(
        Pattern pattern,
        PrintedTables tables,
        SyntaxTree? source,
        IEnumerable<string> sections
    )
    {
        ImmutableArray<string> names = [.. sections];
        var found = new DiagnosticList();
        Lazy<WordData> data = new(() =>
            PatternWords.Of(
                tables,
                new NumberWords(tables.Unit, new Labels(ImmutableDictionary<string, string>.Empty)),
                names
            )
        );
        foreach (Sourced<string> text in TextsOf(pattern))
        {
            bool quotes = text.Value.Contains("{{", StringComparison.Ordinal);
            bool links = text.Value.AsSpan().IndexOfAny("[<>") >= 0 || MayNest(text.Value);
            if (!quotes && !links && text.Value.Length <= WordTemplate.LongestText)
            {
                continue;
            }
            Prose prose = ProseOf(text, source);
            string markdown = text.Value;
            if (quotes || text.Value.Length > WordTemplate.LongestText)
            {
                markdown = prose.Render(data.Value, out ImmutableArray<TemplateFault> faults);
                found.AddRange(faults.Select(f => Explain(f, prose)));
            }
            if (links && markdown.Length > 0)
            {
                found.AddRange(MarkdownFaults(markdown).Select(f => Explain(f, prose)));
            }
        }
        found.AddRange(Notes(pattern, tables, names));
        return found.ToImmutable();
    }

    /// <summary>The places where notes of a pattern may stand.</summary>
    public static ImmutableArray<string> PlacesOf(
        PrintedTables tables,
        IEnumerable<string> sections
    ) =>
        [
            .. sections.SelectMany(s => new[] { s, $"{s}-end" }),
            .. tables.Sizes.Select(s => $"size-{s.Key}"),
            .. tables
                .Blocks.Where(b => b.Block is not null)
                .Select(b => $"block-{b.Block}")
                .Distinct(),
            .. tables.Units.Select(u => $"unit-{u.Number}"),
            .. tables.Borders.Select(b => $"border-{b.Number}"),
        ];

    private static IEnumerable<Diagnostic> Notes(
        Pattern pattern,
        PrintedTables tables,
        ImmutableArray<string> sections
    )
    {
        if (pattern.Info.Notes.IsEmpty)
        {
            yield break;
        }
        ImmutableArray<string> places = PlacesOf(tables, sections);
        foreach (
            (string place, Sourced<string> note) in pattern.Info.Notes.OrderBy(
                n => n.Key,
                StringComparer.Ordinal
            )
        )
        {
            if (!places.Contains(place, StringComparer.Ordinal))
            {
                yield return PP0451_NoteWithoutPlace.Found(note.Span, place, places);
            }
        }
    }

    /// <summary>Lists and quotes in each other need many marks at the start of one line.</summary>
    private static bool MayNest(string text) =>
        text.Contains("- - -", StringComparison.Ordinal)
        || text.Contains("* * *", StringComparison.Ordinal);

    // A method of its own, so that texts without links do not load the Markdown parser.
    private static ImmutableArray<MarkdownFault> MarkdownFaults(string text)
    {
        MarkdownBlocks.Read(text, MarkdownSetting.ForChecking, out var faults);
        return faults;
    }

    /// <summary>Every text of a designer that is set as Markdown, in the order of the booklet.</summary>
    public static IEnumerable<Sourced<string>> TextsOf(Pattern pattern)
    {
        if (pattern.Info.About is { } about)
        {
            yield return about;
        }
        foreach (
            (_, Sourced<string> note) in pattern.Info.Notes.OrderBy(
                n => n.Key,
                StringComparer.Ordinal
            )
        )
        {
            yield return note;
        }
        foreach (BlockDesign block in pattern.Blocks)
        {
            if (block.Notes is { Length: > 0 } text)
            {
                yield return new Sourced<string>(text, block.Span);
            }
        }
    }

    /// <summary>A text with the places of its characters in the file.</summary>
    public static Prose ProseOf(Sourced<string> text, SyntaxTree? source)
    {
        ScalarNode? node = source is null ? null : Find(source.Root, text);
        return new Prose(
            text.Value,
            node is null ? (_, _) => text.Span : (offset, length) => node.SpanOf(offset, length)
        );
    }

    /// <summary>Words what is wrong with a quoted figure.</summary>
    public static Diagnostic Explain(TemplateFault fault, Prose prose)
    {
        Span span = prose.SpanOf(fault.Offset, fault.Length);
        WordProblem problem = fault.Problem;
        return problem.Kind switch
        {
            WordProblemKind.UnknownName => PP0442_UnknownFigure.Found(
                span,
                problem.Name,
                problem.Known
            ),
            WordProblemKind.UnknownFabric => PP0443_UnknownFabricQuoted.Found(
                span,
                problem.Name,
                problem.Known
            ),
            WordProblemKind.UnknownSize => PP0444_UnknownSizeQuoted.Found(
                span,
                problem.Name,
                problem.Known
            ),
            WordProblemKind.UnknownThing => PP0445_UnknownThingQuoted.Found(
                span,
                problem.Name,
                problem.Known
            ),
            WordProblemKind.WrongValues => PP0446_WrongValuesQuoted.Found(span, problem.Name),
            WordProblemKind.NotAllowed => PP0447_ProgramInText.Found(span, problem.Name),
            WordProblemKind.TooMuch => PP0448_OverlongText.Found(span, problem.Name),
            _ => PP0441_UnreadableFigure.Found(span, problem.Name),
        };
    }

    /// <summary>Words what is wrong with the Markdown.</summary>
    public static Diagnostic Explain(MarkdownFault fault, Prose prose)
    {
        int at =
            fault.Text.Length == 0 ? -1 : prose.Text.IndexOf(fault.Text, StringComparison.Ordinal);
        Span span =
            at < 0 ? prose.SpanOf(0, prose.Text.Length) : prose.SpanOf(at, fault.Text.Length);
        return fault.Kind switch
        {
            MarkdownFaultKind.UnsafeLink => PP0450_UnsafeLink.Found(span, fault.Text),
            MarkdownFaultKind.TooDeep => PP0448_OverlongText.Found(
                span,
                "quotes and lists inside each other"
            ),
            _ => PP0449_PictureInText.Found(span, fault.Text),
        };
    }

    private static ScalarNode? Find(Node root, Sourced<string> text)
    {
        var waiting = new Stack<Node>([root]);
        while (waiting.TryPop(out Node? node))
        {
            switch (node)
            {
                case ScalarNode scalar when scalar.Span == text.Span && scalar.Value == text.Value:
                    return scalar;
                case MapNode map:
                    foreach (Entry entry in map.Entries)
                    {
                        waiting.Push(entry.Value);
                    }
                    break;
                case ListNode list:
                    foreach (Node item in list.Items)
                    {
                        waiting.Push(item);
                    }
                    break;
            }
        }
        return null;
    }
}
