using System.Collections.Immutable;
using PatternPress.Booklet.Figures.Drafting;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Techniques;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>
/// The template of a piece in true size: cut line, seam line, the arrow of the straight grain, notches, its name and what to cut.
/// </summary>
internal static class TemplateShape
{
    private const double Inch = TrueScaleShape.Inch;

    /// <param name="lines">What is written in it below its name, short ones.</param>
    public static TrueScaleShape Draw(
        string name,
        string told,
        PieceTemplate template,
        ImmutableArray<string> lines,
        FigureStyle style
    )
    {
        Rect bounds = template.Cut.Bounds;
        Spot origin = FlatQuilt.ToSpot(bounds.UpperLeft);
        double width = bounds.Width.Inches.ToDouble() * Inch,
            height = bounds.Height.Inches.ToDouble() * Inch;
        var marks = new DrawingBuilder();
        marks.Area(
            TrueScalePath.Of(template.Cut, Place),
            stroke: style.Pen(style.Edge) with
            {
                Join = StrokeJoin.Miter,
            }
        );
        marks.Area(
            TrueScalePath.Of(template.Seam, Place),
            stroke: style.Pen(style.Seam) with
            {
                Dashes = [Points.Of(5), Points.Of(3)],
                Cap = StrokeCap.Butt,
            }
        );
        foreach (Notch notch in template.Notches)
        {
            Spot seam = At(notch.OnSeam),
                cut = At(notch.OnCut);
            marks.Area(
                VectorPath.Polyline(XYOf(seam), XYOf(cut)),
                stroke: style.Pen(style.Bold) with
                {
                    Cap = StrokeCap.Butt,
                }
            );
            Spot way = (cut - seam) * (1 / Math.Max((cut - seam).Length, 1e-9)),
                aside = new(-way.Y * 3, way.X * 3),
                tip = cut - (way * 6);
            marks.Area(
                VectorPath.Polygon(XYOf(cut + aside), XYOf(tip), XYOf(cut - aside)),
                style.Ink
            );
        }
        Spot[] shape = [.. template.Seam.Straightened().Corners.Select(At)];
        Box? arrow = ArrowIn(shape);
        if (arrow is { } at)
        {
            marks.Add(
                new Mark.Line(
                    new(at.Center.X, at.Bottom),
                    new(at.Center.X, at.Y),
                    style.Pen(style.Edge)
                )
                {
                    Start = Arrowhead.Filled,
                    End = Arrowhead.Filled,
                    HeadSize = Points.Of(7),
                }
            );
        }
        return new TrueScaleShape(
            name,
            told,
            width,
            height,
            marks.ToMarks(),
            Labels(name, shape, lines, style, arrow)
        );

        Spot At(Point point) => (FlatQuilt.ToSpot(point) - origin) * Inch;

        XY Place(Point point) => XYOf(At(point));
    }

    private static XY XYOf(Spot spot) => new(spot.X, spot.Y);

    /// <summary>The arrow lies at the left of the piece, where words have room beside it, and is as long as it can be up to two
    /// inches.</summary>
    private static Box? ArrowIn(Spot[] shape)
    {
        const double width = 10,
            shortest = 24;
        var bounds = Box.Of(shape);
        for (double length = 2 * Inch; length >= shortest; length *= 0.85)
        {
            for (double share = 0.12; share <= 0.88; share += 0.04)
            {
                double x = bounds.X + (bounds.Width * share);
                for (double down = 0.5; down <= 0.9; down += 0.05)
                {
                    // From the middle out, above it and below by turns.
                    foreach (double y in new[] { down, 1 - down })
                    {
                        var at = new Spot(x, bounds.Y + (bounds.Height * y));
                        if (LabelRoom.SlackOf(shape, at, width, length) >= 4)
                        {
                            return Box.Around(at, width, length);
                        }
                    }
                }
            }
        }
        return null;
    }

    // The name and the lines below it, in the middle of the piece beside the arrow; fewer lines, where they have no room.
    private static ImmutableArray<TrueScaleLabel> Labels(
        string name,
        Spot[] shape,
        ImmutableArray<string> lines,
        FigureStyle style,
        Box? arrow
    )
    {
        for (int kept = lines.Length; kept >= 0; kept--)
        {
            double nameSize = style.Large.Value * 1.3,
                lineSize = style.Medium.Value,
                pitch = lineSize * 1.35;
            double width =
                    Math.Max(
                        LabelSize.Width(name, nameSize),
                        lines
                            .Take(kept)
                            .Select(l => LabelSize.Width(l, lineSize))
                            .DefaultIfEmpty(0)
                            .Max()
                    ) + 4,
                height = (nameSize * 1.2) + (pitch * kept);
            if (PlaceOf(shape, arrow, width, height) is not { } middle)
            {
                continue;
            }
            double y = middle.Y - (height / 2) + (nameSize * 0.55);
            var labels = ImmutableArray.CreateBuilder<TrueScaleLabel>();
            labels.Add(new(name, new Spot(middle.X, y), Points.Of(nameSize), true));
            y += (nameSize * 0.6) + (pitch * 0.6);
            foreach (string line in lines.Take(kept))
            {
                labels.Add(new(line, new Spot(middle.X, y), style.Medium, false));
                y += pitch;
            }
            return labels.ToImmutable();
        }
        return [];
    }

    // Places of a grid inside the shape and off the arrow; the one nearest the middle.
    private static Spot? PlaceOf(Spot[] shape, Box? arrow, double width, double height)
    {
        var bounds = Box.Of(shape);
        Spot middle = LabelRoom.CentroidOf(shape);
        Spot? best = null;
        const int grid = 40;
        for (int row = 0; row <= grid; row++)
        {
            for (int column = 0; column <= grid; column++)
            {
                var place = new Spot(
                    bounds.X + (bounds.Width * column / grid),
                    bounds.Y + (bounds.Height * row / grid)
                );
                if (
                    (best is null || (place - middle).Length < (best.Value - middle).Length - 1e-6)
                    && (arrow is null || !Box.Around(place, width, height).Overlaps(arrow.Value))
                    && LabelRoom.SlackOf(shape, place, width, height) >= 2
                )
                {
                    best = place;
                }
            }
        }
        return best;
    }
}
