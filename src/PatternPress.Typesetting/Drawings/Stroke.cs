using System.Collections.Immutable;

namespace PatternPress.Typesetting.Drawings;

/// <summary>A pen: its width is a distance on paper and does not grow or shrink with the drawing.</summary>
public sealed record Stroke(Points Width, Ink Ink)
{
    /// <summary>Lengths of dash, gap, dash, gap ... on paper; none for a solid line.</summary>
    public ImmutableArray<Points> Dashes { get; init; } = [];

    public StrokeCap Cap { get; init; } = StrokeCap.Butt;

    public StrokeJoin Join { get; init; } = StrokeJoin.Miter;

    /// <summary>A dashed pen.</summary>
    public static Stroke Dashed(Points width, Ink ink, params ImmutableArray<Points> dashes) =>
        new(width, ink) { Dashes = dashes };

    /// <summary>A row of round dots, as far apart as given from centre to centre.</summary>
    public static Stroke Dotted(Points width, Ink ink, Points apart) =>
        new(width, ink) { Dashes = [Points.Zero, apart], Cap = StrokeCap.Round };

    public bool Equals(Stroke? other) =>
        other is not null
        && Width == other.Width
        && Ink == other.Ink
        && Cap == other.Cap
        && Join == other.Join
        && Dashes.AsSpan().SequenceEqual(other.Dashes.AsSpan());

    public override int GetHashCode() => HashCode.Combine(Width, Ink, Cap, Join, Dashes.Length);
}
