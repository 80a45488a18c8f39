using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Techniques;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>
/// Patches leave a gap or lie over each other, computed exactly: within each unit, within each block, and over the
/// whole quilt.
/// </summary>
public sealed class PP0235_PatchesThatDoNotTile : CheckingRule
{
    public PP0235_PatchesThatDoNotTile()
        : base("PP0235", Severity.Error, "Patches that do not tile") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        var faults = new Dictionary<Block, List<BlockFault>>();
        foreach (Quilt quilt in context.Quilts)
        {
            string size = quilt.Size.Key;
            var seen = new HashSet<Block>();
            foreach (ColoredBlock colored in context.BlocksOf(quilt))
            {
                if (colored.Block is not { } block || !seen.Add(block))
                {
                    continue;
                }
                if (!faults.TryGetValue(block, out List<BlockFault>? found))
                {
                    faults.Add(block, found = FaultsOf(block));
                }
                foreach (BlockFault fault in found)
                {
                    yield return FindIn(size, fault.Span, fault.Title, fault.Label, fault.Numbers);
                }
            }
            if (Fault(Tiles(quilt), Whole(quilt.Width, quilt.Height)) is { } quiltFault)
            {
                yield return FindIn(
                    size,
                    quilt.Size.Quilt.Span,
                    "blocks, sashing and borders do not fill the quilt",
                    "the quilt",
                    quiltFault
                );
            }
        }
    }

    private sealed record BlockFault(Span Span, string Title, string Label, string Numbers);

    private static List<BlockFault> FaultsOf(Block block)
    {
        var faults = new List<BlockFault>();
        foreach (BlockUnit unit in block.Units)
        {
            UnitForm form = unit.Drawn.Form;
            if (
                Fault(
                    [.. form.Patches.Select(p => Extent.Of(p.Shape))],
                    Whole(form.Width, form.Height)
                ) is
                { } inUnit
            )
            {
                faults.Add(
                    new(
                        unit.Region.Design.Span,
                        $"the patches of unit \"{unit.Region.Design.Letter}\" in block \"{block.Key}\" do not fill it",
                        $"a {form.Kind.Name}",
                        inUnit
                    )
                );
            }
        }
        if (
            Fault(
                [.. block.Units.Select(u => Extent.Of(u.Place))],
                Whole(block.Width, block.Height)
            ) is
            { } inBlock
        )
        {
            faults.Add(
                new(
                    block.Design.Span,
                    $"the units of block \"{block.Key}\" do not fill it",
                    "this block",
                    inBlock
                )
            );
        }
        return faults;
    }

    private static Rect Whole(Length width, Length height) =>
        new(Length.Zero, Length.Zero, width, height);

    private static Extent[] Tiles(Quilt quilt)
    {
        int count = quilt.Places.Length + quilt.Sashes.Length + quilt.Pieces.Length;
        foreach (Border border in quilt.Borders)
        {
            count += border.Pieces.Length + border.Blocks.Length;
        }
        var tiles = new Extent[count];
        int at = 0;
        foreach (BlockPlace place in quilt.Places)
        {
            tiles[at++] = place.Frame.OnPoint ? Extent.Of(place.Outline) : Extent.Of(place.Place);
        }
        foreach (Sash sash in quilt.Sashes)
        {
            tiles[at++] = sash.Frame.OnPoint ? Extent.Of(sash.Outline) : Extent.Of(sash.Place);
        }
        foreach (SettingPiece piece in quilt.Pieces)
        {
            tiles[at++] = Extent.Of(piece.Shape);
        }
        foreach (Border border in quilt.Borders)
        {
            foreach (BorderPiece piece in border.Pieces)
            {
                tiles[at++] = piece.Mitered is { } shape
                    ? Extent.Of(shape)
                    : Extent.Of(piece.Place);
            }
            foreach (BorderBlock block in border.Blocks)
            {
                tiles[at++] = Extent.Of(block.Place.Place);
            }
        }
        return tiles;
    }

    /// <summary>What is wrong, with the numbers; null if the shapes cover the whole exactly once.</summary>
    private static string? Fault(Extent[] shapes, Rect whole)
    {
        Area covered = Area.Zero;
        foreach (Extent shape in shapes)
        {
            covered += shape.Area;
            if (
                shape.Left < whole.X
                || shape.Top < whole.Y
                || shape.Right > whole.Right
                || shape.Bottom > whole.Bottom
            )
            {
                return $"the patch {Wording.Measure(shape.Right - shape.Left, shape.Bottom - shape.Top)} at {new Point(shape.Left, shape.Top)} reaches beyond {Wording.Measure(whole.Width, whole.Height)}";
            }
        }
        if (Overlap(shapes) is { } overlap)
        {
            return $"two patches lie over each other near {overlap}";
        }
        Area gap = whole.Area - covered;
        // Inside the whole and nowhere twice: then only a gap can be left.
        return gap.Sign == 0
            ? null
            : $"{gap.ToDouble():0.####} of {whole.Area.ToDouble():0.####} sq in are not covered";
    }

    /// <summary>A shape and the lines between which it lies.</summary>
    /// <param name="Outline">Null for an upright rectangle, which fills all between the lines.</param>
    private readonly record struct Extent(
        Polygon? Outline,
        Length Left,
        Length Right,
        Length Top,
        Length Bottom
    )
    {
        public Area Area => Outline?.Area ?? ((Right - Left) * (Bottom - Top));

        public static Extent Of(Rect place) =>
            new(null, place.X, place.Right, place.Y, place.Bottom);

        public static Extent Of(Polygon shape)
        {
            Rect bounds = shape.Bounds;
            return new(shape, bounds.X, bounds.Right, bounds.Y, bounds.Bottom);
        }

        /// <summary>Whether two shapes whose lines cross share no area nevertheless.</summary>
        public bool IsApartFrom(in Extent other)
        {
            if (Outline is null && other.Outline is null)
            {
                return false;
            }
            Polygon one = Outline ?? ToPolygon(),
                two = other.Outline ?? other.ToPolygon();
            return Separated(one, two)
                || Separated(two, one)
                || Circled(one, two)
                || Circled(two, one);
        }

        private Polygon ToPolygon() => new Rect(Left, Top, Right - Left, Bottom - Top).ToPolygon();
    }

    /// <summary>A place that two shapes share; null if there is none. Goes down the shapes from the top.</summary>
    private static Point? Overlap(Extent[] shapes)
    {
        var order = new int[shapes.Length];
        for (int i = 0; i < order.Length; i++)
        {
            order[i] = i;
        }
        Array.Sort(
            order,
            (a, b) => shapes[a].Top.CompareTo(shapes[b].Top) is not 0 and int above ? above : a - b
        );
        var open = new List<int>();
        foreach (int index in order)
        {
            ref readonly Extent next = ref shapes[index];
            int kept = 0;
            for (int i = 0; i < open.Count; i++)
            {
                ref readonly Extent other = ref shapes[open[i]];
                if (other.Bottom <= next.Top)
                {
                    continue;
                }
                open[kept++] = open[i];
                if (other.Left < next.Right && next.Left < other.Right && !other.IsApartFrom(next))
                {
                    return new Point(
                        Length.Max(other.Left, next.Left),
                        Length.Max(other.Top, next.Top)
                    );
                }
            }
            open.RemoveRange(kept, open.Count - kept);
            open.Add(index);
        }
        return null;
    }

    // A shape that bulges in an arc lies within the arc's circle, a shape hollowed by the same arc outside of it: the corners of
    // the first are no farther from the center than the arc, those of the other no nearer, and so are its straight edges.
    private static bool Circled(Polygon inner, Polygon outer)
    {
        foreach (QuarterArc arc in inner.Arcs)
        {
            if (
                !arc.IsConvex(inner)
                || !outer.Arcs.Any(a => a.Center == arc.Center && !a.IsConvex(outer))
            )
            {
                continue;
            }
            Exact square = arc.RadiusSquared(inner);
            if (
                inner.Arcs.Length == 1
                && inner.Corners.All(c => Between(arc.Center, c) <= square)
                && Enumerable.Range(0, outer.Corners.Length).All(IsOutside)
            )
            {
                return true;
            }

            bool IsOutside(int edge)
            {
                Point from = outer.Corners[edge],
                    to = outer.Corners[(edge + 1) % outer.Corners.Length];
                if (outer.Arcs.Any(a => a.Edge == edge))
                {
                    return Between(arc.Center, from) >= square;
                }
                // The nearest place of the edge is one of its ends unless both lie on the far side of the foot.
                Exact ahead = Along(from, to, arc.Center),
                    behind = Along(to, from, arc.Center);
                if (ahead.Sign <= 0 || behind.Sign <= 0)
                {
                    return Between(arc.Center, from) >= square && Between(arc.Center, to) >= square;
                }
                Exact cross =
                    ((to.X - from.X).Inches * (arc.Center.Y - from.Y).Inches)
                    - ((to.Y - from.Y).Inches * (arc.Center.X - from.X).Inches);
                return cross * cross >= square * Between(from, to);
            }
        }
        return false;

        static Exact Between(Point a, Point b) => Along(a, b, b);

        // The part of the way from one point to another that leads toward a third, times its length.
        static Exact Along(Point from, Point to, Point other) =>
            ((to.X - from.X).Inches * (other.X - from.X).Inches)
            + ((to.Y - from.Y).Inches * (other.Y - from.Y).Inches);
    }

    // Convex shapes share no area exactly when an edge of one has all of the other on its outer side. All patches but
    // curved ones are convex: triangles, squares, rectangles, trapezoids.
    private static bool Separated(Polygon one, Polygon other)
    {
        for (int i = 0; i < one.Corners.Length; i++)
        {
            if (one.Arcs.Any(arc => arc.Edge == i))
            {
                continue;
            }
            Point from = one.Corners[i],
                along = one.Corners[(i + 1) % one.Corners.Length] - from;
            bool outside = true;
            foreach (Point corner in Around(other))
            {
                Point to = corner - from;
                Exact side = (along.X.Inches * to.Y.Inches) - (along.Y.Inches * to.X.Inches);
                outside &= side.Sign <= 0;
            }
            if (outside)
            {
                return true;
            }
        }
        return false;
    }

    // The corners, and for each arc that bulges the point where the circle's tangents at its ends meet.
    private static IEnumerable<Point> Around(Polygon shape) =>
        shape.Arcs.IsEmpty
            ? shape.Corners
            : shape.Corners.Concat(
                shape
                    .Arcs.Where(arc => arc.IsConvex(shape))
                    .Select(arc =>
                        shape.Corners[arc.Edge]
                        + shape.Corners[(arc.Edge + 1) % shape.Corners.Length]
                        - arc.Center
                    )
            );
}
