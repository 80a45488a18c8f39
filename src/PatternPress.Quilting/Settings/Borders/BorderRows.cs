using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;

namespace PatternPress.Quilting.Settings.Borders;

/// <summary>
/// Puts blocks along the sides and in the corners of a border. A side is laid as if it were the top, from its left end, and
/// turned into its place: a block that points outward at the top points outward everywhere, one that points to the right
/// runs around the quilt.
/// </summary>
internal static class BorderRows
{
    /// <summary>The turn of a side: none at the top, a quarter at the right, and so on around.</summary>
    public static Turn TurnOf(BorderSide side) =>
        side switch
        {
            BorderSide.Right => new Turn(1),
            BorderSide.Bottom => new Turn(2),
            BorderSide.Left => new Turn(3),
            _ => Turn.None,
        };

    /// <summary>The blocks of one side.</summary>
    /// <param name="place">Where the side lies in the quilt.</param>
    /// <param name="blocks">From its left end, seen with the side up; they fill its length.</param>
    public static IEnumerable<BorderBlock> Along(
        BorderSide side,
        Rect place,
        ImmutableArray<(ColoredBlock Block, Turn Turn)> blocks
    )
    {
        Turn sideTurn = TurnOf(side);
        (Length length, Length width) = sideTurn.SwapsSides
            ? (place.Height, place.Width)
            : (place.Width, place.Height);
        Length at = Length.Zero;
        for (int i = 0; i < blocks.Length; i++)
        {
            (ColoredBlock block, Turn turn) = blocks[i];
            Length along = LengthOf(block, turn);
            Rect lain = new Rect(at, Length.Zero, along, width)
                .Turned(sideTurn, length, width)
                .MoveBy(place.UpperLeft);
            yield return new BorderBlock(
                side,
                turn,
                new BlockPlace((int)side, i, block, TurnOf(block, turn + sideTurn), lain)
            );
            at += along;
        }
    }

    /// <summary>The blocks in the corners, clockwise from the upper left, each turned a quarter more.</summary>
    public static IEnumerable<BorderBlock> InCorners(
        IEnumerable<Rect> corners,
        ColoredBlock block,
        Turn turn
    )
    {
        int quarters = 0;
        foreach (Rect corner in corners)
        {
            yield return new BorderBlock(
                BorderSide.Corner,
                turn,
                new BlockPlace(
                    (int)BorderSide.Corner,
                    quarters,
                    block,
                    TurnOf(block, turn + new Turn(quarters)),
                    corner
                )
            );
            quarters++;
        }
    }

    /// <summary>How long a block is along its side.</summary>
    public static Length LengthOf(ColoredBlock block, Turn turn) =>
        turn.SwapsSides ? block.Height : block.Width;

    // A plain block is cut to its place, whichever way its place lies; only its length along the side counts.
    private static Turn TurnOf(ColoredBlock block, Turn turn) =>
        block.Block is null && block.Width == block.Height ? Turn.None : turn;
}
