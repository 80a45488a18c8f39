using PatternPress.Quilting.Model;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A size is named for an infant: its booklet must carry the safe-sleep caution.</summary>
public sealed class PP0407_InfantSize : CheckingRule
{
    private static readonly string[] _words =
    [
        "crib",
        "cot",
        "cradle",
        "baby",
        "infant",
        "newborn",
        "bassinet",
    ];

    public PP0407_InfantSize()
        : base("PP0407", Severity.Note, "Size for an infant") { }

    /// <summary>Whether the size's name says that it is for an infant. The booklet asks the same question.</summary>
    public static bool IsForInfants(string key, string name) =>
        _words.Any(word => Words(key).Contains(word) || Words(name).Contains(word));

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        foreach (SizeDesign size in context.Pattern.Sizes.Where(s => IsForInfants(s.Key, s.Name)))
        {
            yield return Find(
                size.Span,
                $"size \"{size.Key}\" is named for an infant, so the booklet carries the safe-sleep caution",
                "an infant's size",
                "No quilt belongs in the place where an infant under twelve months sleeps (US Consumer Product Safety Commission; American Academy of Pediatrics 2022).",
                "keep the caution, and let nothing in your own words suggest otherwise"
            );
        }
    }

    private static string[] Words(string name) =>
        name.ToLowerInvariant().Split([' ', '-', '_', '/'], StringSplitOptions.RemoveEmptyEntries);
}
