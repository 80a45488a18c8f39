using System.Collections.Immutable;
using System.Runtime.InteropServices;
using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Geometry;

/// <summary>
/// A simple shape with exact corners, clockwise as seen on the wall (Y down). Its edges are straight but for those named in
/// <paramref name="Arcs"/>.
/// </summary>
/// <param name="Corners">In order.</param>
/// <param name="Arcs">Edges that are quarters of circles, in order of edge; none for a polygon in the strict sense.</param>
public sealed record Polygon(ImmutableArray<Point> Corners, ImmutableArray<QuarterArc> Arcs)
{
    public Polygon(ImmutableArray<Point> corners)
        : this(corners, []) { }

    /// <summary>
    /// The enclosed area, by the shoelace formula; positive for clockwise corners. A quarter circle over its chord adds
    /// r²π/4 − r²/2, or takes it away where it is hollow.
    /// </summary>
    public Area Area
    {
        get
        {
            Exact twice = Exact.Zero,
                round = Exact.Zero;
            for (int i = 0; i < Corners.Length; i++)
            {
                Point a = Corners[i],
                    b = Corners[(i + 1) % Corners.Length];
                twice += (a.X.Inches * b.Y.Inches) - (b.X.Inches * a.Y.Inches);
            }
            foreach (QuarterArc arc in Arcs)
            {
                Exact square = arc.RadiusSquared(this) * (arc.IsConvex(this) ? 1 : -1);
                twice -= square;
                round += square / 4;
            }
            return new Area(twice / 2, round);
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

    /// <summary>The same shape with straight edges only: each arc is replaced by places exactly on it, so that shapes that share
    /// an arc share its places.</summary>
    public Polygon Straightened()
    {
        if (Arcs.IsEmpty)
        {
            return this;
        }
        var corners = ImmutableArray.CreateBuilder<Point>();
        for (int i = 0; i < Corners.Length; i++)
        {
            corners.Add(Corners[i]);
            foreach (QuarterArc arc in Arcs)
            {
                if (arc.Edge == i)
                {
                    corners.AddRange(arc.PlacesBetween(this));
                }
            }
        }
        return new Polygon(corners.ToImmutable());
    }

    /// <summary>The same shape with its corners listed from another one of them.</summary>
    public Polygon FromCorner(int first)
    {
        if (first == 0)
        {
            return this;
        }
        int count = Corners.Length;
        return new Polygon([.. Corners[first..], .. Corners[..first]])
        {
            Arcs = Arcs.IsEmpty
                ? Arcs
                :
                [
                    .. Arcs.Select(arc => arc with { Edge = (arc.Edge - first + count) % count })
                        .OrderBy(arc => arc.Edge),
                ],
        };
    }

    public Polygon MoveBy(Point by)
    {
        var moved = new Point[Corners.Length];
        for (int i = 0; i < moved.Length; i++)
        {
            moved[i] = Corners[i] + by;
        }
        return new(ImmutableCollectionsMarshal.AsImmutableArray(moved))
        {
            Arcs = Arcs.IsEmpty
                ? Arcs
                : [.. Arcs.Select(arc => arc with { Center = arc.Center + by })],
        };
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
            turned[i] = Place(Corners[i]);
        }
        return new(ImmutableCollectionsMarshal.AsImmutableArray(turned))
        {
            Arcs = Arcs.IsEmpty
                ? Arcs
                : [.. Arcs.Select(arc => arc with { Center = Place(arc.Center) })],
        };

        Point Place(Point corner) =>
            turn.Quarters switch
            {
                1 => new Point(height - corner.Y, corner.X),
                2 => new Point(width - corner.X, height - corner.Y),
                _ => new Point(corner.Y, width - corner.X),
            };
    }

    public bool Equals(Polygon? other) =>
        other is not null
        && Corners.AsSpan().SequenceEqual(other.Corners.AsSpan())
        && Arcs.AsSpan().SequenceEqual(other.Arcs.AsSpan());

    public override int GetHashCode() => Corners.Length == 0 ? 0 : Corners[0].GetHashCode();

    public override string ToString() => string.Join(" ", Corners);
}
