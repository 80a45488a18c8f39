using System.Collections.Immutable;
using PatternPress.Booklet.Figures.Drafting;
using PatternPress.Quilting.Resolving;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>What a placement chart marks.</summary>
public enum PlacementDetail
{
    /// <summary>Patches where nearly all of them are large enough for a letter, else blocks.</summary>
    Fitting,

    /// <summary>Every patch carries its fabric's letter.</summary>
    Patches,

    /// <summary>Every block carries its coloring's key.</summary>
    Blocks,
}

/// <summary>
/// One size drawn large to sew from: which fabric or which block goes where, with the numbers of rows and columns at the
/// edges and a legend of the fabrics below. Letters and hatches carry the meaning; colour only helps.
/// </summary>
public static class PlacementChart
{
    /// <summary>The chart is drawn by patches if at least this share of them has room for a letter.</summary>
    private const double EnoughLetters = 0.9;

    private const double LegendGap = 10;

    public static Picture Draw(
        Quilt quilt,
        Palette palette,
        FigureRoom room,
        PlacementDetail detail = PlacementDetail.Fitting,
        Func<string, string>? uses = null
    )
    {
        FigureStyle style = palette.Style;
        var flat = FlatQuilt.Of(quilt);
        ImmutableArray<string> fabrics = FabricLegend.FabricsOf(quilt);
        double legend = FabricLegend.HeightFor(fabrics, palette, room.Width.Value, uses);
        double gutterX =
                LabelSize.Width(
                    Digits(quilt.Places.Select(p => p.Row).Concat(quilt.Pieces.Select(p => p.Row))),
                    style.Large.Value
                ) + 6,
            below = quilt.OnPoint ? (style.Large.Value * LabelSize.Capital) + 6 : 0,
            gutterY = (style.Large.Value * LabelSize.Capital) + 6,
            edge = style.Bold.Value / 2;
        double scale = Math.Min(
            (room.Width.Value - (2 * gutterX) - (2 * edge)) / flat.Width,
            (room.Height.Value - legend - LegendGap - gutterY - below - (2 * edge)) / flat.Height
        );
        double width = flat.Width * scale,
            height = flat.Height * scale;
        double drawn = width + (2 * (gutterX + edge));
        var by = new Spot(gutterX + edge, gutterY + edge);
        // A narrow quilt still has the whole width for its legend.
        double whole = Math.Max(drawn, room.Width.Value);
        by = by with { X = by.X + ((whole - drawn) / 2) };
        var letters = new PatchLetters(style, scale);
        bool several = new BlockNames(quilt).Differ;
        // Blocks of several colorings are found by their names; then letters must leave room for them.
        bool patches =
            detail == PlacementDetail.Patches
            || (
                detail == PlacementDetail.Fitting
                && letters.ShareWithRoom(flat.Patches, several ? style.Medium : style.Small)
                    >= EnoughLetters
            );
        var draft = new Draft(style);
        if (patches)
        {
            PaintPatches(draft, flat, palette, letters, scale, by);
            if (several && detail == PlacementDetail.Fitting)
            {
                NameBlocks(draft, quilt, scale, by);
            }
        }
        else
        {
            PaintBlocks(draft, quilt, flat, palette, letters, scale, by, several);
        }
        var box = new Box(by.X, by.Y, width, height);
        draft.Area(Paths.Of(box), stroke: style.Pen(style.Bold) with { Join = StrokeJoin.Miter });
        // A single block is found without numbers.
        if (quilt.Places.Length > 1)
        {
            NumberRows(draft, quilt, box, scale);
        }
        double bottom = box.Bottom + edge + below;
        if (legend > 0)
        {
            FabricLegend.Paint(
                draft,
                fabrics,
                palette,
                new Box(0, bottom + LegendGap, whole, legend),
                uses
            );
            bottom += LegendGap + legend;
        }
        return new(draft.Finish(whole, bottom), FigureWords.PlacementChart(quilt, patches));
    }

    private static void PaintPatches(
        Draft draft,
        FlatQuilt flat,
        Palette palette,
        PatchLetters letters,
        double scale,
        Spot by
    )
    {
        FigureStyle style = draft.Style;
        foreach (
            (string fabric, VectorPath path) in QuiltPicture.FabricPaths(flat, palette, scale, by)
        )
        {
            FabricLook look = palette[fabric];
            draft.Area(path, look.Color, hatch: look.Hatch);
        }
        var seams = new SeamLines();
        foreach (FlatQuilt.FlatPatch patch in flat.Patches)
        {
            seams.Add(patch.Corners, patch.By);
        }
        draft.Area(Paths.Lines(seams.Seams(), scale, by), stroke: style.Pen(style.Seam));
        Points size = letters.SizeFor(flat.Patches);
        FabricLetters.Write(draft, flat.Patches, letters, size, palette, scale, by);
    }

    private static void PaintBlocks(
        Draft draft,
        Quilt quilt,
        FlatQuilt flat,
        Palette palette,
        PatchLetters letters,
        double scale,
        Spot by,
        bool named
    )
    {
        FigureStyle style = draft.Style;
        foreach (
            (string fabric, VectorPath path) in QuiltPicture.FabricPaths(flat, palette, scale, by)
        )
        {
            FabricLook look = palette[fabric];
            draft.Area(path, look.Color, hatch: look.Hatch);
        }
        var seams = new SeamLines();
        foreach (FlatQuilt.FlatPatch patch in flat.Patches)
        {
            seams.Add(patch.Corners, patch.By);
        }
        draft.Area(
            Paths.Lines(seams.Seams(), scale, by),
            stroke: style.Pen(style.Hair, style.Quiet)
        );
        var blocks = new SeamLines();
        foreach (BlockPlace place in quilt.AllBlocks())
        {
            blocks.Add(FlatQuilt.OutlineOf(place));
        }
        draft.Area(Paths.Lines(blocks.Seams(), scale, by), stroke: style.Pen(style.Edge));
        Points size = style.Medium;
        // Blocks that have names are lettered in the key; else the letters that have room stand in the chart.
        FlatQuilt.FlatPatch[] lettered = [.. flat.Patches.Where(p => !named || p.Place < 0)];
        FabricLetters.Write(draft, lettered, letters, size, palette, scale, by);
        if (named)
        {
            NameBlocks(draft, quilt, scale, by);
        }
    }

    // In a corner of the block, where most blocks have their ground, or beside it where letters stand there.
    private static void NameBlocks(Draft draft, Quilt quilt, double scale, Spot by)
    {
        var names = new BlockNames(quilt);
        foreach (BlockPlace place in quilt.Places)
        {
            Box box = FlatQuilt.RoomIn(place);
            KeyPlate.TryPaint(
                draft,
                names[place.Block],
                (FlatQuilt.CenterOf(place) * scale) + by,
                box.Width * scale,
                box.Height * scale,
                aside: true,
                corner: true
            );
        }
    }

    /// <summary>Row numbers left and right, column numbers above.</summary>
    internal static void NumberRows(Draft draft, Quilt quilt, Box quiltBox, double scale)
    {
        FigureStyle style = draft.Style;
        double size = style.Large.Value;
        double away = 3;
        if (quilt.OnPoint)
        {
            NumberDiagonals(draft, quilt, quiltBox, scale);
            return;
        }
        if (quilt.Order is not null)
        {
            // Blocks of several sizes lie in no rows.
            return;
        }
        foreach (var row in quilt.Places.GroupBy(p => p.Row))
        {
            Box box = FlatQuilt.ToBox(row.First().Place);
            string text = Number(row.Key);
            double half = LabelSize.Width(text, size) / 2,
                y = quiltBox.Y + (box.Center.Y * scale);
            draft.TryLabel(text, [new(quiltBox.X - away - half, y)], style.Large);
            draft.TryLabel(text, [new(quiltBox.Right + away + half, y)], style.Large);
        }
        foreach (var row in quilt.Pieces.Where(p => p.IsPatch).GroupBy(p => p.Row))
        {
            string text = Number(row.Key);
            double half = LabelSize.Width(text, size) / 2,
                y = quiltBox.Y + (FlatQuilt.ToBox(row.First().Shape.Bounds).Center.Y * scale);
            draft.TryLabel(text, [new(quiltBox.X - away - half, y)], style.Large);
            draft.TryLabel(text, [new(quiltBox.Right + away + half, y)], style.Large);
        }
        foreach (var column in quilt.Places.GroupBy(p => p.Column))
        {
            Box box = FlatQuilt.ToBox(column.First().Place);
            double x = quiltBox.X + (box.Center.X * scale),
                y = quiltBox.Y - away - (size * LabelSize.Capital / 2);
            draft.TryLabel(Number(column.Key), [new(x, y)], style.Large);
        }
    }

    // The rows of a quilt on point run from the lower left to the upper right: each has its number where it ends at the
    // left or lower edge, and again at the upper or right edge.
    private static void NumberDiagonals(Draft draft, Quilt quilt, Box quiltBox, double scale)
    {
        FigureStyle style = draft.Style;
        double size = style.Large.Value,
            away = 3;
        Box field = FlatQuilt.ToBox(quilt.Center);
        foreach (LayoutRow row in quilt.Rows)
        {
            if (row.Kind != LayoutRowKind.Blocks)
            {
                continue;
            }
            BlockPlace[] blocks =
            [
                .. row
                    .Parts.Where(p => p.Kind == LayoutPartKind.Block)
                    .Select(p => quilt.Places[p.Index]),
            ];
            string text = Number(row.Number);
            double half = LabelSize.Width(text, size) / 2,
                high = size * LabelSize.Capital / 2;
            Spot first = FlatQuilt.CenterOf(blocks[0]),
                last = FlatQuilt.CenterOf(blocks[^1]);
            // Where the middle of the row, run on, meets the edge of the blocks.
            double down = Math.Min(first.X - field.X, field.Bottom - first.Y),
                up = Math.Min(field.Right - last.X, last.Y - field.Y);
            Spot low = new(first.X - down, first.Y + down),
                high2 = new(last.X + up, last.Y - up);
            bool left = first.X - field.X <= field.Bottom - first.Y,
                right = field.Right - last.X <= last.Y - field.Y;
            double x = quiltBox.X + (low.X * scale),
                y = quiltBox.Y + (low.Y * scale);
            draft.TryLabel(
                text,
                [left ? new(quiltBox.X - away - half, y) : new(x, quiltBox.Bottom + away + high)],
                style.Large
            );
            x = quiltBox.X + (high2.X * scale);
            y = quiltBox.Y + (high2.Y * scale);
            draft.TryLabel(
                text,
                [right ? new(quiltBox.Right + away + half, y) : new(x, quiltBox.Y - away - high)],
                style.Large
            );
        }
    }

    private static string Number(int index) =>
        (index + 1).ToString(System.Globalization.CultureInfo.InvariantCulture);

    private static string Digits(IEnumerable<int> indices) =>
        new('0', Number(indices.DefaultIfEmpty().Max()).Length);
}
