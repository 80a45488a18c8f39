using System.Collections.Immutable;

namespace PatternPress.Source.Diagnostics;

/// <summary>
/// One finding as plain data: what is wrong, where, the numbers, which sizes, what to do. How it is shown (terminal,
/// JSON and so on) is decided elsewhere.
/// </summary>
/// <param name="Code">"PP" and four digits; never reused. PP01 reading, PP02 quilt arithmetic, PP03 cutting, PP04 words
/// and figures, PP05 page layout, PP06 editions, PP09 internal.</param>
/// <param name="Title">One phrase that still makes sense if nothing else is shown. Lower case, no full stop.</param>
/// <param name="Primary">The place to look at, with what is wrong there.</param>
/// <param name="Others">Further places that explain the first.</param>
/// <param name="Text">The numbers and facts; empty if the title says it all.</param>
/// <param name="Hint">What to do: an order when certain, a question when not.</param>
/// <param name="Sizes">The quilt sizes it holds for; empty means all or none in particular.</param>
public sealed record Diagnostic(
    string Code,
    Severity Severity,
    string Title,
    Label Primary,
    ImmutableArray<Label> Others,
    string Text,
    string? Hint,
    ImmutableArray<string> Sizes
)
{
    /// <summary>An error at one place, for all sizes.</summary>
    public static Diagnostic Error(
        string code,
        string title,
        Span span,
        string label,
        string text = "",
        string? hint = null
    ) => new(code, Severity.Error, title, new Label(span, label), [], text, hint, []);

    /// <summary>A warning at one place, for all sizes.</summary>
    public static Diagnostic Warning(
        string code,
        string title,
        Span span,
        string label,
        string text = "",
        string? hint = null
    ) => new(code, Severity.Warning, title, new Label(span, label), [], text, hint, []);

    /// <summary>The same finding with a further place.</summary>
    public Diagnostic With(Span span, string label) =>
        this with
        {
            Others = Others.Add(new Label(span, label)),
        };
}
