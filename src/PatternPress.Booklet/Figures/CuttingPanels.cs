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
/// Fat quarters and other panels of one fabric, to scale: each way to cut one with its strips and pieces, what is left over
/// hatched, and how many are cut so.
/// </summary>
public static class CuttingPanels
{
    private const double Gap = 12;

    // An inch of fabric in heights of the small letters: more would take room for nothing, less could not be read.
    private const double LargestScale = 4.0 / 7;
    private const double SmallestScale = 2.5 / 7;

    /// <param name="fabric">How the fabric looks.</param>
    /// <param name="size">The name of the size, which stands over the first panel.</param>
    /// <param name="strips">The strips of that size.</param>
    /// <param name="panels">The panels they are cut from.</param>
    public static Picture Draw(
        FabricLook fabric,
        string size,
        StripList strips,
        PanelSheet panels,
        House house,
        Palette palette,
        FigureRoom room
    )
    {
        FigureStyle style = palette.Style;
        var draft = new Draft(style);
        double edge = style.Edge.Value,
            across = panels.Width.Inches.ToDouble(),
            along = panels.Height.Inches.ToDouble(),
            // The number over each panel.
            head = style.Medium.Value * 1.3;
        int count = panels.Layouts.Length;
        (int perRow, double scale) = Arranged();
        double width = across * scale,
            height = along * scale;
        for (int i = 0; i < count; i++)
        {
            double x = edge + (i % perRow * (width + Gap)),
                y = edge + (i / perRow * (head + height + Gap)) + head;
            string alike = FigureWords.CutAlike(panels.Layouts[i].Count),
                words = i == 0 ? $"{size}: {alike}" : alike;
            draft.Text(
                words,
                new Spot(x, y - (head / 2)),
                style.Medium,
                LabelSize.Width(words, style.Medium.Value),
                bold: true
            );
            PaintPanel(draft, fabric, strips, panels, i, new Box(x, y, width, height), scale);
        }
        int rows = (count + perRow - 1) / perRow,
            columns = Math.Min(perRow, count);
        double right = (2 * edge) + (columns * width) + ((columns - 1) * Gap),
            bottom = (2 * edge) + (rows * (head + height)) + ((rows - 1) * Gap);
        return new(
            draft.Finish(right, bottom),
            FigureWords.CuttingPanels(fabric, size, strips, panels, house)
        );

        // As large as the room allows, as many side by side as that takes.
        (int PerRow, double Scale) Arranged()
        {
            (int PerRow, double Scale) best = (1, 0);
            for (int perRow = 1; perRow <= count; perRow++)
            {
                int rows = (count + perRow - 1) / perRow;
                double byWidth =
                        (room.Width.Value - (2 * edge) - ((perRow - 1) * Gap)) / (perRow * across),
                    byHeight =
                        (room.Height.Value - (2 * edge) - (rows * head) - ((rows - 1) * Gap))
                        / (rows * along);
                double scale = Math.Min(
                    LargestScale * style.Small.Value,
                    // A list of very many layouts grows higher than its room rather than smaller than can be read.
                    Math.Min(byWidth, Math.Max(byHeight, SmallestScale * style.Small.Value))
                );
                if (scale > best.Scale + 0.01)
                {
                    best = (perRow, scale);
                }
            }
            return best;
        }
    }

    private static void PaintPanel(
        Draft draft,
        FabricLook fabric,
        StripList strips,
        PanelSheet panels,
        int layout,
        Box box,
        double scale
    )
    {
        FigureStyle style = draft.Style;
        bool up = panels.Layouts[layout].Up;
        // What is left over shows first; the pieces lie on it.
        draft.Area(Paths.Of(box), Ink.White, hatch: new HatchFill(Leftover, style.Quiet));
        double across = 0,
            room = up ? box.Height : box.Width;
        foreach (StripRow strip in strips.Strips)
        {
            if (strip.Panel is not { } share || share.Layout != layout)
            {
                continue;
            }
            double high = strip.Height.Inches.ToDouble() * scale;
            for (long n = 0; n < share.Strips; n++)
            {
                PaintPieces(draft, fabric, strip, box, up, across, scale);
                across += high;
                // Cut from side to side: the cuts between strips come first.
                draft.Lines(
                    [
                        up
                            ? (
                                new Spot(box.X + across, box.Y),
                                new Spot(box.X + across, box.Y + room)
                            )
                            : (
                                new Spot(box.X, box.Y + across),
                                new Spot(box.X + room, box.Y + across)
                            ),
                    ],
                    style.Pen(style.Edge)
                );
            }
        }
        draft.Area(Paths.Of(box), stroke: style.Pen(style.Edge) with { Join = StrokeJoin.Miter });
    }

    private static void PaintPieces(
        Draft draft,
        FabricLook fabric,
        StripRow strip,
        Box box,
        bool up,
        double across,
        double scale
    )
    {
        FigureStyle style = draft.Style;
        double along = 0;
        // All cloth before any line: a line between two kinds of piece lies on both.
        foreach (StripPieces pieces in strip.Pieces)
        {
            double length = pieces.Length.Inches.ToDouble() * scale * pieces.PerStrip,
                high = pieces.Height.Inches.ToDouble() * scale;
            draft.Area(Paths.Of(At(along, length, high)), fabric.Color);
            along += length;
        }
        along = 0;
        foreach (StripPieces pieces in strip.Pieces)
        {
            double length = pieces.Length.Inches.ToDouble() * scale,
                high = pieces.Height.Inches.ToDouble() * scale;
            string label = CutNames.Joined(pieces.Cuts, " ");
            var edges = new List<(Spot, Spot)>();
            Box run = At(along, length * pieces.PerStrip, high);
            for (long n = 1; n <= pieces.PerStrip; n++)
            {
                Box piece = At(along + ((n - 1) * length), length, high);
                edges.Add(
                    up
                        ? (new Spot(piece.X, piece.Bottom), new Spot(piece.Right, piece.Bottom))
                        : (new Spot(piece.Right, piece.Y), new Spot(piece.Right, piece.Bottom))
                );
            }
            if (pieces.Height < strip.Height)
            {
                edges.Add(
                    up
                        ? (new Spot(run.Right, run.Y), new Spot(run.Right, run.Bottom))
                        : (new Spot(run.X, run.Bottom), new Spot(run.Right, run.Bottom))
                );
            }
            draft.Lines(
                edges,
                style.Pen(style.Seam, fabric.LetterInk) with
                {
                    Cap = StrokeCap.Butt,
                }
            );
            Box first = At(along, length, high);
            if (
                LabelSize.Width(label, style.Small.Value) + 3 <= first.Width
                && style.Small.Value <= first.Height
            )
            {
                for (long n = 0; n < pieces.PerStrip; n++)
                {
                    draft.Label(
                        label,
                        At(along + (n * length), length, high).Center,
                        style.Small,
                        bold: true,
                        fabric.LetterInk,
                        plate: fabric.Color
                    );
                }
            }
            else
            {
                draft.TryLabel(
                    string.Create(CultureInfo.InvariantCulture, $"{label} × {pieces.PerStrip}"),
                    [run.Center],
                    style.Small,
                    bold: true,
                    fabric.LetterInk,
                    plate: fabric.Color,
                    within: run
                );
            }
            along += length * pieces.PerStrip;
        }

        Box At(double from, double size, double high) =>
            up
                ? new Box(box.X + across, box.Y + from, high, size)
                : new Box(box.X + from, box.Y + across, size, high);
    }

    private static readonly Hatch Leftover = new("leftover", [new HatchLayer.Lines(-45, 3, 0.35)]);
}
