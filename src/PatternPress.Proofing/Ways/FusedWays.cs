using System.Collections.Immutable;
using PatternPress.Proofing.Shapes;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;

namespace PatternPress.Proofing.Ways;

/// <summary>Shapes fused onto a ground.</summary>
internal static class FusedWays
{
    /// <summary>A rectangle of fabric reaches so far beyond its shape, for the web to hold on to.</summary>
    private static readonly Length Around = Length.FromInches(0, 1, 4);

    public static UnitWay[] All { get; } = [new("fused-applique", "applique", Plan)];

    private static WayPlan? Plan(UnitOrder order)
    {
        int ground = order.Roles - 1;
        if (order.Shapes.IsEmpty || order.Shapes.Any(s => s.Role < 0 || s.Role >= ground))
        {
            return null;
        }
        return new WayPlan(
            [
                new NeededPiece(
                    "ground",
                    ground,
                    1,
                    new(SeamLoss.Straight, order.Width),
                    new(SeamLoss.Straight, order.Height)
                ),
                .. order.Shapes.Select(
                    (shape, i) =>
                    {
                        Rect bounds = shape.Shape.Bounds;
                        return new NeededPiece(
                            $"shape {i + 1}",
                            shape.Role,
                            1,
                            new(Exact.Zero, bounds.Width + (Around * 2)),
                            new(Exact.Zero, bounds.Height + (Around * 2))
                        );
                    }
                ),
            ],
            1,
            [
                new UnitPatch(
                    new Rect(Length.Zero, Length.Zero, order.Width, order.Height).ToPolygon(),
                    ground
                ),
                .. order.Shapes.Select(shape => new UnitPatch(shape.Shape, shape.Role)),
            ]
        );
    }
}
