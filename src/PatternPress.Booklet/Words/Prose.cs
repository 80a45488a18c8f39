using System.Collections.Immutable;
using PatternPress.Source;

namespace PatternPress.Booklet.Words;

/// <summary>
/// Markdown written by a pattern's designer, with the places of its characters in the source file.
/// </summary>
/// <param name="Text">What was written, indentation and escapes taken out.</param>
/// <param name="SpanOf">The place in the file of a part of the text, given as offset and length.</param>
public sealed record Prose(string Text, Func<int, int, Span> SpanOf)
{
    /// <summary>Fills in the figures it quotes.</summary>
    /// <param name="data">Names and functions; the same that are listed where one is mistyped.</param>
    /// <param name="faults">Empty if all was well; else nothing of the text should be printed.</param>
    public string Render(WordData data, out ImmutableArray<TemplateFault> faults)
    {
        if (QuotedFigures.TryRender(Text, data, out string? simple, out faults))
        {
            return faults.IsEmpty ? simple : "";
        }
        return RenderAny(data, out faults);
    }

    // A method of its own, so that the usual text does not load the template language.
    private string RenderAny(WordData data, out ImmutableArray<TemplateFault> faults)
    {
        WordTemplate template = WordTemplate.Parse(Text);
        faults = Plainly(template.Faults);
        if (!faults.IsEmpty || !Text.Contains("{{", StringComparison.Ordinal))
        {
            return faults.IsEmpty ? Text : "";
        }
        // The template language takes the end of the text for the end of a figure.
        int open = Text.LastIndexOf("{{", StringComparison.Ordinal);
        if (Text.IndexOf("}}", open, StringComparison.Ordinal) < 0)
        {
            faults =
            [
                new(
                    open,
                    Text.Length - open,
                    new(WordProblemKind.Unreadable, "The }} behind it is missing.", [])
                ),
            ];
            return "";
        }
        faults = [.. ProseGate.Check(template.Page!, data)];
        if (!faults.IsEmpty)
        {
            return "";
        }
        string text = template.Render(data, out faults);
        return faults.IsEmpty ? text : "";
    }

    /// <summary>
    /// Of what cannot be read, the first fault: the others follow from it. In words for a designer, at the figure as a
    /// whole rather than at the sign where the reading ended.
    /// </summary>
    private ImmutableArray<TemplateFault> Plainly(ImmutableArray<TemplateFault> faults)
    {
        TemplateFault? first = faults.FirstOrDefault(f =>
            f.Problem.Kind == WordProblemKind.Unreadable
        );
        if (first is null)
        {
            return faults;
        }
        int open = Text.LastIndexOf(
            "{{",
            Math.Clamp(first.Offset, 0, Text.Length - 1),
            StringComparison.Ordinal
        );
        if (open < 0)
        {
            return [first];
        }
        int close = Text.IndexOf("}}", open, StringComparison.Ordinal);
        int end = close < 0 ? Text.Length : close + 2;
        string figure = Text[open..end];
        string remark =
            figure.Count(c => c == '"') % 2 == 1 ? "A quotation mark is missing."
            : close < 0 ? "The }} behind it is missing."
            : first.Problem.Name;
        return [new(open, figure.TrimEnd().Length, new(WordProblemKind.Unreadable, remark, []))];
    }
}
