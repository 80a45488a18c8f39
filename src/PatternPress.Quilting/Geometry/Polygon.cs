using System.Collections.Immutable;
using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Geometry;

/// <summary>A simple polygon with exact corners, clockwise as seen on the wall (Y down).</summary>
public sealed record Polygon(ImmutableArray<Point> Corners)
{
    /// <summary>The enclosed area, by the shoelace formula; positive for clockwise corners.</summary>
    public Area Area
    {
        get
        {
            Exact twice = Exact.Zero;
            for (int i = 0; i < Corners.Length; i++)
            {
                Point a = Corners[i],
                    b = Corners[(i + 1) % Corners.Length];
                twice += (a.X.Inches * b.Y.Inches) - (b.X.Inches * a.Y.Inches);
            }
            return new Area(twice / 2);
        }
    }

    public Rect Bounds
    {
        get
        {
            Point first = Corners[0];
            Length left = first.X,
                right = first.X,
                top = first.Y,
                bottom = first.Y;
            foreach (Point corner in Corners.AsSpan()[1..])
            {
                left = Length.Min(left, corner.X);
                right = Length.Max(right, corner.X);
                top = Length.Min(top, corner.Y);
                bottom = Length.Max(bottom, corner.Y);
            }
            return new Rect(left, top, right - left, bottom - top);
        }
    }

    public Polygon MoveBy(Point by) => new([.. Corners.Select(c => c + by)]);

    /// <summary>Where this part of a <paramref name="width"/> × <paramref name="height"/> whole lands when the whole is turned.</summary>
    public Polygon Turned(Turn turn, Length width, Length height) =>
        turn.Quarters switch
        {
            1 => new([.. Corners.Select(c => new Point(height - c.Y, c.X))]),
            2 => new([.. Corners.Select(c => new Point(width - c.X, height - c.Y))]),
            3 => new([.. Corners.Select(c => new Point(c.Y, width - c.X))]),
            _ => this,
        };

    public bool Equals(Polygon? other) =>
        other is not null && Corners.AsSpan().SequenceEqual(other.Corners.AsSpan());

    public override int GetHashCode() => Corners.Length == 0 ? 0 : Corners[0].GetHashCode();

    public override string ToString() => string.Join(" ", Corners);
}
