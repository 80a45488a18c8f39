using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;

namespace PatternPress.Quilting.Settings.Borders;

/// <summary>Where the strips of a border lie: the sides, and the squares in its corners.</summary>
internal static class BorderStrips
{
    /// <summary>Puts a border of strips around a rectangle.</summary>
    public static Border Around(Rect inside, BorderDesign design, int number, BorderWidths widths)
    {
        var border = new Border(number, design, inside, widths, []);
        string fabric = design.Fabric!.Value.Value;
        if (design.Corners == BorderCorners.Mitered)
        {
            return border with { Pieces = Mitered(border, fabric) };
        }
        var pieces = ImmutableArray.CreateBuilder<BorderPiece>(8);
        foreach ((BorderSide side, Rect place) in Sides(border))
        {
            pieces.Add(new(side, place, fabric));
        }
        if (design.Corners == BorderCorners.Squares)
        {
            string corner = design.CornerFabric?.Value ?? fabric;
            foreach (Rect place in Corners(border))
            {
                pieces.Add(new(BorderSide.Corner, place, corner));
            }
        }
        return border with { Pieces = pieces.ToImmutable() };
    }

    /// <summary>The sides that a border has, in the order left, right, top, bottom, by the way it turns its corners.</summary>
    public static IEnumerable<(BorderSide Side, Rect Place)> Sides(Border border)
    {
        Rect inside = border.Inside,
            outside = border.Outside;
        BorderWidths widths = border.Widths;
        Rect sides = border.Design.Corners == BorderCorners.TopFirst ? outside : inside,
            ends = border.Design.Corners == BorderCorners.SidesFirst ? outside : inside;
        if (widths.Left.Sign > 0)
        {
            yield return (BorderSide.Left, new(outside.X, sides.Y, widths.Left, sides.Height));
        }
        if (widths.Right.Sign > 0)
        {
            yield return (BorderSide.Right, new(inside.Right, sides.Y, widths.Right, sides.Height));
        }
        if (widths.Top.Sign > 0)
        {
            yield return (BorderSide.Top, new(ends.X, outside.Y, ends.Width, widths.Top));
        }
        if (widths.Bottom.Sign > 0)
        {
            yield return (BorderSide.Bottom, new(ends.X, inside.Bottom, ends.Width, widths.Bottom));
        }
    }

    /// <summary>The corners of a border that is as wide on all sides, clockwise from the upper left.</summary>
    public static IEnumerable<Rect> Corners(Border border)
    {
        Rect inside = border.Inside,
            outside = border.Outside;
        BorderWidths w = border.Widths;
        yield return new(outside.X, outside.Y, w.Left, w.Top);
        yield return new(inside.Right, outside.Y, w.Right, w.Top);
        yield return new(inside.Right, inside.Bottom, w.Right, w.Bottom);
        yield return new(outside.X, inside.Bottom, w.Left, w.Bottom);
    }

    // Each strip as long as the outside, its ends cut from the outer to the inner corner.
    private static ImmutableArray<BorderPiece> Mitered(Border border, string fabric)
    {
        Rect inside = border.Inside,
            outside = border.Outside;
        Point innerUpperLeft = inside.UpperLeft,
            innerUpperRight = new(inside.Right, inside.Y),
            innerLowerRight = new(inside.Right, inside.Bottom),
            innerLowerLeft = new(inside.X, inside.Bottom);
        Point upperLeft = outside.UpperLeft,
            upperRight = new(outside.Right, outside.Y),
            lowerRight = new(outside.Right, outside.Bottom),
            lowerLeft = new(outside.X, outside.Bottom);
        BorderWidths widths = border.Widths;
        return
        [
            Strip(
                BorderSide.Left,
                new(outside.X, outside.Y, widths.Left, outside.Height),
                upperLeft,
                innerUpperLeft,
                innerLowerLeft,
                lowerLeft
            ),
            Strip(
                BorderSide.Right,
                new(inside.Right, outside.Y, widths.Right, outside.Height),
                upperRight,
                lowerRight,
                innerLowerRight,
                innerUpperRight
            ),
            Strip(
                BorderSide.Top,
                new(outside.X, outside.Y, outside.Width, widths.Top),
                upperLeft,
                upperRight,
                innerUpperRight,
                innerUpperLeft
            ),
            Strip(
                BorderSide.Bottom,
                new(outside.X, inside.Bottom, outside.Width, widths.Bottom),
                innerLowerLeft,
                innerLowerRight,
                lowerRight,
                lowerLeft
            ),
        ];

        BorderPiece Strip(BorderSide side, Rect place, params ImmutableArray<Point> corners) =>
            new(side, place, fabric) { Mitered = new Polygon(corners) };
    }
}
