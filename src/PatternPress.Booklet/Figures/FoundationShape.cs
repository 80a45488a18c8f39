using System.Collections.Immutable;
using PatternPress.Booklet.Figures.Drafting;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Tables;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>A paper foundation in true size, mirrored: seam lines, numbers and fabrics of the areas, the line to trim along.</summary>
internal static class FoundationShape
{
    private const double Inch = TrueScaleShape.Inch;

    /// <param name="width">Finished.</param>
    /// <param name="letters">What stands beside the number of an area: the fabric's letter, or of several a number.</param>
    /// <param name="below">What is written below it.</param>
    public static TrueScaleShape Draw(
        string name,
        string told,
        Length width,
        Length height,
        Length seam,
        ImmutableArray<FoundationArea> areas,
        Func<int, string> letters,
        string below,
        FigureStyle style
    )
    {
        double edge = seam.Inches.ToDouble() * Inch,
            across = width.Inches.ToDouble() * Inch,
            down = height.Inches.ToDouble() * Inch;
        var marks = new DrawingBuilder();
        marks.Area(
            VectorPath.Rectangle(0, 0, across + (2 * edge), down + (2 * edge)),
            stroke: style.Pen(style.Seam) with
            {
                Dashes = [Points.Of(5), Points.Of(3)],
                Cap = StrokeCap.Butt,
            }
        );
        foreach (FoundationArea area in areas)
        {
            marks.Area(
                VectorPath.Polygon([.. area.Shape.Corners.Select(c => XYOf(At(c)))]),
                stroke: style.Pen(style.Edge)
            );
        }
        var labels = ImmutableArray.CreateBuilder<TrueScaleLabel>();
        for (int i = 0; i < areas.Length; i++)
        {
            // Mirrored, the corners run the other way round.
            Spot[] shape = [.. areas[i].Shape.Corners.Select(At).Reverse()];
            string text = $"{i + 1} {letters(areas[i].Role)}";
            foreach (Points size in new[] { style.Large, style.Medium, style.Small })
            {
                Box box = LabelSize.BoxAt(text, default, size.Value);
                if (LabelRoom.Find(shape, box.Width + 2, box.Height + 2) is { } place)
                {
                    labels.Add(new(text, place, size, true));
                    text = "";
                    break;
                }
            }
            if (text.Length > 0)
            {
                labels.Add(new(text, LabelRoom.CentroidOf(shape), style.Small, true));
            }
        }
        double bottom = down + (2 * edge),
            line = style.Medium.Value;
        string words = $"{name}  {below}";
        labels.Add(
            new(
                words,
                new Spot(LabelSize.Width(words, line) / 2, bottom + (line * 1.1)),
                style.Medium,
                false
            )
        );
        return new TrueScaleShape(
            name,
            told,
            Math.Max(across + (2 * edge), LabelSize.Width(words, line)),
            bottom + (line * 2),
            marks.ToMarks(),
            labels.ToImmutable()
        );

        Spot At(Point point)
        {
            Spot spot = FlatQuilt.ToSpot(point) * Inch;
            return new(edge + across - spot.X, edge + spot.Y);
        }
    }

    private static XY XYOf(Spot spot) => new(spot.X, spot.Y);
}
