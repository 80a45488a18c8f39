using System.Collections.Immutable;
using PatternPress.Booklet.Figures.Drafting;
using PatternPress.Quilting.Geometry;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>The outline of an appliqué shape in true size, mirrored, with its name and fabric.</summary>
internal static class AppliqueShapeDrawing
{
    private const double Inch = TrueScaleShape.Inch;

    /// <param name="sizes">Names of the sizes it is for; empty for all.</param>
    public static TrueScaleShape Draw(
        string name,
        string told,
        Polygon shape,
        string fabric,
        string sizes,
        FigureStyle style
    )
    {
        Rect bounds = shape.Bounds;
        Spot corner = FlatQuilt.ToSpot(bounds.UpperLeft);
        double width = bounds.Width.Inches.ToDouble() * Inch,
            height = bounds.Height.Inches.ToDouble() * Inch;
        // Mirrored, the corners run the other way round.
        Spot[] outline =
        [
            .. shape
                .Corners.Select(c =>
                {
                    Spot spot = (FlatQuilt.ToSpot(c) - corner) * Inch;
                    return new Spot(width - spot.X, spot.Y);
                })
                .Reverse(),
        ];
        var marks = new DrawingBuilder().Area(
            VectorPath.Polygon([.. outline.Select(s => new XY(s.X, s.Y))]),
            stroke: style.Pen(style.Edge)
        );
        string words = sizes.Length == 0 ? $"{name}, {fabric}" : $"{name}, {fabric}, {sizes}";
        double line = style.Medium.Value,
            room = LabelSize.Width(words, line);
        // Below the shape, where there is room for any name.
        return new TrueScaleShape(
            name,
            told,
            Math.Max(width, room),
            height + (line * 2),
            marks.ToMarks(),
            [
                new TrueScaleLabel(
                    words,
                    new Spot(room / 2, height + (line * 1.2)),
                    style.Medium,
                    true
                ),
            ]
        );
    }
}
