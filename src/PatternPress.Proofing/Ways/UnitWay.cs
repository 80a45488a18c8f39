using System.Collections.Immutable;

namespace PatternPress.Proofing.Ways;

/// <summary>A way of making a kind of unit, as a maker knows it.</summary>
/// <param name="Keyword">As the tables call it.</param>
/// <param name="Kind">Keyword of the kind of unit.</param>
/// <param name="Plan">What it takes; null where the unit asked for is not of the kind.</param>
internal sealed record UnitWay(string Keyword, string Kind, Func<UnitOrder, WayPlan?> Plan)
{
    /// <summary>Whether pieces may be cut larger by the house's wish, to be trimmed.</summary>
    public bool Oversize { get; init; }

    private static readonly Dictionary<string, UnitWay> Known = new UnitWay[][]
    {
        HalfSquareWays.All,
        HalfRectangleWays.All,
        QuarterSquareWays.All,
        GeeseWays.All,
        SquareInSquareWays.All,
        StarWays.All,
        CornerWays.All,
        GridWays.All,
        RailWays.All,
        PlainWays.All,
        LogWays.All,
        SeminoleWays.All,
        CurveWays.All,
        PaperWays.All,
        FusedWays.All,
    }
        .SelectMany(ways => ways)
        .ToDictionary(way => way.Keyword);

    public static UnitWay? Find(string keyword) => Known.GetValueOrDefault(keyword);
}
