using PatternPress.Quilting.Model;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>Sizes of a one-patch quilt are sewn of different shapes, or one of them of blocks.</summary>
public sealed class PP0255_ShapesThatDiffer : CheckingRule
{
    public PP0255_ShapesThatDiffer()
        : base("PP0255", Severity.Error, "Shapes that differ between sizes") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        PatchDesign? first = context.Pattern.Sizes[0].Quilt.Patch;
        foreach (SizeDesign size in context.Pattern.Sizes.Skip(1))
        {
            if (size.Quilt.Patch?.Shape != first?.Shape)
            {
                yield return FindIn(
                    size.Key,
                    size.Quilt.Patch?.Span ?? size.Span,
                    $"size {size.Key} is sewn of {Told(size)}, size {context.Pattern.Sizes[0].Key} of {Told(context.Pattern.Sizes[0])}",
                    "another shape",
                    "",
                    "The booklet tells once how all sizes are cut and sewn.",
                    "change the height only, or write a pattern for each shape"
                );
            }
        }
    }

    private static string Told(SizeDesign size) =>
        size.Quilt.Patch?.Shape switch
        {
            PatchShape.Triangle => "triangles",
            PatchShape.Diamond => "diamonds",
            PatchShape.Hexagon => "hexagons",
            _ => "blocks",
        };
}
