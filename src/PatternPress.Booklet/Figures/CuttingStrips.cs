using System.Collections.Immutable;
using System.Globalization;
using PatternPress.Booklet.Figures.Drafting;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Tables;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>
/// The strips cut from one fabric, to scale: the pieces of each with the name of their row in the cutting table, what is
/// left over hatched, and how many strips are cut alike. A list of very many strips grows higher than its room rather
/// than thinner than can be read.
/// </summary>
public static class CuttingStrips
{
    private const double Gap = 7;

    /// <summary>Points per inch; more would take room for nothing.</summary>
    private const double LargestScale = 14;

    /// <summary>A strip is drawn at least this high, in points, even where that is more than to scale.</summary>
    private const double LeastHeight = 7;

    /// <summary>Shorter strips, in points, hardly show their pieces: for so much the drawing may grow to twice its room.</summary>
    private const double LeastLength = 140;

    /// <summary>Only the strips that give several kinds of piece, or that other strips lie beside.</summary>
    /// <param name="size">The name of the size, which stands over the strips.</param>
    public static Picture DrawMixed(
        FabricLook fabric,
        string size,
        StripList strips,
        House house,
        Palette palette,
        FigureRoom room
    )
    {
        var kept = new List<int>();
        for (int i = 0; i < strips.Strips.Length; i++)
        {
            StripRow strip = strips.Strips[i];
            if (
                strip.Pieces.Length > 1
                || strip.Beside is not null
                || strips.Strips.Any(s => s.Beside == i)
            )
            {
                kept.Add(i);
            }
        }
        return Draw(
            fabric,
            strips with
            {
                Strips =
                [
                    .. kept.Select(i =>
                        strips.Strips[i] with
                        {
                            Beside = strips.Strips[i].Beside is { } at ? kept.IndexOf(at) : null,
                        }
                    ),
                ],
            },
            house,
            palette,
            room,
            size
        );
    }

    /// <param name="fabric">How the fabric looks.</param>
    /// <param name="all">The strips of one size.</param>
    /// <param name="title">Stands over the strips.</param>
    public static Picture Draw(
        FabricLook fabric,
        StripList all,
        House house,
        Palette palette,
        FigureRoom room,
        string? title = null
    )
    {
        // Strips beside long pieces are drawn there, not in a row of their own.
        StripList strips = all with
        {
            Strips = [.. all.Strips.Where(s => s.Beside is null)],
        };
        FigureStyle style = palette.Style;
        var draft = new Draft(style);
        double edge = style.Edge.Value,
            usable = strips.StripLength.Inches.ToDouble();
        // "12 strips" over "2 1/2 in" stands before each strip; in little room both on one line.
        string[] heads = [.. strips.Strips.Select(FigureWords.StripCount)];
        string[] sizes = [.. strips.Strips.Select(s => FigureWords.Measure(s.Height, house))];
        double foot = draft.DimensionRoom;
        double twoLines = (style.Medium.Value + style.Small.Value) * 0.95,
            oneLine = style.Medium.Value;
        double between = Math.Max(0, strips.Strips.Length - 1) * Gap,
            top = title is null ? 0 : style.Large.Value * 1.5;
        double height = room.Height.Value - top - foot - (2 * edge) - between;
        bool stacked = strips.Strips.Length * twoLines <= height;
        double least = stacked ? twoLines : oneLine;
        double headWidth = Widest(heads, style.Medium),
            sizeWidth = Widest(sizes, style.Small);
        double left = 8 + (stacked ? Math.Max(headWidth, sizeWidth) : headWidth + 4 + sizeWidth);
        double scale = Math.Min((room.Width.Value - left - (2 * edge)) / usable, LargestScale);
        double legible = Math.Min(scale, LeastLength / usable);
        scale = Math.Max(1, LargestWithin(scale, height));
        if (scale < legible)
        {
            scale = Math.Max(scale, LargestWithin(legible, height * 2));
        }
        if (title is not null)
        {
            draft.Text(
                title,
                new Spot(0, edge + (style.Large.Value * 0.6)),
                style.Large,
                LabelSize.Width(title, style.Large.Value),
                bold: true
            );
        }
        double y = edge + top;
        for (int i = 0; i < strips.Strips.Length; i++)
        {
            StripRow strip = strips.Strips[i];
            double high = Math.Max(strip.Height.Inches.ToDouble() * scale, LeastHeight),
                row = Math.Max(high, least);
            double middle = y + (row / 2);
            PaintStrip(
                draft,
                fabric,
                strip,
                new Box(left, middle - (high / 2), usable * scale, high),
                scale,
                [
                    .. all.Strips.Where(s =>
                        s.Beside is { } at && ReferenceEquals(all.Strips[at], strip)
                    ),
                ]
            );
            Spot head = stacked ? new(0, middle - (style.Small.Value * 0.6)) : new(0, middle),
                size = stacked
                    ? new(0, middle + (style.Medium.Value * 0.55))
                    : new(headWidth + 4, middle);
            draft.Text(
                heads[i],
                head,
                style.Medium,
                LabelSize.Width(heads[i], style.Medium.Value),
                bold: true
            );
            draft.Text(sizes[i], size, style.Small, LabelSize.Width(sizes[i], style.Small.Value));
            y += row + Gap;
        }
        y += -Gap + edge;
        draft.Dimension(
            new Spot(left + (usable * scale), y),
            new Spot(left, y),
            FigureWords.Measure(strips.StripLength, house)
        );
        return new(
            draft.Finish(left + (usable * scale) + edge, y + foot),
            FigureWords.CuttingStrips(fabric, title, all, house)
        );

        // The largest scale, up to the one given, at which the strips are no higher.
        double LargestWithin(double most, double high)
        {
            if (HeightOf(most) <= high)
            {
                return most;
            }
            double low = 0;
            for (int i = 0; i < 30; i++)
            {
                double half = (low + most) / 2;
                (low, most) = HeightOf(half) <= high ? (half, most) : (low, half);
            }
            return low;
        }

        double HeightOf(double perInch) =>
            strips.Strips.Sum(s =>
                Math.Max(Math.Max(s.Height.Inches.ToDouble() * perInch, LeastHeight), least)
            );

        static double Widest(string[] words, Points size) =>
            words.Select(w => LabelSize.Width(w, size.Value)).DefaultIfEmpty().Max();
    }

    private static void PaintStrip(
        Draft draft,
        FabricLook fabric,
        StripRow strip,
        Box box,
        double scale,
        ImmutableArray<StripRow> beside
    )
    {
        FigureStyle style = draft.Style;
        // What is left over shows first; the pieces lie on it.
        draft.Area(Paths.Of(box), Ink.White, hatch: new HatchFill(Leftover, style.Quiet));
        double x = PaintPieces(draft, fabric, strip, box, scale);
        double y = box.Y;
        foreach (StripRow row in beside)
        {
            double high = box.Height * Share(row.Height, strip.Height);
            for (long n = 0; n < row.Count; n++)
            {
                var at = new Box(x, y, box.Right - x, high);
                PaintPieces(draft, fabric, row, at, scale);
                draft.Area(
                    Paths.Of(at),
                    stroke: style.Pen(style.Seam) with
                    {
                        Join = StrokeJoin.Miter,
                    }
                );
                y += high;
            }
        }
        draft.Area(Paths.Of(box), stroke: style.Pen(style.Edge) with { Join = StrokeJoin.Miter });
    }

    private static double Share(Length part, Length whole) =>
        part.Inches.ToDouble() / whole.Inches.ToDouble();

    /// <returns>Where the pieces end.</returns>
    private static double PaintPieces(
        Draft draft,
        FabricLook fabric,
        StripRow strip,
        Box box,
        double scale
    )
    {
        FigureStyle style = draft.Style;
        // All cloth before any line: a line between two kinds of piece lies on both.
        double x = box.X;
        var runs = new List<Box>();
        foreach (StripPieces pieces in strip.Pieces)
        {
            var run = new Box(
                x,
                box.Y,
                pieces.Length.Inches.ToDouble() * scale * pieces.PerStrip,
                box.Height * Share(pieces.Height, strip.Height)
            );
            draft.Area(Paths.Of(run), fabric.Color);
            runs.Add(run);
            x = run.Right;
        }
        for (int i = 0; i < runs.Count; i++)
        {
            StripPieces pieces = strip.Pieces[i];
            Box run = runs[i];
            double width = run.Width / pieces.PerStrip,
                height = run.Height;
            string label = CutNames.Joined(pieces.Cuts, " ");
            var edges = new List<(Spot, Spot)>();
            for (long n = 1; n <= pieces.PerStrip; n++)
            {
                double right = run.X + (n * width);
                edges.Add((new Spot(right, box.Y), new Spot(right, box.Y + height)));
            }
            if (height < box.Height - 0.5)
            {
                edges.Add((new Spot(run.X, box.Y + height), new Spot(run.Right, box.Y + height)));
            }
            draft.Lines(
                edges,
                style.Pen(style.Seam, fabric.LetterInk) with
                {
                    Cap = StrokeCap.Butt,
                }
            );
            LabelPieces(draft, fabric, label, run, width, pieces.PerStrip);
        }
        return x;
    }

    // Each piece where the name fits; else once over the whole run. Strips beside long pieces may be lower than letters are:
    // then only where no name stands above.
    private static void LabelPieces(
        Draft draft,
        FabricLook fabric,
        string label,
        Box run,
        double width,
        long count
    )
    {
        FigureStyle style = draft.Style;
        double words = LabelSize.Width(label, style.Small.Value);
        if (words + 3 <= width)
        {
            bool low = run.Height < style.Small.Value * 0.8;
            for (long n = 0; n < count; n++)
            {
                var center = new Spot(run.X + ((n + 0.5) * width), run.Center.Y);
                if (low)
                {
                    draft.TryLabel(
                        label,
                        [center],
                        style.Small,
                        bold: true,
                        fabric.LetterInk,
                        plate: fabric.Color
                    );
                    continue;
                }
                draft.Label(
                    label,
                    center,
                    style.Small,
                    bold: true,
                    fabric.LetterInk,
                    plate: fabric.Color
                );
            }
            return;
        }
        string once = string.Create(CultureInfo.InvariantCulture, $"{label} × {count}");
        draft.TryLabel(
            once,
            [run.Center],
            style.Small,
            bold: true,
            fabric.LetterInk,
            plate: fabric.Color,
            within: run
        );
    }

    private static readonly Hatch Leftover = new("leftover", [new HatchLayer.Lines(-45, 3, 0.35)]);
}
