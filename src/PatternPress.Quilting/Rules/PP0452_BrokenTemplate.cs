using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A text among the house's templates cannot be read or filled in.</summary>
public sealed class PP0452_BrokenTemplate : ReadingRule
{
    public static PP0452_BrokenTemplate Instance { get; } = new();

    private PP0452_BrokenTemplate()
        : base("PP0452", Severity.Error, "Broken template") { }

    /// <param name="remark">What is wrong, in words.</param>
    public static Diagnostic Found(Span span, string remark) =>
        Instance.Report(
            span,
            "a text among the templates cannot be filled in",
            "this does not work",
            remark,
            "compare with the list of names in templates/README.md"
        );
}
