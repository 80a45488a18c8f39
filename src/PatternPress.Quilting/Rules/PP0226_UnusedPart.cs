using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A block lists a part that none of its units uses.</summary>
public sealed class PP0226_UnusedPart : ReadingRule
{
    public static PP0226_UnusedPart Instance { get; } = new();

    private PP0226_UnusedPart()
        : base("PP0226", Severity.Warning, "Part that no unit uses") { }

    public static Diagnostic Found(Span part, string name, string block) =>
        Instance.Report(
            part,
            $"no unit of block \"{block}\" uses part \"{name}\"",
            "listed but never used",
            hint: $"delete \"{name}\" here and in the colorings, or was it meant in a unit?"
        );
}
