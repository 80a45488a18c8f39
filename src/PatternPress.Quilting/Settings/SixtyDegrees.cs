using PatternPress.Quilting.Cutting.Planning;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Techniques;

namespace PatternPress.Quilting.Settings;

/// <summary>
/// The pieces of rows of triangles, diamonds and half hexagons, exact with √3: a row of height h has edges of 2h/√3. Pieces lie
/// as they are cut from a strip; all else is that turned half round, and turned over for ends that are named reversed.
/// </summary>
public static class SixtyDegrees
{
    private static readonly Exact _overRootThree = new(0, 0, new Rational(1, 3));

    /// <summary>A length divided by √3.</summary>
    public static Length OverRootThree(Length length) => length * _overRootThree;

    /// <summary>The edge of a triangle, a diamond or a hexagon whose row is so high: 2h/√3.</summary>
    public static Length Edge(Length height) => OverRootThree(height) * 2;

    /// <summary>How far one place of a row is from the next.</summary>
    public static Length Step(PatchShape shape, Length height) =>
        shape switch
        {
            PatchShape.Triangle => OverRootThree(height),
            PatchShape.Diamond => Edge(height),
            _ => Edge(height) * new Rational(3, 2),
        };

    /// <summary>Width of a row of so many places, the first and the last of which are cut off at the edge.</summary>
    public static Length Width(PatchShape shape, Length height, int places) =>
        shape == PatchShape.Diamond
            ? (Edge(height) * (places - 2)) + OverRootThree(height)
            : Step(shape, height) * (places - 1);

    /// <summary>The kinds of piece that rows of a shape are sewn of: whole ones, and ends.</summary>
    public static (SettingPieceKind Whole, SettingPieceKind End) KindsOf(PatchShape shape) =>
        shape switch
        {
            PatchShape.Triangle => (SettingPieceKind.Triangle, SettingPieceKind.TriangleEnd),
            PatchShape.Diamond => (SettingPieceKind.Diamond, SettingPieceKind.DiamondEnd),
            _ => (SettingPieceKind.HalfHexagon, SettingPieceKind.HexagonEnd),
        };

    /// <summary>Height of the strip that pieces are cut from: with the seams at both edges, and for the tip of a triangle one
    /// more.</summary>
    public static Length StripHeight(SettingPieceKind kind, Length height, Length seam) =>
        kind is SettingPieceKind.Triangle or SettingPieceKind.TriangleEnd
            ? height + (seam * 3)
            : height + (seam * 2);

    /// <summary>How whole pieces nest in a strip.</summary>
    public static SlantedPiece Nested(SettingPieceKind kind, Length height, Length seam)
    {
        Length strip = StripHeight(kind, height, seam);
        if (kind == SettingPieceKind.Triangle)
        {
            return SlantedPiece.Triangle60(strip);
        }
        if (kind == SettingPieceKind.Diamond)
        {
            return SlantedPiece.Diamond60(strip);
        }
        // The two edges of half a hexagon along the strip: together two pitches.
        Length across = OverRootThree(seam),
            longer = (Edge(height) * 2) + (across * 6),
            shorter = Edge(height) + (across * 2);
        return new SlantedPiece(strip, longer, (longer + shorter) / 2);
    }

    /// <summary>The template of a piece.</summary>
    /// <param name="reversed">Turned over from left to right.</param>
    public static PieceTemplate TemplateOf(
        SettingPieceKind kind,
        bool reversed,
        Length height,
        Length seam
    )
    {
        Length o = Length.Zero,
            h = height,
            s = seam,
            a = Edge(h),
            half = a / 2,
            k = OverRootThree(s),
            k3 = k * 3;
        (Polygon Seam, Polygon Cut) shapes = kind switch
        {
            SettingPieceKind.Triangle => (
                Shape((half, o), (a, h), (o, h)),
                Shape((half, -s * 2), (a + k3, h + s), (-k3, h + s))
            ),
            SettingPieceKind.TriangleEnd => (
                Shape((o, o), (half, h), (o, h)),
                Shape((-s, -s * 2), (o, -s * 2), (half + k3, h + s), (-s, h + s))
            ),
            SettingPieceKind.Diamond => (
                Shape((half, o), (a + half, o), (a, h), (o, h)),
                Shape((half - k, -s), (a + half + k3, -s), (a + k, h + s), (-k3, h + s))
            ),
            SettingPieceKind.DiamondEnd => (
                Shape((o, o), (half, o), (o, h)),
                Shape((-s, -s), (half + k3, -s), (k, h + s), (-s, h + s))
            ),
            SettingPieceKind.HalfHexagon => (
                Shape((half, o), (a + half, o), (a * 2, h), (o, h)),
                Shape((half - k, -s), (a + half + k, -s), ((a * 2) + k3, h + s), (-k3, h + s))
            ),
            _ => (
                Shape((o, o), (half, o), (a, h), (o, h)),
                Shape((-s, -s), (half + k, -s), (a + k3, h + s), (-s, h + s))
            ),
        };
        return new PieceTemplate(
            reversed ? Mirrored(shapes.Seam) : shapes.Seam,
            reversed ? Mirrored(shapes.Cut) : shapes.Cut,
            []
        );

        static Polygon Mirrored(Polygon shape) =>
            new([.. shape.Corners.Reverse().Select(c => new Point(-c.X, c.Y))]);
    }

    private static Polygon Shape(params ReadOnlySpan<(Length X, Length Y)> corners)
    {
        var points = new Point[corners.Length];
        for (int i = 0; i < points.Length; i++)
        {
            points[i] = new Point(corners[i].X, corners[i].Y);
        }
        return new Polygon([.. points]);
    }
}
