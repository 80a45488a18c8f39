using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Settings.Borders;

/// <summary>The lengths at which the blocks along one side of a border come out.</summary>
/// <param name="Repeat">Length that repeats.</param>
/// <param name="Middle">Length of the block in the middle; zero for none.</param>
/// <param name="Halves">Whether as many repeats stand on both sides of the middle.</param>
internal readonly record struct Closing(Length Repeat, Length Middle, bool Halves)
{
    /// <summary>From one length that comes out to the next.</summary>
    public Length Step => Halves ? Repeat * 2 : Repeat;

    /// <summary>How many repeats fill a side; null if none do.</summary>
    public long? RepeatsIn(Length side)
    {
        long steps = StepsIn(side);
        return LengthOf(steps) == side && IsSide(steps) ? steps * (Halves ? 2 : 1) : null;
    }

    /// <summary>The longest side that comes out and is not longer than a given one, and the next longer one. The first may be
    /// without any block.</summary>
    public (Length Shorter, Length Longer) Around(Length side)
    {
        long steps = Math.Max(0, StepsIn(side));
        return (LengthOf(steps), LengthOf(steps + 1));
    }

    /// <summary>Every side that comes out, from a shortest to a longest one, in this order.</summary>
    public IEnumerable<Length> Sides(Length shortest, Length longest)
    {
        long steps = Math.Max(0, StepsIn(shortest));
        while (LengthOf(steps) < shortest || !IsSide(steps))
        {
            steps++;
        }
        for (Length side = LengthOf(steps); side <= longest; side += Step)
        {
            yield return side;
        }
    }

    private long StepsIn(Length side) => side >= Middle ? (side - Middle).CountOf(Step) : -1;

    private Length LengthOf(long steps) => Middle + (Step * steps);

    private bool IsSide(long steps) => steps > 0 || (steps == 0 && Middle.Sign > 0);
}
