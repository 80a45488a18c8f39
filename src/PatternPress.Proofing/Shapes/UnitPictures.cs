using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;

namespace PatternPress.Proofing.Shapes;

/// <summary>Finished units as they lie in their pictures, patch by patch, corners clockwise.</summary>
internal static class UnitPictures
{
    /// <summary>Role 0 in the upper left, role 1 in the lower right.</summary>
    public static ImmutableArray<UnitPatch> HalfSquare(Length side) =>
        [
            Patch(0, (Length.Zero, Length.Zero), (side, Length.Zero), (Length.Zero, side)),
            Patch(1, (side, Length.Zero), (side, side), (Length.Zero, side)),
        ];

    /// <summary>Role 0 at the top, in the corner that the diagonal leans away from.</summary>
    public static ImmutableArray<UnitPatch> HalfRectangle(Length width, Length height, bool right)
    {
        Length o = Length.Zero;
        return right
            ?
            [
                Patch(0, (o, o), (width, o), (o, height)),
                Patch(1, (width, o), (width, height), (o, height)),
            ]
            :
            [
                Patch(0, (o, o), (width, o), (width, height)),
                Patch(1, (o, o), (width, height), (o, height)),
            ];
    }

    /// <summary>
    /// Clockwise from the top. Two roles: 0 at top and bottom, 1 at the sides. Three: 1 at the left, 2 at the right.
    /// Four: one each.
    /// </summary>
    public static ImmutableArray<UnitPatch> QuarterSquare(Length side, string variant)
    {
        (int right, int bottom, int left) = variant switch
        {
            "2" => (1, 0, 1),
            "3" => (2, 0, 1),
            _ => (1, 2, 3),
        };
        Length o = Length.Zero,
            half = side / 2;
        return
        [
            Patch(0, (o, o), (side, o), (half, half)),
            Patch(right, (side, o), (side, side), (half, half)),
            Patch(bottom, (side, side), (o, side), (half, half)),
            Patch(left, (o, side), (o, o), (half, half)),
        ];
    }

    /// <summary>The goose, role 0, points up; the sky is role 1.</summary>
    public static ImmutableArray<UnitPatch> Geese(Length height)
    {
        Length o = Length.Zero,
            width = height * 2;
        return
        [
            Patch(0, (height, o), (width, height), (o, height)),
            Patch(1, (o, o), (height, o), (o, height)),
            Patch(1, (height, o), (width, o), (width, height)),
        ];
    }

    /// <summary>The center is role 0, the corners role 1.</summary>
    public static ImmutableArray<UnitPatch> SquareInSquare(Length side)
    {
        Length o = Length.Zero,
            half = side / 2;
        return
        [
            Patch(0, (half, o), (side, half), (half, side), (o, half)),
            Patch(1, (o, o), (half, o), (o, half)),
            Patch(1, (half, o), (side, o), (side, half)),
            Patch(1, (side, half), (side, side), (half, side)),
            Patch(1, (half, side), (o, side), (o, half)),
        ];
    }

    /// <summary>Role 0 is the quarter circle about the upper left corner, role 1 what is left of the square.</summary>
    public static ImmutableArray<UnitPatch> QuarterCircle(Length side, Length radius)
    {
        Length o = Length.Zero;
        UnitPatch pie = Patch(0, (o, o), (radius, o), (o, radius)),
            rest = Patch(1, (o, radius), (radius, o), (side, o), (side, side), (o, side));
        return [Rounded(pie, 1), Rounded(rest, 0)];

        static UnitPatch Rounded(UnitPatch patch, int edge) =>
            patch with
            {
                Shape = patch.Shape with { Arcs = [new QuarterArc(edge, Point.Origin)] },
            };
    }

    public static ImmutableArray<UnitPatch> Grid(
        ImmutableArray<ImmutableArray<int>> rows,
        Length width,
        Length height
    )
    {
        Length cellWidth = width / rows[0].Length,
            cellHeight = height / rows.Length;
        var patches = ImmutableArray.CreateBuilder<UnitPatch>();
        for (int r = 0; r < rows.Length; r++)
        {
            for (int c = 0; c < rows[r].Length; c++)
            {
                var cell = new Rect(cellWidth * c, cellHeight * r, cellWidth, cellHeight);
                patches.Add(new UnitPatch(cell.ToPolygon(), rows[r][c]));
            }
        }
        return patches.ToImmutable();
    }

    /// <summary>Role k in the k-th corner named; the ground is the last role.</summary>
    /// <param name="leg">Finished, along both edges.</param>
    /// <param name="corners">0 upper left, clockwise to 3 lower left.</param>
    public static ImmutableArray<UnitPatch> Corners(
        Length width,
        Length height,
        Length leg,
        string corners
    )
    {
        Length o = Length.Zero;
        var patches = ImmutableArray.CreateBuilder<UnitPatch>();
        var ground = new List<Point>();
        for (int corner = 0; corner < 4; corner++)
        {
            (Point at, Point before, Point after) = corner switch
            {
                0 => (At(o, o), At(o, leg), At(leg, o)),
                1 => (At(width, o), At(width - leg, o), At(width, leg)),
                2 => (At(width, height), At(width, height - leg), At(width - leg, height)),
                _ => (At(o, height), At(leg, height), At(o, height - leg)),
            };
            int role = corners.IndexOf((char)('0' + corner), StringComparison.Ordinal);
            if (role < 0)
            {
                Go(at);
                continue;
            }
            patches.Add(new UnitPatch(new Polygon([before, at, after]), role));
            Go(before);
            Go(after);
        }
        if (ground.Count > 1 && ground[^1] == ground[0])
        {
            ground.RemoveAt(ground.Count - 1);
        }
        patches.Add(new UnitPatch(new Polygon([.. ground]), corners.Length));
        return patches.ToImmutable();

        static Point At(Length x, Length y) => new(x, y);

        // Neighboring corners may reach the same point.
        void Go(Point point)
        {
            if (ground.Count == 0 || ground[^1] != point)
            {
                ground.Add(point);
            }
        }
    }

    private static UnitPatch Patch(int role, params ReadOnlySpan<(Length X, Length Y)> corners)
    {
        var points = ImmutableArray.CreateBuilder<Point>(corners.Length);
        foreach ((Length x, Length y) in corners)
        {
            points.Add(new Point(x, y));
        }
        return new UnitPatch(new Polygon(points.MoveToImmutable()), role);
    }
}
