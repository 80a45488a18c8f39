using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
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
        HashSet<string> placed = Placed(context);
        foreach (Coloring coloring in context.Pattern.Colorings)
        {
            if (placed.Contains(coloring.Key))
            {
                continue;
            }
            bool tooFewPlaces = context
                .Pattern.Sizes.SelectMany(size =>
                    size.Quilt.Ends is { } ends
                        ? size.Quilt.Fill.Rows.AddRange(ends.Rows)
                        : size.Quilt.Fill.Rows
                )
                .Any(row => row.Any(cell => cell.Coloring == coloring.Key));
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

    private static HashSet<string> Placed(RuleContext context)
    {
        var placed = new HashSet<string>(StringComparer.Ordinal);
        foreach (Quilt quilt in context.Quilts)
        {
            foreach (BlockPlace place in quilt.AllBlocks())
            {
                placed.Add(place.Block.Key);
            }
            foreach (SettingPiece piece in quilt.Pieces)
            {
                placed.Add(piece.Coloring);
            }
            if (quilt.Order is null)
            {
                continue;
            }
            // A long plain piece of a section is cut like a strip of sashing.
            foreach (Sash sash in quilt.Sashes)
            {
                placed.UnionWith(
                    context.Pattern.Colorings.SelectWhere(
                        c => c.IsPlain && c.Fabrics[Coloring.PlainPart] == sash.Fabric,
                        c => c.Key
                    )
                );
            }
        }
        return placed;
    }
}
