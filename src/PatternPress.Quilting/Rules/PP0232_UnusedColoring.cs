using PatternPress.Quilting.Model;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A coloring is placed in no size.</summary>
public sealed class PP0232_UnusedColoring : CheckingRule
{
    public PP0232_UnusedColoring()
        : base("PP0232", Severity.Warning, "Coloring that no size uses") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        if (!context.IsWhole)
        {
            yield break;
        }
        var placed = context
            .Quilts.SelectMany(quilt => quilt.AllBlocks())
            .Select(place => place.Block.Key)
            .Concat(
                context.Quilts.SelectMany(quilt => quilt.Pieces).Select(piece => piece.Coloring)
            )
            .ToHashSet(StringComparer.Ordinal);
        // A long plain piece of a section is cut like a strip of sashing.
        placed.UnionWith(
            from quilt in context.Quilts
            where quilt.Order is not null
            from sash in quilt.Sashes
            from coloring in context.Pattern.Colorings
            where coloring.IsPlain && coloring.Fabrics[Coloring.PlainPart] == sash.Fabric
            select coloring.Key
        );
        var named = context
            .Pattern.Sizes.SelectMany(size =>
                size.Quilt.Ends is { } ends
                    ? size.Quilt.Fill.Rows.AddRange(ends.Rows)
                    : size.Quilt.Fill.Rows
            )
            .SelectMany(row => row)
            .Select(cell => cell.Coloring)
            .ToHashSet(StringComparer.Ordinal);
        foreach (Coloring coloring in context.Pattern.Colorings.Where(c => !placed.Contains(c.Key)))
        {
            bool tooFewPlaces = named.Contains(coloring.Key);
            yield return Find(
                coloring.Span,
                $"coloring \"{coloring.Key}\" is placed in no size",
                tooFewPlaces ? "the fill never gets this far" : "no fill names it",
                hint: tooFewPlaces
                    ? "no size has enough blocks to reach it: take it out of the fill, or is a size too small?"
                    : "name it in the fill, or delete it"
            );
        }
    }
}
