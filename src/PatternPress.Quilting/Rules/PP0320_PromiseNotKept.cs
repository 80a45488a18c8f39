using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Model;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>The pattern promises that a fabric can be cut from fat quarters or the like, and a piece of it is larger.</summary>
public sealed class PP0320_PromiseNotKept : CheckingRule
{
    public PP0320_PromiseNotKept()
        : base("PP0320", Severity.Error, "Promise not kept") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        if (context.Pattern.Suits is not { } promise)
        {
            yield break;
        }
        foreach (SizeMaking size in context.Making.Sizes)
        {
            foreach (PieceProblem problem in size.SubstituteProblems)
            {
                Cut cut = problem.Cut;
                CutPlace place = CutPlace.Of(context, cut, size.Key);
                yield return FindIn(
                    size.Key,
                    promise.Span,
                    $"{place.Name} of fabric \"{cut.Fabric}\" does not come out of a {promise.Panel.One}",
                    "promised here",
                    problem.Panel is { } panel
                        ? $"{Wording.Measure(cut.Width, cut.Height)} needed, {Wording.Measure(panel.Width, panel.Height)} usable: {Wording.Measure(problem.By)} missing"
                        : $"{cut.Count} pieces are more than are computed with",
                    hint: cut.WholeStrip
                        ? "promise it only of the fabrics that are cut into smaller pieces (fabrics, under suits), or name a way of sewing without strips of the whole width (methods)"
                        : "promise it only of the fabrics that are cut into smaller pieces (fabrics, under suits), or make the piece smaller",
                    others: Others(place, promise)
                );
            }
        }
    }

    private static Label[] Others(CutPlace place, Promise promise) =>
        place.Span == Span.None || place.Span == promise.Span
            ? []
            : [new Label(place.Span, "this piece")];
}
