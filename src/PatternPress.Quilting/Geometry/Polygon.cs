using System.Collections.Immutable;
using System.Runtime.InteropServices;
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

    public Polygon MoveBy(Point by)
    {
        var moved = new Point[Corners.Length];
        for (int i = 0; i < moved.Length; i++)
        {
            moved[i] = Corners[i] + by;
        }
        return new(ImmutableCollectionsMarshal.AsImmutableArray(moved));
    }

    /// <summary>Where this part of a <paramref name="width"/> × <paramref name="height"/> whole lands when the whole is turned.</summary>
    public Polygon Turned(Turn turn, Length width, Length height)
    {
        if (turn.Quarters == 0)
        {
            return this;
        }
        var turned = new Point[Corners.Length];
        for (int i = 0; i < turned.Length; i++)
        {
            Point corner = Corners[i];
            turned[i] = turn.Quarters switch
            {
                1 => new Point(height - corner.Y, corner.X),
                2 => new Point(width - corner.X, height - corner.Y),
                _ => new Point(corner.Y, width - corner.X),
            };
        }
        return new(ImmutableCollectionsMarshal.AsImmutableArray(turned));
    }

    public bool Equals(Polygon? other) =>
        other is not null && Corners.AsSpan().SequenceEqual(other.Corners.AsSpan());

    public override int GetHashCode() => Corners.Length == 0 ? 0 : Corners[0].GetHashCode();

    public override string ToString() => string.Join(" ", Corners);
}
