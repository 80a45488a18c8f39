namespace PatternPress.Typesetting.Drawings;

/// <summary>The outlines of the small shapes that hatches repeat.</summary>
static class HatchShapes
{
    /// <summary>A shape about a point.</summary>
    /// <param name="r">Half its size.</param>
    public static VectorPath At(HatchShape shape, XY centre, double r)
    {
        var (x, y) = (centre.X, centre.Y);
        return shape switch
        {
            HatchShape.Ring => VectorPath.Circle(centre, r),
            HatchShape.Square => VectorPath.Rectangle(x - r, y - r, 2 * r, 2 * r),
            HatchShape.Triangle => VectorPath.Polygon(
                new(x, y - r),
                new(x + r, y + r),
                new(x - r, y + r)
            ),
            HatchShape.Diamond => VectorPath.Polygon(
                new(x, y - r),
                new(x + r, y),
                new(x, y + r),
                new(x - r, y)
            ),
            HatchShape.Plus => VectorPath.Combine([
                VectorPath.Polyline(new(x - r, y), new(x + r, y)),
                VectorPath.Polyline(new(x, y - r), new(x, y + r)),
            ]),
            HatchShape.Cross => VectorPath.Combine([
                VectorPath.Polyline(new(x - r, y - r), new(x + r, y + r)),
                VectorPath.Polyline(new(x - r, y + r), new(x + r, y - r)),
            ]),
            HatchShape.Chevron => VectorPath.Polyline(
                new(x - r, y + (r / 2)),
                new(x, y - (r / 2)),
                new(x + r, y + (r / 2))
            ),
            HatchShape.Bow => new PathBuilder().ArcTo(new(x, y + (r / 2)), r, 180, 360).ToPath(),
            _ => throw new ArgumentOutOfRangeException(nameof(shape)),
        };
    }
}
