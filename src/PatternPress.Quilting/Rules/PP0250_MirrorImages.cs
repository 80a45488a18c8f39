using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Techniques;
using PatternPress.Quilting.Techniques.Kinds;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>Half-rectangle triangles of one size lean to both sides: no turn makes one into the other.</summary>
public sealed class PP0250_MirrorImages : CheckingRule
{
    public PP0250_MirrorImages()
        : base("PP0250", Severity.Note, "Units that are mirror images") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        foreach (Quilt quilt in context.Quilts)
        {
            var first = new Dictionary<(Length, Length, string Lean), UnitRegion>();
            var told = new HashSet<(Length, Length)>();
            foreach (ColoredBlock colored in context.BlocksOf(quilt))
            {
                foreach (BlockUnit unit in colored.Block?.Units ?? [])
                {
                    UnitForm form = unit.Drawn.Form;
                    if (form.Kind.Keyword != HalfRectangle.Kind.Keyword)
                    {
                        continue;
                    }
                    first.TryAdd((form.Width, form.Height, form.Variant), unit.Region);
                    string other =
                        form.Variant == HalfRectangle.LeaningLeft
                            ? HalfRectangle.LeaningRight
                            : HalfRectangle.LeaningLeft;
                    if (
                        first.TryGetValue((form.Width, form.Height, other), out UnitRegion? before)
                        && told.Add((form.Width, form.Height))
                    )
                    {
                        yield return FindIn(
                            quilt.Size.Key,
                            unit.Region.Design.Span,
                            "half-rectangle triangles lean to both sides",
                            $"unit \"{unit.Region.Design.Letter}\" leans to the {form.Variant} when it stands upright",
                            $"upright {Wording.Measure(form.Width, form.Height)} finished, of both leans",
                            "They are mirror images: no turn makes one into the other, so makers sew two kinds.",
                            "nothing to do if both are meant; else name the opposite corner, which turns a unit by a half and keeps its lean",
                            new Label(
                                before.Design.Span,
                                $"unit \"{before.Design.Letter}\" leans to the {other}"
                            )
                        );
                    }
                }
            }
        }
    }
}
