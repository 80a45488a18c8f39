using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;

namespace PatternPress.Quilting.Settings;

/// <summary>Places the strips and corner squares of plain borders.</summary>
public static class BorderLayout
{
    /// <summary>Puts one border around a rectangle.</summary>
    public static Border Around(Rect inside, BorderDesign design, int number)
    {
        var border = new Border(number, design, inside, []);
        return border with { Pieces = Pieces(border) };
    }

    private static ImmutableArray<BorderPiece> Pieces(Border border)
    {
        Rect inside = border.Inside,
            outside = border.Outside;
        Length width = border.Design.Width;
        string fabric = border.Design.Fabric.Value;
        if (border.Design.Corners == BorderCorners.Mitered)
        {
            return Mitered(inside, outside, width, fabric);
        }
        bool fullSides = border.Design.Corners == BorderCorners.TopFirst;
        bool fullTop = border.Design.Corners == BorderCorners.SidesFirst;
        Rect sides = fullSides ? outside : inside,
            ends = fullTop ? outside : inside;
        var pieces = ImmutableArray.CreateBuilder<BorderPiece>(8);
        pieces.Add(new(BorderSide.Left, new(outside.X, sides.Y, width, sides.Height), fabric));
        pieces.Add(new(BorderSide.Right, new(inside.Right, sides.Y, width, sides.Height), fabric));
        pieces.Add(new(BorderSide.Top, new(ends.X, outside.Y, ends.Width, width), fabric));
        pieces.Add(new(BorderSide.Bottom, new(ends.X, inside.Bottom, ends.Width, width), fabric));
        if (border.Design.Corners == BorderCorners.Squares)
        {
            string corner = border.Design.CornerFabric?.Value ?? fabric;
            foreach (Length x in new[] { outside.X, inside.Right })
            {
                foreach (Length y in new[] { outside.Y, inside.Bottom })
                {
                    pieces.Add(new(BorderSide.Corner, new(x, y, width, width), corner));
                }
            }
        }
        return pieces.ToImmutable();
    }

    // Each strip as long as the outside, its ends cut from the outer to the inner corner.
    private static ImmutableArray<BorderPiece> Mitered(
        Rect inside,
        Rect outside,
        Length width,
        string fabric
    )
    {
        Point innerUpperLeft = inside.UpperLeft,
            innerUpperRight = new(inside.Right, inside.Y),
            innerLowerRight = new(inside.Right, inside.Bottom),
            innerLowerLeft = new(inside.X, inside.Bottom);
        Point upperLeft = outside.UpperLeft,
            upperRight = new(outside.Right, outside.Y),
            lowerRight = new(outside.Right, outside.Bottom),
            lowerLeft = new(outside.X, outside.Bottom);
        return
        [
            Strip(
                BorderSide.Left,
                new(outside.X, outside.Y, width, outside.Height),
                upperLeft,
                innerUpperLeft,
                innerLowerLeft,
                lowerLeft
            ),
            Strip(
                BorderSide.Right,
                new(inside.Right, outside.Y, width, outside.Height),
                upperRight,
                lowerRight,
                innerLowerRight,
                innerUpperRight
            ),
            Strip(
                BorderSide.Top,
                new(outside.X, outside.Y, outside.Width, width),
                upperLeft,
                upperRight,
                innerUpperRight,
                innerUpperLeft
            ),
            Strip(
                BorderSide.Bottom,
                new(outside.X, inside.Bottom, outside.Width, width),
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
