using PatternPress.Quilting.Cutting;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A method makes many more units than the size needs.</summary>
public sealed class PP0309_LeftoverUnits : CheckingRule
{
    // A batch of four or eight always leaves a few. More than three, and more than a quarter of the need, is worth a
    // word (our own limits).
    private const int Few = 3;
    private const int Share = 4;

    public PP0309_LeftoverUnits()
        : base("PP0309", Severity.Note, "Many leftover units") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        // With something left out, the rest says nothing about the whole.
        if (context.Making.Problems.Length > 0)
        {
            yield break;
        }
        foreach (SizeMaking size in context.Making.Sizes)
        {
            foreach (UnitBatch batch in size.Units)
            {
                if (batch.Extra > Few && batch.Extra * Share > batch.Needed)
                {
                    yield return FindIn(
                        size.Key,
                        Wording.SpanOf(context.Pattern, batch.Class),
                        $"unit {batch.Class.Label} leaves many units over",
                        $"{batch.Shape.Kind.Name}, {batch.Shape.Technique.Keyword}",
                        $"{batch.Needed} needed, {batch.Made} made, {batch.Extra} left over",
                        hint: "name a method that makes fewer at a time under methods, or tell makers what to do with the rest"
                    );
                }
            }
        }
    }
}
