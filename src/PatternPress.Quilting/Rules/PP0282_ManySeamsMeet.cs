using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Techniques;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>More than eight seams meet in a point, within a block or where blocks meet.</summary>
public sealed class PP0282_ManySeamsMeet : CheckingRule
{
    /// <summary>As many as in the center of an eight-pointed star, which can still be pressed flat.</summary>
    public const int Most = 8;

    public PP0282_ManySeamsMeet()
        : base("PP0282", Severity.Warning, "Many seams in one point") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        var known = new Dictionary<Block, SeamRays>();
        foreach (Quilt quilt in context.Quilts)
        {
            var edges =
                new Dictionary<Block, IReadOnlyList<(Point At, IReadOnlyList<Point> Ways)>>();
            foreach (ColoredBlock colored in context.BlocksOf(quilt))
            {
                if (colored.Block is not { } block || edges.ContainsKey(block))
                {
                    continue;
                }
                if (!known.TryGetValue(block, out SeamRays? rays))
                {
                    known.Add(block, rays = Within(block));
                }
                if (Crowded(rays) is { } crowded)
                {
                    yield return FindIn(
                        quilt.Size.Key,
                        block.Design.Span,
                        $"many seams of block \"{block.Key}\" meet in one point",
                        "this block",
                        $"{crowded.Count} seams, {Wording.Measure(crowded.At.X)} from the left and {Wording.Measure(crowded.At.Y)} from the top",
                        "Their allowances pile up, and the point will not lie flat.",
                        "split the design so that no more than eight meet, or appliqué the center"
                    );
                }
                edges.Add(block, [.. rays.All.Where(r => OnEdge(r.At, block) && r.Ways.Count > 2)]);
            }
            if (
                quilt.Size.Quilt.Sashing is null
                && CouldBe(edges.Values.SelectMany(e => e).Select(e => e.Ways.Count))
                && Crowded(Between(quilt, edges)) is { } met
            )
            {
                yield return FindIn(
                    quilt.Size.Key,
                    quilt.Size.Quilt.Span,
                    "many seams meet where blocks meet",
                    "this layout",
                    $"{met.Count} seams, {Wording.Measure(met.At.X)} from the left and {Wording.Measure(met.At.Y)} from the top of the blocks",
                    "Their allowances pile up, and the point will not lie flat.",
                    "turn or alternate the blocks, or set them with sashing"
                );
            }
        }
    }

    /// <summary>The seams within a block.</summary>
    internal static SeamRays Within(Block block)
    {
        var rays = new SeamRays();
        foreach (BlockUnit unit in block.Units)
        {
            UnitForm form = unit.Drawn.Form;
            foreach (RolePatch patch in form.Patches)
            {
                rays.Add(
                    patch
                        .Shape.Turned(unit.Drawn.Turn, form.Width, form.Height)
                        .MoveBy(unit.Place.UpperLeft)
                );
            }
        }
        return rays;
    }

    /// <summary>The first point, from the top, in which more than <see cref="Most"/> seams meet.</summary>
    public static (Point At, int Count)? Crowded(SeamRays rays)
    {
        (Point At, int Count)? first = null;
        foreach ((Point at, IReadOnlyList<Point> ways) in rays.All)
        {
            if (
                ways.Count > Most
                && (
                    first is not { } before
                    || at.Y < before.At.Y
                    || (at.Y == before.At.Y && at.X < before.At.X)
                )
            )
            {
                first = (at, ways.Count);
            }
        }
        return first;
    }

    // Four blocks share the four seams between them.
    private static bool CouldBe(IEnumerable<int> counts) =>
        counts.DefaultIfEmpty(0).Max() is int most && ((most - 2) * 4) + 4 > Most;

    private static SeamRays Between(
        Quilt quilt,
        Dictionary<Block, IReadOnlyList<(Point At, IReadOnlyList<Point> Ways)>> edges
    )
    {
        var rays = new SeamRays();
        foreach (BlockPlace place in quilt.Places)
        {
            if (place.Block.Block is not { } block)
            {
                continue;
            }
            foreach ((Point at, IReadOnlyList<Point> ways) in edges[block])
            {
                Point turned = Turned(at, place);
                foreach (Point way in ways)
                {
                    rays.Add(turned, Turned(at + way, place) - turned);
                }
            }
        }
        return rays;
    }

    private static Point Turned(Point point, BlockPlace place) =>
        new Polygon([point]).Turned(place.Turn, place.Block.Width, place.Block.Height).Corners[0]
        + place.Place.UpperLeft;

    private static bool OnEdge(Point at, Block block) =>
        at.X.Sign == 0 || at.Y.Sign == 0 || at.X == block.Width || at.Y == block.Height;
}
