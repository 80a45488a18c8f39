using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Techniques;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>Patches finish so narrow that they hide in their own seams.</summary>
public sealed class PP0314_SlenderPieces : CheckingRule
{
    // Below 1/2 in the two seam allowances of 1/4 in lie over each other behind the patch (common practice, no source).
    private static readonly Length _least = Length.FromInches(0, 1, 2);

    public PP0314_SlenderPieces()
        : base("PP0314", Severity.Note, "Pieces that finish very narrow") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        foreach (Quilt quilt in context.Quilts)
        {
            var seen = new HashSet<(string, string)>();
            foreach (ColoredBlock colored in context.BlocksOf(quilt))
            {
                if (colored.Block is not { } block)
                {
                    continue;
                }
                foreach (BlockUnit unit in block.Units)
                {
                    UnitDesign design = unit.Region.Design;
                    Length least = Narrowest(unit.Drawn.Form);
                    if (least < _least && seen.Add((block.Key, design.Letter)))
                    {
                        yield return FindIn(
                            quilt.Size.Key,
                            design.Span,
                            $"unit \"{design.Letter}\" of block \"{block.Key}\" has very narrow patches",
                            $"a {unit.Drawn.Form.Kind.Name}",
                            $"{Wording.Measure(least)} finished",
                            hint: "use a larger block, or a coarser grid"
                        );
                    }
                }
            }
            foreach (Border border in quilt.Borders)
            {
                if (border.Widths.Different().Min() is var narrowest && narrowest >= _least)
                {
                    continue;
                }
                yield return FindIn(
                    quilt.Size.Key,
                    border.Design.Span,
                    $"border {border.Number} is very narrow",
                    "this border",
                    $"{Wording.Measure(narrowest)} finished",
                    hint: "make it wider, or use a flat piping and say so in the notes"
                );
            }
            if (quilt.Size.Quilt.Sashing is { } sashing && sashing.Width < _least)
            {
                yield return FindIn(
                    quilt.Size.Key,
                    sashing.Span,
                    "the sashing is very narrow",
                    "the sashing",
                    $"{Wording.Measure(sashing.Width)} finished",
                    hint: "make it wider"
                );
            }
        }
    }

    private static Length Narrowest(UnitForm form)
    {
        Length narrowest = Length.Min(form.Width, form.Height);
        foreach (RolePatch patch in form.Patches)
        {
            Rect bounds = patch.Shape.Bounds;
            narrowest = Length.Min(narrowest, Length.Min(bounds.Width, bounds.Height));
        }
        return narrowest;
    }
}
