using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A method is unknown, or makes another kind of unit.</summary>
public sealed class PP0222_UnsuitableMethod : ReadingRule
{
    public static PP0222_UnsuitableMethod Instance { get; } = new();

    private PP0222_UnsuitableMethod()
        : base("PP0222", Severity.Error, "Method that does not suit the unit") { }

    /// <param name="unit">What it should make: "half-square", "lamp.G".</param>
    /// <param name="known">Keywords of the methods that could make it.</param>
    public static Diagnostic Unknown(
        Span span,
        string method,
        string unit,
        IEnumerable<string> known
    ) =>
        Instance.Report(
            span,
            $"\"{method}\" is not a method of making \"{unit}\"",
            "no such method",
            hint: Wording.DidYouMean(method, known, "methods")
        );

    /// <summary>A method named for no unit in particular.</summary>
    /// <param name="known">Keywords of all methods.</param>
    public static Diagnostic Unknown(Span span, string method, IEnumerable<string> known) =>
        Instance.Report(
            span,
            $"there is no method \"{method}\"",
            "no such method",
            hint: Wording.DidYouMean(method, known, "methods")
        );

    /// <param name="unit">What it should make: "half-square", "lamp.G".</param>
    /// <param name="kind">The keyword of the kind it does make.</param>
    /// <param name="suitable">Keywords of the methods that could make the unit.</param>
    public static Diagnostic MakesAnotherKind(
        Span span,
        string method,
        string unit,
        string kind,
        IEnumerable<string> suitable
    ) =>
        Instance.Report(
            span,
            $"method \"{method}\" cannot make \"{unit}\"",
            $"it makes \"{kind}\"",
            hint: $"the methods for \"{unit}\" are {Wording.Names(suitable)}"
        );

    /// <summary>The key is neither a kind of unit nor a block and letter.</summary>
    public static Diagnostic UnknownUnit(Span span, string unit, IEnumerable<string> known) =>
        Instance.Report(
            span,
            $"methods name \"{unit}\", which is neither a kind of unit nor a block and a letter",
            "no such unit",
            hint: Wording.DidYouMean(unit, known, "units")
        );
}
