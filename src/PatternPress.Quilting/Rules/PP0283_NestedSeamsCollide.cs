using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>
/// Seams of neighboring blocks meet and lie to the same side, although the house presses them nested: the blocks are pressed one way
/// and the other by turns, and turning some of them undoes that.
/// </summary>
public sealed class PP0283_NestedSeamsCollide : CheckingRule
{
    public PP0283_NestedSeamsCollide()
        : base("PP0283", Severity.Note, "Nested seams that lie the same way") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        foreach (Quilt quilt in context.Quilts)
        {
            // Sashing keeps the seams of blocks apart.
            if (
                quilt.House.Pressing != PressingStyle.Nested
                || quilt.Size.Quilt.Sashing is not null
                || quilt.OnPoint
            )
            {
                continue;
            }
            var seams = new Dictionary<Block, (bool Level, HashSet<Length> Lines)?>();
            var at = new Dictionary<(int, int), BlockPlace>();
            foreach (BlockPlace place in quilt.Places)
            {
                at.TryAdd((place.Row, place.Column), place);
            }
            int meet = 0,
                collide = 0;
            BlockPlace? first = null;
            foreach (BlockPlace place in quilt.Places)
            {
                foreach ((int right, int down) in ((int, int)[])[(1, 0), (0, 1)])
                {
                    if (
                        at.TryGetValue(
                            (place.Row + down, place.Column + right),
                            out BlockPlace? next
                        ) && Meeting(place, next, right == 1, seams) is { } same
                    )
                    {
                        meet++;
                        if (same)
                        {
                            collide++;
                            first ??= place;
                        }
                    }
                }
            }
            if (first is not null)
            {
                yield return FindIn(
                    quilt.Size.Key,
                    quilt.Size.Quilt.Fill.Span,
                    "seams of neighboring blocks lie to the same side",
                    "this layout",
                    $"{collide} of {Wording.Count(meet, "pair", "pairs")} of blocks whose seams meet, the first in row {first.Row + 1}, column {first.Column + 1}",
                    "Half of the blocks are pressed the opposite way, so that neighbors lock; a block that is turned upside down lies the wrong way again.",
                    "turn fewer blocks, or press seams open (house: {pressing: open})"
                );
            }
        }
    }

    // Whether seams that meet lie to the same side; null if none meet.
    private static bool? Meeting(
        BlockPlace place,
        BlockPlace next,
        bool beside,
        Dictionary<Block, (bool Level, HashSet<Length> Lines)?> seams
    )
    {
        if (
            LongSeams(place, seams) is not { } one
            || LongSeams(next, seams) is not { } other
            || one.Level != beside
            || other.Level != beside
            || !one.Lines.Overlaps(other.Lines)
        )
        {
            return null;
        }
        return one.Forward == other.Forward;
    }

    // The seams from edge to edge of a block as it lies, and whether they are pressed down or to the right.
    private static (bool Level, HashSet<Length> Lines, bool Forward)? LongSeams(
        BlockPlace place,
        Dictionary<Block, (bool Level, HashSet<Length> Lines)?> seams
    )
    {
        if (place.Block.Block is not { } block)
        {
            return null;
        }
        if (!seams.TryGetValue(block, out (bool Level, HashSet<Length> Lines)? known))
        {
            known = Of(block);
            seams.Add(block, known);
        }
        if (known is not { } drawn)
        {
            return null;
        }
        int quarters = place.Turn.Quarters;
        bool level = quarters % 2 == 0 ? drawn.Level : !drawn.Level;
        // Down turns to the left, right to down, and so on.
        bool reversed = drawn.Level ? quarters is 1 or 2 : quarters is 2 or 3;
        Length whole = level ? place.Place.Height : place.Place.Width;
        Length start = level ? place.Place.Y : place.Place.X;
        return (
            level,
            [.. drawn.Lines.Select(line => start + (reversed ? whole - line : line))],
            reversed == ((place.Row + place.Column) % 2 == 1)
        );
    }

    private static (bool Level, HashSet<Length> Lines)? Of(Block block)
    {
        if (SewingOrder.Of(block) is not SewingOrder.Group { Parts.Length: > 1 } group)
        {
            return null;
        }
        var lines = new HashSet<Length>();
        foreach (SewingOrder part in group.Parts[..^1])
        {
            lines.Add(
                part.Units()
                    .Select(i => block.Units[i].Place)
                    .Select(p => group.Level ? p.Bottom : p.Right)
                    .Aggregate(Length.Max)
            );
        }
        return (group.Level, lines);
    }
}
