using System.Collections.Immutable;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Techniques;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A bias edge lies on the outside of a block that nothing frames, or on the outside of the quilt.</summary>
public sealed class PP0238_BiasOnOuterEdge : CheckingRule
{
    public PP0238_BiasOnOuterEdge()
        : base("PP0238", Severity.Warning, "Bias on an outer edge") { }

    // Which edges are on the bias depends on how a unit is made.
    public override bool NeedsMaking => true;

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        var techniques = new Dictionary<(string Block, string Letter), Technique>();
        foreach (UnitShape shape in context.Making.Shapes)
        {
            foreach (BlockUse use in shape.Classes.SelectMany(unit => unit.Uses))
            {
                techniques.TryAdd((use.Block, use.Letter), shape.Technique);
            }
        }
        var bias = new Dictionary<Block, List<UnitRegion>>();
        foreach (Quilt quilt in context.Quilts)
        {
            // A border of blocks frames what is inside it, and is itself at the edge if it is the last.
            bool pieced = !quilt.Borders.IsEmpty && quilt.Borders[^1].IsPieced;
            bool framed =
                quilt.Size.Quilt.Sashing is { Around: true }
                || (quilt.Borders.Length > 0 && !pieced);
            bool sashed = quilt.Size.Quilt.Sashing is not null;
            foreach (ColoredBlock colored in context.BlocksOf(quilt))
            {
                if (colored.Block is not { } block)
                {
                    continue;
                }
                if (!bias.TryGetValue(block, out List<UnitRegion>? regions))
                {
                    bias.Add(block, regions = BiasUnits(block, techniques));
                }
                foreach (UnitRegion region in regions)
                {
                    bool outermost = !framed && IsAtTheEdge(quilt, colored);
                    if (sashed && !outermost)
                    {
                        continue;
                    }
                    Finding found = FindIn(
                        quilt.Size.Key,
                        region.Design.Span,
                        outermost
                            ? $"unit \"{region.Design.Letter}\" of block \"{block.Key}\" puts a bias edge on the outside of the quilt"
                            : $"unit \"{region.Design.Letter}\" of block \"{block.Key}\" puts a bias edge on the outside of the block",
                        $"a {region.Design.Kind.Value} with a bias edge",
                        "",
                        "A bias edge stretches while it is handled, and the block grows out of square.",
                        outermost
                            ? "add a border, or make the unit so that its outer edge is on the straight grain"
                            : "make the unit so that its outer edge is on the straight grain, or tell makers to handle it with care"
                    );
                    yield return outermost
                        ? found
                        : found with
                        {
                            Diagnostic = found.Diagnostic with { Severity = Severity.Note },
                        };
                }
            }
        }
    }

    private static List<UnitRegion> BiasUnits(
        Block block,
        Dictionary<(string Block, string Letter), Technique> techniques
    )
    {
        var regions = new List<UnitRegion>();
        var seen = new HashSet<string>();
        foreach (BlockUnit unit in block.Units)
        {
            string letter = unit.Region.Design.Letter;
            if (
                !seen.Contains(letter)
                && HasBiasOutside(unit, techniques.GetValueOrDefault((block.Key, letter)), block)
            )
            {
                seen.Add(letter);
                regions.Add(unit.Region);
            }
        }
        return regions;
    }

    private static bool HasBiasOutside(BlockUnit unit, Technique? technique, Block block)
    {
        UnitForm form = unit.Drawn.Form;
        for (int patch = 0; patch < form.Patches.Length; patch++)
        {
            ImmutableArray<int> edges =
                technique?.BiasEdges(form, patch) ?? form.Patches[patch].BiasEdges;
            if (edges.IsEmpty)
            {
                continue;
            }
            Polygon shape = form.Patches[patch]
                .Shape.Turned(unit.Drawn.Turn, form.Width, form.Height)
                .MoveBy(unit.Place.UpperLeft);
            foreach (int edge in edges)
            {
                if (LiesOutside(shape, edge, block))
                {
                    return true;
                }
            }
        }
        return false;
    }

    private static bool LiesOutside(Polygon shape, int edge, Block block)
    {
        Point from = shape.Corners[edge],
            to = shape.Corners[(edge + 1) % shape.Corners.Length];
        return (from.X == to.X && (from.X == Length.Zero || from.X == block.Width))
            || (from.Y == to.Y && (from.Y == Length.Zero || from.Y == block.Height));
    }

    private static bool IsAtTheEdge(Quilt quilt, ColoredBlock block) =>
        quilt
            .AllBlocks()
            .Any(p =>
                // On point a block meets the edge with a corner only.
                p.Block == block
                && !p.Frame.OnPoint
                && (
                    p.Place.X == Length.Zero
                    || p.Place.Y == Length.Zero
                    || p.Place.Right == quilt.Width
                    || p.Place.Bottom == quilt.Height
                )
            );
}
