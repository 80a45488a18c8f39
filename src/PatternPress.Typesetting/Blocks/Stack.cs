using System.Collections.Immutable;
using PatternPress.Typesetting.Layout;

namespace PatternPress.Typesetting.Blocks;

/// <summary>
/// Blocks below one another. Headings and other blocks that stay with the next are never left alone at the foot of a page.
/// </summary>
public sealed record Stack(ImmutableArray<Block> Items) : Block
{
    // The gap above each item of a rest whose items come from several stacks; none where all have the same.
    ImmutableArray<Points> gaps;

    public Stack(params IEnumerable<Block> items)
        : this([.. items]) { }

    /// <summary>The least space between two items; dropped at the top of a page.</summary>
    public Points Gap { get; init; }

    /// <summary>Every item starts at a whole multiple of this distance from the top; zero for none.</summary>
    public Points Rhythm { get; init; }

    public override Fit Fit(LayoutContext context, Room room)
    {
        var entries = Entries();
        var placed = new List<(Fragment Fragment, Points Y)>();
        var (y, after) = (Points.Zero, Points.Zero);
        for (var i = 0; i < entries.Count; i++)
        {
            var (block, gap) = entries[i];
            var spacing = block.Spacing(context);
            // A gap that no longer fits ends with the room: what has no height, as an anchor, may still stand there.
            var start =
                y == Points.Zero
                    ? y
                    : Points.Min(
                        InRhythm(
                            context,
                            block,
                            room,
                            (y + context.Space(Largest(gap, after, spacing.Before))).UpTo(Rhythm)
                        ),
                        Points.Max(y, room.Height)
                    );
            var offered =
                y == Points.Zero
                    ? room
                    : room with
                    {
                        Height = room.Height - start,
                        Top = room.Top + start,
                        AtTop = false,
                        Forced = false,
                    };
            switch (context.Fit(block, offered))
            {
                case Fit.Fits { Fragment: var all }:
                    placed.Add((all, start));
                    // What has no height, as an anchor, neither takes a gap nor ends one.
                    if (all.Height > Points.Zero)
                    {
                        (y, after) = (start + all.Height, spacing.After);
                    }

                    break;
                case Fit.Splits { Fragment: var part, Rest: var rest }:
                    placed.Add((part, start));
                    return new Fit.Splits(Build(placed), Rest(entries, i + 1, rest));
                case Fit.Moves moves:
                    var from = i;
                    while (from > 0 && entries[from - 1].Block.StaysWithNext(context))
                    {
                        from--;
                    }

                    if ((from < i ? placed[from].Y : y) > Points.Zero)
                    {
                        return new Fit.Splits(Build(placed[..from]), Rest(entries, from, null));
                    }

                    // Nothing to be seen would be left here. All of it moves, unless that wins nothing.
                    return room.AtTop && y > Points.Zero
                        ? new Fit.Splits(Build(placed), Rest(entries, i, null))
                        : moves;
                default:
                    throw new InvalidOperationException(
                        "A block answers with fits, splits or moves."
                    );
            }
        }

        return new Fit.Fits(Build(placed));
    }

    // Running text comes back into the rhythm of the page after whatever stood above it.
    static Points InRhythm(LayoutContext context, Block block, Room room, Points start)
    {
        if (
            context.Rhythm == Points.Zero
            || room.Top is not { } top
            || block.RhythmicBaseline(context) is not { } baseline
        )
        {
            return start;
        }

        // The first line of a page stands in the rhythm: what is at its top begins at 0.
        var first = context.BodyBaseline;
        var below = top + start + baseline - first;
        return start + below.UpTo(context.Rhythm) - below;
    }

    internal override Points? RhythmicBaseline(LayoutContext context) =>
        Items.IsEmpty ? null : Items[0].RhythmicBaseline(context);

    public override WidthRange Widths(LayoutContext context) =>
        Items.Aggregate(default(WidthRange), (widest, item) => widest.Or(item.Widths(context)));

    public override Spacing Spacing(LayoutContext context) =>
        Items.IsEmpty
            ? default
            : new(Items[0].Spacing(context).Before, Items[^1].Spacing(context).After);

    public override bool StaysWithNext(LayoutContext context) =>
        !Items.IsEmpty && Items[^1].StaysWithNext(context);

    public override bool IsBlank => Items.All(item => item.IsBlank);

    public override IEnumerable<Block> Children => Items;

    // The items with the gap above each; stacks within the stack are opened, so that their last heading, too, stays with
    // what follows the inner stack.
    List<(Block Block, Points Gap)> Entries()
    {
        var entries = new List<(Block, Points)>(Items.Length);
        Open(this, Points.Zero);
        return entries;

        void Open(Stack stack, Points outer)
        {
            for (var i = 0; i < stack.Items.Length; i++)
            {
                var gap =
                    i == 0 ? outer
                    : stack.gaps.IsDefault ? stack.Gap
                    : stack.gaps[i];
                if (stack.Items[i] is Stack { Origin: null } inner && inner.Rhythm == Points.Zero)
                {
                    Open(inner, gap);
                }
                else
                {
                    entries.Add((stack.Items[i], gap));
                }
            }
        }
    }

    Stack Rest(List<(Block Block, Points Gap)> entries, int from, Block? first)
    {
        var left = entries.Skip(from);
        left = first is null ? left : left.Prepend((first, Points.Zero));
        return this with
        {
            Items = [.. left.Select(entry => entry.Block)],
            gaps = [.. left.Select(entry => entry.Gap)],
        };
    }

    static Fragment Build(IReadOnlyList<(Fragment Fragment, Points Y)> placed)
    {
        var builder = new FragmentBuilder();
        foreach (var (fragment, y) in placed)
        {
            builder.Add(fragment, Points.Zero, y);
        }

        return builder.ToFragment(builder.Right, builder.Bottom);
    }

    static Points Largest(Points a, Points b, Points c) => Points.Max(a, Points.Max(b, c));
}
