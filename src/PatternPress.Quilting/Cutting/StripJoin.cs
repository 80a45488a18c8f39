using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Cutting;

/// <summary>Strips joined end to end.</summary>
public static class StripJoin
{
    /// <summary>
    /// The length that one join takes. A straight join takes a seam from each end. A diagonal join lays the ends
    /// across each other at a right angle, which takes the strip's width.
    /// </summary>
    public static Length Loss(JoinStyle joins, Length stripWidth, Length seam) =>
        joins == JoinStyle.Diagonal ? stripWidth : seam * 2;

    /// <summary>
    /// The least n with n × <paramref name="stripLength"/> − (n − 1) × <paramref name="loss"/> ≥
    /// <paramref name="total"/>; null where a join takes all that a strip adds.
    /// </summary>
    public static long? StripsFor(Length total, Length stripLength, Length loss)
    {
        if (total <= stripLength)
        {
            return total.Sign > 0 ? 1 : 0;
        }
        Length gain = stripLength - loss;
        if (gain.Sign <= 0)
        {
            return null;
        }
        Length more = total - stripLength;
        long whole = more.CountOf(gain);
        return 1 + whole + (gain * whole < more ? 1 : 0);
    }
}
