using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Settings.Borders;

/// <summary>
/// Solves for the strip that makes a pieced border come out. A strip of width x at the left and right makes what the top
/// and the bottom border go along 2x longer, so x = (length that comes out − length without a strip) / 2; the same for
/// the strips at top and bottom and the side borders. Exact, by the geometry of the border alone.
/// </summary>
internal static class Coping
{
    /// <summary>What the blocks of the sides and of top and bottom must fill around a rectangle, by the way the border turns
    /// its corners.</summary>
    public static (Length Sides, Length Ends) Runs(
        Rect inside,
        Length width,
        BorderCorners corners
    ) =>
        (
            corners == BorderCorners.TopFirst ? inside.Height + (width * 2) : inside.Height,
            corners == BorderCorners.SidesFirst ? inside.Width + (width * 2) : inside.Width
        );

    /// <summary>
    /// The widths within limits that make both pairs of sides come out. Of several the two that differ least, so that the
    /// strip is as wide all round where that can be; of these the narrowest.
    /// </summary>
    /// <param name="runs">Lengths to fill without a strip.</param>
    /// <returns>Null where no width within the limits does.</returns>
    public static BorderWidths? Solve(
        (Length Sides, Length Ends) runs,
        Closing closing,
        Length least,
        Length most
    )
    {
        // The strip at the sides makes top and bottom longer, and the other way round.
        Length[] sides = [.. Widths(runs.Ends, closing, least, most)],
            ends = [.. Widths(runs.Sides, closing, least, most)];
        if (sides.Length == 0 || ends.Length == 0)
        {
            return null;
        }
        (Length Side, Length End) best = (sides[0], ends[0]);
        int nearest = 0;
        foreach (Length side in sides)
        {
            // Both run upward: the strip nearest to a wider one is never narrower.
            while (
                nearest + 1 < ends.Length
                && Apart(side, ends[nearest + 1]) < Apart(side, ends[nearest])
            )
            {
                nearest++;
            }
            if (Apart(side, ends[nearest]) < Apart(best.Side, best.End))
            {
                best = (side, ends[nearest]);
            }
        }
        return new BorderWidths(best.Side, best.End);
    }

    /// <summary>Widths of a strip on both ends of a run that make it come out, from the narrowest.</summary>
    public static IEnumerable<Length> Widths(
        Length run,
        Closing closing,
        Length least,
        Length most
    ) => closing.Sides(run + (least * 2), run + (most * 2)).Select(side => (side - run) / 2);

    private static Length Apart(Length a, Length b) => a >= b ? a - b : b - a;
}
