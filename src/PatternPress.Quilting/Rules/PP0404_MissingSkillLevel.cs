using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>The pattern does not say for whom it is.</summary>
public sealed class PP0404_MissingSkillLevel : CheckingRule
{
    public PP0404_MissingSkillLevel()
        : base("PP0404", Severity.Note, "No skill level") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        if (string.IsNullOrWhiteSpace(context.Pattern.Info.Skill))
        {
            yield return Find(
                context.Pattern.Info.Title.Span,
                "the pattern names no skill level",
                "the title",
                hint: "add one under pattern, such as skill: confident beginner"
            );
        }
    }
}
