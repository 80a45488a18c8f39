using System.Collections.Immutable;
using PatternPress.Source;
using Scriban;
using Scriban.Parsing;
using Scriban.Syntax;

namespace PatternPress.Booklet.Words;

/// <summary>
/// A piece of text with computed figures in it, read once and filled in as often as wanted, from several threads at
/// once. What is filled in is Markdown.
/// </summary>
public sealed class WordTemplate
{
    /// <summary>Characters of one template. The longest honest one has some thousands.</summary>
    public const int LongestText = 64 * 1024;

    private static readonly ParserOptions Limits = new() { ExpressionDepthLimit = 60 };

    private readonly Template? parsed;
    private readonly string text;

    private WordTemplate(string text, Template? parsed, ImmutableArray<TemplateFault> faults)
    {
        this.text = text;
        this.parsed = parsed;
        Faults = faults;
    }

    /// <summary>What is wrong with the template itself; it cannot be filled in while there is any.</summary>
    public ImmutableArray<TemplateFault> Faults { get; }

    /// <summary>Whether there is anything to fill in; plain text never wakes the template language.</summary>
    public bool HasFigures => parsed is not null;

    /// <summary>The template as the template language read it; null for plain text.</summary>
    internal ScriptPage? Page => parsed?.Page;

    /// <summary>Reads a template. Text without <c>{{</c> never wakes the template language.</summary>
    public static WordTemplate Parse(string text)
    {
        if (text.Length > LongestText)
        {
            return new(
                "",
                null,
                [
                    new(
                        0,
                        0,
                        new(WordProblemKind.TooMuch, $"longer than {LongestText} characters", [])
                    ),
                ]
            );
        }
        return text.Contains("{{", StringComparison.Ordinal)
            ? ParseCode(text)
            : new(text, null, []);
    }

    /// <summary>Fills in the data.</summary>
    /// <param name="faults">Names the data lacks, limits reached; with any the text returned is incomplete.</param>
    public string Render(WordData data, out ImmutableArray<TemplateFault> faults)
    {
        faults = Faults;
        if (parsed is null || !Faults.IsEmpty)
        {
            return text;
        }
        return Fill(data, out faults);
    }

    // Methods of their own, so that plain text does not load the template language.
    private static WordTemplate ParseCode(string text)
    {
        Template template = Template.Parse(text, "template", Limits);
        return new(
            text,
            template,
            [
                .. template
                    .Messages.Where(m => m.Type == ParserMessageType.Error)
                    .Select(m => new TemplateFault(
                        Math.Clamp(m.Span.Start.Offset, 0, text.Length),
                        Math.Max(1, m.Span.Length),
                        new(
                            m.Message.Contains("depth limit", StringComparison.Ordinal)
                                ? WordProblemKind.TooMuch
                                : WordProblemKind.Unreadable,
                            m.Message,
                            []
                        )
                    )),
            ]
        );
    }

    private string Fill(WordData data, out ImmutableArray<TemplateFault> faults)
    {
        var context = new WordsContext(data);
        var found = ImmutableArray.CreateBuilder<TemplateFault>();
        string result = "";
        try
        {
            result = parsed!.Render(context);
        }
        catch (ScriptRuntimeException fault)
        {
            found.Add(
                new(
                    Math.Clamp(fault.Span.Start.Offset, 0, text.Length),
                    Math.Max(1, fault.Span.Length),
                    Explain(fault.OriginalMessage, data)
                )
            );
        }
        catch (NotSupportedException fault)
        {
            // Writing to a list of the data.
            found.Add(
                new(0, Math.Min(1, text.Length), new(WordProblemKind.NotAllowed, fault.Message, []))
            );
        }
        found.AddRange(
            context.Problems.Select(p => new TemplateFault(
                Math.Clamp(p.Span.Start.Offset, 0, text.Length),
                Math.Max(1, p.Span.Length),
                p.Problem
            ))
        );
        faults = found.ToImmutable();
        return result;
    }

    private static WordProblem Explain(string message, WordData data)
    {
        int quote = message.IndexOf('`');
        int close = quote < 0 ? -1 : message.IndexOf('`', quote + 1);
        return message.Contains("not found", StringComparison.Ordinal) && close > quote
                ? new(WordProblemKind.UnknownName, message[(quote + 1)..close], [.. data.Names])
            : message.Contains("limit", StringComparison.OrdinalIgnoreCase)
            || message.Contains("more than", StringComparison.Ordinal)
            || message.Contains("exceed", StringComparison.OrdinalIgnoreCase)
                ? new(WordProblemKind.TooMuch, message, [])
            : message.Contains("argument", StringComparison.OrdinalIgnoreCase)
                ? new(WordProblemKind.WrongValues, message, [])
            : new(WordProblemKind.Unreadable, message, []);
    }
}

/// <summary>A fault of a template and where in its text it stands.</summary>
/// <param name="Offset">Index of the first character to blame.</param>
/// <param name="Length">Characters to blame, at least 1.</param>
public sealed record TemplateFault(int Offset, int Length, WordProblem Problem)
{
    /// <summary>The fault as a place in a text that is a file of its own.</summary>
    public Span SpanIn(SourceText source) => source.SpanOf(Offset, Offset + Length);
}
