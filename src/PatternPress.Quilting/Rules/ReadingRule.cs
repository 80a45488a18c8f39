using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>
/// A rule whose fault shows while the source is read or resolved. The reader meets the fault and asks the rule's
/// static factory for the words.
/// </summary>
public abstract class ReadingRule : Rule
{
    private protected ReadingRule(string code, Severity severity, string title)
        : base(code, severity, title) { }
}
