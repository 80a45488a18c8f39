using System.Collections.Immutable;
using PatternPress.Typesetting.Layout;

namespace PatternPress.Typesetting.Blocks;

/// <summary>
/// Content that runs down one column after the other, all equally wide and on its last page about equally high. For much
/// that is short, such as lists of words.
/// </summary>
public sealed record BalancedColumns(Block Content, int Count) : Wrapper(Content)
{
    /// <summary>The space between columns.</summary>
    public Points Gap { get; init; } = new(18_000);

    /// <summary>There are fewer columns where one would be narrower than this.</summary>
    public Points LeastWidth { get; init; }

    public override Fit Fit(LayoutContext context, Room room)
    {
        var count = Count;
        while (count > 1 && WidthOf(room, count) < LeastWidth)
        {
            count--;
        }

        if (count < 2)
        {
            return context.Fit(Content, room);
        }

        // Without a page to fill, no column is higher than all of it in one.
        var highest = room.IsEndless
            ? context.Fit(Content, Room.Endless(WidthOf(room, count)))
                is Fit.Fits { Fragment: var one }
                ? one.Height
                : room.Height
            : room.Height;
        var best = Filled(context, room, count, highest);
        if (best.Moves is { } moves)
        {
            return moves;
        }

        if (best.Left is { } rest)
        {
            return new Fit.Splits(Place(room, count, best.Columns), this with { Content = rest });
        }

        // All of it fits: the columns are made as low as still holds it.
        var (low, high) = (Points.Zero, best.Columns.Max(column => column.Height));
        while (high - low > Near)
        {
            var middle = low + ((high - low) / 2);
            var tried = Filled(context, room with { Forced = false }, count, middle);
            if (tried is { Moves: null, Left: null })
            {
                (best, high) = (tried, middle);
            }
            else
            {
                low = middle;
            }
        }

        return new Fit.Fits(Place(room, count, best.Columns));
    }

    static readonly Points Near = new(1_000);

    public override WidthRange Widths(LayoutContext context)
    {
        var one = Content.Widths(context);
        return new(one.Least, (one.Natural * Count) + (Gap * (Count - 1)));
    }

    Points WidthOf(Room room, int count) => (room.Width - (Gap * (count - 1))) / count;

    (List<Fragment> Columns, Block? Left, Fit.Moves? Moves) Filled(
        LayoutContext context,
        Room room,
        int count,
        Points height
    )
    {
        var columns = new List<Fragment>();
        Block? left = Content;
        for (var i = 0; i < count && left is not null; i++)
        {
            // Moving on to the next column wins nothing at the top of one.
            var fit = context.Fit(
                left,
                new Room(
                    WidthOf(room, count),
                    height,
                    AtTop: i > 0 || room.AtTop,
                    Forced: i == 0 && room.Forced
                )
            );
            switch (fit)
            {
                case Fit.Fits { Fragment: var all }:
                    columns.Add(all);
                    left = null;
                    break;
                case Fit.Splits { Fragment: var part, Rest: var rest }:
                    columns.Add(part);
                    left = rest.IsBlank ? null : rest;
                    break;
                case Fit.Moves moves when i == 0:
                    return (columns, left, moves);
                default:
                    return (columns, left, null);
            }
        }

        return (columns, left, null);
    }

    Fragment Place(Room room, int count, List<Fragment> columns)
    {
        var builder = new FragmentBuilder();
        for (var i = 0; i < columns.Count; i++)
        {
            builder.Add(columns[i], (WidthOf(room, count) + Gap) * i, Points.Zero);
        }

        return builder.ToFragment(room.Width, builder.Bottom);
    }
}
