using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>The pattern has no introduction.</summary>
public sealed class PP0403_MissingIntroduction : CheckingRule
{
    public PP0403_MissingIntroduction()
        : base("PP0403", Severity.Note, "No introduction") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        if (string.IsNullOrWhiteSpace(context.Pattern.Info.About?.Value))
        {
            yield return Find(
                context.Pattern.Info.Title.Span,
                "the pattern has no introduction",
                "the title",
                hint: "say in a few lines under about what the quilt is and whom it suits"
            );
        }
    }
}
