using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;

namespace PatternPress.Proofing.Shapes;

/// <summary>
/// A visible patch of fabric, its corners listed from the uppermost, of these the leftmost, clockwise and without
/// corners on a straight edge, so that equal patches are equal lists.
/// </summary>
internal sealed class SewnPatch : IEquatable<SewnPatch>
{
    private readonly int _hash;

    private SewnPatch(string fabric, ImmutableArray<Point> corners)
    {
        Fabric = fabric;
        Corners = corners;
        // Whole parts tell most patches apart and are quickly had; the rest is compared.
        var hash = new HashCode();
        hash.Add(fabric);
        hash.Add(corners.Length);
        foreach (Point corner in corners)
        {
            hash.Add(corner.X.Inches.One.Numerator);
            hash.Add(corner.Y.Inches.One.Numerator);
        }
        _hash = hash.ToHashCode();
    }

    public string Fabric { get; }

    public ImmutableArray<Point> Corners { get; }

    /// <summary>Edges that are quarters of circles, by the corner they begin at.</summary>
    public ImmutableArray<QuarterArc> Arcs { get; private init; } = [];

    /// <param name="shape">Clockwise; may have arcs.</param>
    public static SewnPatch Of(string fabric, Polygon shape)
    {
        if (shape.Arcs.IsEmpty)
        {
            return Of(fabric, shape.Corners);
        }
        int first = 0;
        for (int i = 1; i < shape.Corners.Length; i++)
        {
            int order = shape.Corners[i].Y.CompareTo(shape.Corners[first].Y);
            if (order < 0 || (order == 0 && shape.Corners[i].X < shape.Corners[first].X))
            {
                first = i;
            }
        }
        int count = shape.Corners.Length;
        return new SewnPatch(fabric, [.. shape.Corners.Skip(first), .. shape.Corners.Take(first)])
        {
            Arcs =
            [
                .. shape
                    .Arcs.Select(arc => new QuarterArc(
                        (arc.Edge + count - first) % count,
                        arc.Center
                    ))
                    .OrderBy(arc => arc.Edge),
            ],
        };
    }

    public static SewnPatch Of(string fabric, Rect place) =>
        new(
            fabric,
            [
                place.UpperLeft,
                new(place.Right, place.Y),
                new(place.Right, place.Bottom),
                new(place.X, place.Bottom),
            ]
        );

    /// <param name="corners">Clockwise.</param>
    public static SewnPatch Of(string fabric, IReadOnlyList<Point> corners)
    {
        var kept = new List<Point>(corners.Count);
        for (int i = 0; i < corners.Count; i++)
        {
            Point before = corners[(i + corners.Count - 1) % corners.Count],
                at = corners[i],
                after = corners[(i + 1) % corners.Count];
            if (!Straight(before, at, after))
            {
                kept.Add(at);
            }
        }
        int first = 0;
        for (int i = 1; i < kept.Count; i++)
        {
            int order = kept[i].Y.CompareTo(kept[first].Y);
            if (order < 0 || (order == 0 && kept[i].X < kept[first].X))
            {
                first = i;
            }
        }
        return new SewnPatch(fabric, [.. kept.Skip(first).Concat(kept.Take(first))]);
    }

    public bool Equals(SewnPatch? other) =>
        other is not null
        && _hash == other._hash
        && Fabric == other.Fabric
        && Corners.AsSpan().SequenceEqual(other.Corners.AsSpan())
        && Arcs.AsSpan().SequenceEqual(other.Arcs.AsSpan());

    public override bool Equals(object? obj) => Equals(obj as SewnPatch);

    public override int GetHashCode() => _hash;

    public override string ToString() =>
        Arcs.IsEmpty
            ? $"{Fabric} {string.Join(" ", Corners)}"
            : $"{Fabric} {string.Join(" ", Corners)}, round about {string.Join(", ", Arcs.Select(arc => arc.Center))}";

    private static bool Straight(Point a, Point b, Point c)
    {
        bool upright = a.X == b.X,
            level = a.Y == b.Y;
        if (upright || level)
        {
            return upright ? b.X == c.X : b.Y == c.Y;
        }
        return (
                ((b.X - a.X).Inches * (c.Y - b.Y).Inches)
                - ((b.Y - a.Y).Inches * (c.X - b.X).Inches)
            ).Sign == 0;
    }
}
