using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A rule that looks at the computed result, once for the pattern or once for every size.</summary>
public abstract class CheckingRule : Rule
{
    private protected CheckingRule(string code, Severity severity, string title)
        : base(code, severity, title) { }

    /// <summary>Whether it looks at how the quilt is made and not at the drawing alone: those rules run last.</summary>
    public virtual bool NeedsMaking => Code.StartsWith("PP03", StringComparison.Ordinal);

    /// <summary>Every fault of this kind in the pattern. Findings in several sizes come one by one.</summary>
    public abstract IEnumerable<Finding> Check(RuleContext context);

    /// <summary>A finding that concerns no size in particular.</summary>
    private protected Finding Find(
        Span span,
        string title,
        string label,
        string text = "",
        string? hint = null,
        params ReadOnlySpan<Label> others
    ) => new(Report(span, title, label, text, hint, others), null, "");

    /// <summary>A finding in one size.</summary>
    /// <param name="size">The size's key.</param>
    /// <param name="numbers">The numbers at that size; everything else is worded alike for all sizes.</param>
    private protected Finding FindIn(
        string size,
        Span span,
        string title,
        string label,
        string numbers,
        string text = "",
        string? hint = null,
        params ReadOnlySpan<Label> others
    ) => new(Report(span, title, label, text, hint, others), size, numbers);
}
