using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>
/// One thing that can be wrong with a pattern. Lives in a file of its own, named by code and fault; a page of the
/// same name beside it explains it to a designer.
/// </summary>
public abstract class Rule
{
    /// <param name="code">"PP" and four digits; never reused.</param>
    /// <param name="severity">The severity of its findings unless one says otherwise.</param>
    /// <param name="title">The fault in a few words, the heading of its page: "Unknown part".</param>
    private protected Rule(string code, Severity severity, string title)
    {
        Code = code;
        Severity = severity;
        Title = title;
    }

    public string Code { get; }

    public Severity Severity { get; }

    public string Title { get; }

    /// <summary>Code and fault as the files are named: "PP0208_UnknownPart".</summary>
    public string Name => GetType().Name;

    /// <summary>Fills in a finding of this rule.</summary>
    /// <param name="span">The place to look at.</param>
    /// <param name="title">One phrase that stands alone: lower case, no full stop.</param>
    /// <param name="label">What is wrong there.</param>
    /// <param name="text">The numbers and facts.</param>
    /// <param name="hint">What to do: an order when certain, a question when not.</param>
    private protected Diagnostic Report(
        Span span,
        string title,
        string label,
        string text = "",
        string? hint = null,
        params ReadOnlySpan<Label> others
    ) =>
        new(
            Code,
            Severity,
            Clipped(title),
            new Label(span, label),
            [.. others],
            Clipped(text),
            hint is null ? null : Clipped(hint),
            []
        );

    // A file may have a word of a hundred thousand letters, and nobody reads them twice.
    private static string Clipped(string text)
    {
        const int longest = 600,
            end = 60;
        return text.Length <= longest ? text : $"{text[..(longest - end)]} … {text[^end..]}";
    }
}
