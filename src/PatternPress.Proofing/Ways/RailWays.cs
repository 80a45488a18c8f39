using System.Collections.Immutable;
using PatternPress.Proofing.Shapes;

namespace PatternPress.Proofing.Ways;

/// <summary>Equal strips side by side, each of its own role; pictured upright.</summary>
internal static class RailWays
{
    public static UnitWay[] All { get; } =
    [
        new("rail-single-strips", "rail", Singly),
        new("rail-strip-sets", "rail", order => GridWays.StripSets(order, Row(order))),
    ];

    private static WayPlan Singly(UnitOrder order) =>
        new(
            [
                .. Enumerable
                    .Range(0, order.Roles)
                    .Select(role => new NeededPiece(
                        "strip",
                        role,
                        1,
                        new(SeamLoss.Straight, order.Width / order.Roles),
                        new(SeamLoss.Straight, order.Height)
                    )),
            ],
            1,
            UnitPictures.Grid(Row(order), order.Width, order.Height)
        );

    private static ImmutableArray<ImmutableArray<int>> Row(UnitOrder order) =>
        [
            [.. Enumerable.Range(0, order.Roles)],
        ];
}
