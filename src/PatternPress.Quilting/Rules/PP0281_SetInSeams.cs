using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Techniques;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A unit is made with pieces set into angles (Y seams). A warning where the pattern is for beginners.</summary>
public sealed class PP0281_SetInSeams : CheckingRule
{
    public PP0281_SetInSeams()
        : base("PP0281", Severity.Note, "Seams set into angles") { }

    public override bool NeedsMaking => true;

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        foreach (SizeMaking size in context.Making.Sizes)
        {
            foreach (UnitShape shape in size.Units.Select(u => u.Shape).Distinct())
            {
                Technique technique = shape.Technique;
                if (!technique.HasSetInSeams)
                {
                    continue;
                }
                long units = size.Units.Where(u => u.Shape == shape).Sum(u => u.Needed);
                Finding found = FindIn(
                    size.Key,
                    Wording.SpanOf(context.Pattern, shape.Classes[0]),
                    $"unit \"{shape.Classes[0].Uses[0].Letter}\" is sewn with seams set into angles",
                    $"made by {technique.Keyword}",
                    Wording.Count(units, "unit", "units"),
                    "A seam set into an angle ends before the edge and turns there; it takes more practice than a straight one.",
                    technique.WithoutSetInSeams ?? "see that the skill level says so"
                );
                yield return IsForBeginners(context)
                    ? found with
                    {
                        Diagnostic = found.Diagnostic with { Severity = Severity.Warning },
                    }
                    : found;
            }
        }
    }

    /// <summary>Whether the pattern's skill level speaks of beginners.</summary>
    internal static bool IsForBeginners(RuleContext context) =>
        context.Pattern.Info.Skill is { } skill
        && skill.Contains("beginner", StringComparison.OrdinalIgnoreCase)
        && !skill.Contains("confident", StringComparison.OrdinalIgnoreCase);
}
