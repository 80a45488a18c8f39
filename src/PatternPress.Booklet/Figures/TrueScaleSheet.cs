using System.Collections.Immutable;
using PatternPress.Booklet.Figures.Drafting;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>
/// Pages of shapes in true size. Each carries a square of an inch and one of five centimetres to check the printer's scale
/// with. A shape larger than a page is divided into parts that are laid on each other by their marks.
/// </summary>
internal static class TrueScaleSheet
{
    private const double Gap = 14;

    private const double SmallSquare = TrueScaleShape.Inch;
    private const double LargeSquare = 5 / 2.54 * TrueScaleShape.Inch;

    /// <summary>Below the shapes, with the squares in it.</summary>
    private const double Band = LargeSquare + 12;

    /// <summary>Parts of a shape overlap by this on every side that is joined.</summary>
    private const double Lap = 18;

    /// <param name="Names">Names of the shapes on it, in order.</param>
    public sealed record Sheet(ImmutableArray<string> Names, Picture Picture);

    /// <summary>Words on a sheet.</summary>
    /// <param name="Print">"Print at 100 %".</param>
    /// <param name="Check">What the squares are for, in lines.</param>
    /// <param name="Inch">Inside the small square: "1 in".</param>
    /// <param name="Centimetres">Inside the large one: "5 cm".</param>
    /// <param name="Part">Of a shape's name, the part's column letter and row number, and how many parts it has.</param>
    public sealed record SheetWords(
        string Print,
        ImmutableArray<string> Check,
        string Inch,
        string Centimetres,
        Func<string, string, int, string> Part
    );

    public static ImmutableArray<Sheet> Draw(
        IEnumerable<TrueScaleShape> shapes,
        FigureStyle style,
        SheetWords words,
        FigureRoom room
    )
    {
        double width = Math.Floor(room.Width.Value),
            height = Math.Floor(room.Height.Value);
        var field = new Box(0, 0, width, height - Band);
        var sheets = ImmutableArray.CreateBuilder<Sheet>();
        var open = new List<(TrueScaleShape Shape, Spot At)>();
        double x = 0,
            y = 0,
            low = 0;
        foreach (TrueScaleShape shape in shapes)
        {
            // A pen is half outside.
            double across = shape.Width + 2,
                down = shape.Height + 2;
            if (across > field.Width || down > field.Height)
            {
                Close();
                sheets.AddRange(Parts(shape, style, words, width, height));
                continue;
            }
            if (x + across > field.Width)
            {
                (x, y, low) = (0, low + Gap, low + Gap);
            }
            if (y + down > field.Height)
            {
                Close();
            }
            open.Add((shape, new Spot(x + 1, y + 1)));
            x += across + Gap;
            low = Math.Max(low, y + down);
        }
        Close();
        return sheets.ToImmutable();

        void Close()
        {
            if (open.Count == 0)
            {
                return;
            }
            var draft = new Draft(style);
            foreach ((TrueScaleShape shape, Spot at) in open)
            {
                draft.Marks.Add(new Mark.Group(Transform.Move(at.X, at.Y), shape.Lines));
                Write(draft, shape.Labels.Select(label => label with { At = label.At + at }));
            }
            Squares(draft, words, height);
            sheets.Add(
                new Sheet(
                    [.. open.Select(o => o.Shape.Name)],
                    new Picture(
                        draft.Finish(width, height),
                        FigureWords.TrueScale([
                            .. open.Select(o => $"{o.Shape.Name}, {o.Shape.Told}"),
                        ])
                    )
                )
            );
            open.Clear();
            (x, y, low) = (0, 0, 0);
        }
    }

    private static IEnumerable<Sheet> Parts(
        TrueScaleShape shape,
        FigureStyle style,
        SheetWords words,
        double width,
        double height
    )
    {
        double stepX = width - (2 * Lap),
            stepY = height - Band - (2 * Lap);
        int columns = Math.Max(1, (int)Math.Ceiling((shape.Width + 2) / stepX)),
            rows = Math.Max(1, (int)Math.Ceiling((shape.Height + 2) / stepY));
        var written = new HashSet<TrueScaleLabel>();
        for (int row = 0; row < rows; row++)
        {
            for (int column = 0; column < columns; column++)
            {
                // The part of the shape whose corner lies at the inner edge of the lap.
                var by = new Spot(Lap + 1 - (column * stepX), Lap + 1 - (row * stepY));
                var inner = new Box(Lap, Lap, stepX, stepY);
                var draft = new Draft(style);
                draft.Marks.Clip(
                    Paths.Of(inner.Grown(Lap)),
                    marks => marks.Add(new Mark.Group(Transform.Move(by.X, by.Y), shape.Lines))
                );
                Joins(draft, inner, column, row, columns, rows);
                foreach (TrueScaleLabel label in shape.Labels)
                {
                    TrueScaleLabel placed = label with { At = label.At + by };
                    if (inner.Holds(placed.Box) && written.Add(label))
                    {
                        Write(draft, [placed]);
                    }
                }
                string part = $"{(char)('A' + column)}{row + 1}";
                Squares(draft, words, height, words.Part(shape.Name, part, columns * rows));
                yield return new Sheet(
                    [$"{shape.Name} {part}"],
                    new Picture(
                        draft.Finish(width, height),
                        FigureWords.TrueScale(
                            [$"{shape.Name}, {shape.Told}"],
                            $"part {part} of {columns} across and {rows} down"
                        )
                    )
                );
            }
        }
    }

    /// <summary>The edges along which a part is joined to its neighbors, with the marks that are laid on each other.</summary>
    private static void Joins(Draft draft, Box inner, int column, int row, int columns, int rows)
    {
        Stroke edge = draft.Style.Pen(draft.Style.Seam, draft.Style.Quiet) with
        {
            Dashes = [Points.Of(6), Points.Of(4)],
            Cap = StrokeCap.Butt,
        };
        Spot[] corners = inner.Corners();
        for (int side = 0; side < 4; side++)
        {
            bool joined = side switch
            {
                0 => row > 0,
                1 => column < columns - 1,
                2 => row < rows - 1,
                _ => column > 0,
            };
            if (!joined)
            {
                continue;
            }
            Spot from = corners[side],
                to = corners[(side + 1) % 4];
            draft.Lines([(from, to)], edge);
            foreach (double share in new[] { 0.2, 0.8 })
            {
                Mark(draft, Spot.Between(from, to, share));
            }
        }

        // A cross in a circle: two of them lie on each other where two parts are joined.
        static void Mark(Draft on, Spot at)
        {
            const double radius = 6,
                arm = 9;
            Stroke pen = on.Style.Pen(on.Style.Seam);
            on.Area(VectorPath.Circle(Paths.At(at), radius), stroke: pen);
            on.Lines(
                [
                    (at - new Spot(arm, 0), at + new Spot(arm, 0)),
                    (at - new Spot(0, arm), at + new Spot(0, arm)),
                ],
                pen
            );
        }
    }

    private static void Squares(Draft draft, SheetWords words, double height, string? part = null)
    {
        FigureStyle style = draft.Style;
        Stroke pen = style.Pen(style.Edge) with { Join = StrokeJoin.Miter };
        double left = 1,
            bottom = height - 1;
        var large = new Box(left, bottom - LargeSquare, LargeSquare, LargeSquare);
        var small = new Box(left, bottom - SmallSquare, SmallSquare, SmallSquare);
        foreach (Box box in new[] { large, small })
        {
            draft.Area(
                VectorPath.Polygon([.. box.Corners().Select(c => new XY(c.X, c.Y))]),
                stroke: pen
            );
        }
        draft.Label(words.Inch, small.Center, style.Medium);
        draft.Label(
            words.Centimetres,
            new Spot(large.X + (LargeSquare * 0.75), large.Y + (LargeSquare * 0.25)),
            style.Medium
        );
        double x = large.Right + 14,
            y = large.Y + (style.Large.Value / 2) + 2,
            room = 300;
        if (part is not null)
        {
            draft.Text(part, new Spot(x, y), style.Large, room, bold: true);
            y += style.Large.Value * 1.8;
        }
        draft.Text(words.Print, new Spot(x, y), style.Large, room, bold: true);
        y += style.Large.Value * 1.7;
        foreach (string line in words.Check)
        {
            draft.Text(line, new Spot(x, y), style.Medium, room);
            y += style.Medium.Value * 1.5;
        }
    }

    private static void Write(Draft draft, IEnumerable<TrueScaleLabel> labels)
    {
        foreach (TrueScaleLabel label in labels)
        {
            draft.Label(label.Text, label.At, label.Size, label.Bold);
        }
    }
}
