using System.Globalization;
using PatternPress.Booklet.Figures.Drafting;
using PatternPress.Quilting.Resolving;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>
/// The rows of a quilt pulled apart: block rows numbered and each block marked with its key, sashing rows, lettered, between
/// them; on point the rows run diagonally and the corner triangles stand off. Either all blocks are marked or none. The quilt's borders are not shown; they have
/// a figure of their own.
/// </summary>
public static class RowAssembly
{
    private const double Gap = 8;

    // How far one piece of a diagonal is from the next, across and down.
    private static readonly double Diagonal = Math.Sqrt(0.5);

    public static Picture Draw(Quilt quilt, Palette palette, FigureRoom room) =>
        quilt.OnPoint ? DrawDiagonal(quilt, palette, room) : DrawLevel(quilt, palette, room);

    /// <summary>Whether two quilts have the same pieces at the same places of their rows.</summary>
    public static bool AreAlike(Quilt one, Quilt other)
    {
        if (
            one.Places.Length != other.Places.Length
            || one.Sashes.Length != other.Sashes.Length
            || one.Pieces.Length != other.Pieces.Length
            || one.Rows.Length != other.Rows.Length
            || new BlockNames(one).Differ != new BlockNames(other).Differ
        )
        {
            return false;
        }
        List<Band> bands = new Bands(one).All,
            others = new Bands(other).All;
        Spot from = FlatQuilt.ToBox(one.Center).Center,
            to = FlatQuilt.ToBox(other.Center).Center;
        return bands
            .Zip(others)
            .All(pair =>
                pair.First.Row.Kind == pair.Second.Row.Kind
                && pair.First.Patches.Count == pair.Second.Patches.Count
                && pair.First.Patches.Zip(pair.Second.Patches)
                    .All(patch =>
                        patch.First.Fabric == patch.Second.Fabric
                        && patch
                            .First.Placed()
                            .Zip(patch.Second.Placed())
                            .All(corner =>
                                (corner.First - from - (corner.Second - to)).Length < 1e-6
                            )
                    )
            );
    }

    /// <summary>Whether a picture in this room tells which block is which: by their names, where there are several.</summary>
    public static bool TellsBlocks(Quilt quilt, Palette palette, FigureRoom room)
    {
        var names = new BlockNames(quilt);
        var bands = new Bands(quilt);
        double scale = quilt.OnPoint
            ? DiagonalMeasures.Of(bands.Rows, quilt, palette.Style, room).Scale
            : LevelMeasures.Of(bands.All, quilt, palette.Style, room).Scale;
        return !names.Differ || SizeOfNames(quilt, names, palette.Style, scale) is not null;
    }

    private static Points? SizeOfNames(
        Quilt quilt,
        BlockNames names,
        FigureStyle style,
        double scale
    ) =>
        KeyPlate.SizeForAll(
            style,
            [
                .. quilt
                    .Places.Select(place =>
                        (
                            Name: names[place.Block],
                            Width: place.Place.Width.Inches.ToDouble() * scale,
                            Height: place.Place.Height.Inches.ToDouble() * scale
                        )
                    )
                    .Distinct(),
            ]
        );

    /// <summary>How large rows that lie level are drawn.</summary>
    /// <param name="Disc">Radius of the discs with the numbers of the rows.</param>
    /// <param name="Left">What the discs take at the left.</param>
    /// <param name="Gap">Between rows.</param>
    /// <param name="Every">Every which row has room for its number.</param>
    private sealed record LevelMeasures(
        double Scale,
        double Disc,
        double Left,
        double Gap,
        int Every
    )
    {
        public static LevelMeasures Of(
            List<Band> bands,
            Quilt quilt,
            FigureStyle style,
            FigureRoom room
        )
        {
            Box center = FlatQuilt.ToBox(quilt.Center);
            double disc = new Draft(style).DiscRadius(
                    bands.Count.ToString(CultureInfo.InvariantCulture)
                ),
                left = (2 * disc) + 5,
                edge = style.Edge.Value;
            // Many rows: the gaps may take a fifth of the height.
            double gap = Math.Min(
                RowAssembly.Gap,
                room.Height.Value * 0.2 / Math.Max(1, bands.Count - 1)
            );
            double widest = (room.Width.Value - left - edge) / center.Width,
                scale = Math.Min(
                    widest,
                    (room.Height.Value - (gap * (bands.Count - 1)) - style.Small.Value - edge)
                        / center.Height
                );
            // Rows lower than their numbers: the picture grows higher than its room as far as its width allows, and beyond
            // that not every row has a number.
            double apart = Apart(bands, scale, gap),
                least = (2 * disc) + 1;
            if (apart < least)
            {
                scale = Math.Min(widest, scale * (least - gap) / Math.Max(apart - gap, 0.1));
                apart = Apart(bands, scale, gap);
            }
            int every = Math.Max(1, (int)Math.Ceiling((least / Math.Max(apart, 0.1)) - 1e-6));
            return new(scale, disc, left, gap, every);
        }
    }

    private static Picture DrawLevel(Quilt quilt, Palette palette, FigureRoom room)
    {
        FigureStyle style = palette.Style;
        var draft = new Draft(style);
        var flat = new Bands(quilt);
        Box center = FlatQuilt.ToBox(quilt.Center);
        double edge = style.Edge.Value;
        (double scale, double disc, double left, double gap, int every) = LevelMeasures.Of(
            flat.All,
            quilt,
            style,
            room
        );
        var names = new BlockNames(quilt);
        Points? size = SizeOfNames(quilt, names, style, scale);
        // A letter may be higher than the first or the last row of sashing beside which it stands.
        double outer = flat.All.Exists(band => band.Row.Kind == LayoutRowKind.Sashing)
            ? style.Small.Value / 2
            : 0;
        double y = (edge / 2) + outer;
        int sashing = 0,
            numbered = 0;
        foreach (Band band in flat.All)
        {
            var by = new Spot(left + (edge / 2) - (center.X * scale), y - (band.Box.Y * scale));
            PaintBand(draft, quilt, band, palette, names, size, scale, by);
            if (band.Row.Kind == LayoutRowKind.Blocks)
            {
                if (numbered++ % every == 0)
                {
                    draft.Disc(
                        Number(band.Row),
                        new Spot(disc + 0.5, y + (band.Box.Height * scale / 2))
                    );
                }
            }
            else
            {
                // Rows of sashing are lettered in gray, between the numbers of the rows of blocks.
                draft.Label(
                    FigureWords.LetterOf(sashing++),
                    new Spot(disc + 0.5, y + (band.Box.Height * scale / 2)),
                    style.Small
                );
            }
            y += (band.Box.Height * scale) + gap;
        }
        return new(
            draft.Finish(left + (center.Width * scale) + edge, y - gap + (edge / 2) + outer),
            FigureWords.RowAssembly(quilt)
        );
    }

    /// <summary>The least distance between the middles of two rows of blocks, one after the other.</summary>
    private static double Apart(List<Band> bands, double scale, double gap)
    {
        double least = double.PositiveInfinity,
            since = double.NaN;
        foreach (Band band in bands)
        {
            double height = band.Box.Height * scale;
            if (band.Row.Kind == LayoutRowKind.Blocks)
            {
                least = double.IsNaN(since) ? least : Math.Min(least, since + (height / 2));
                since = (height / 2) + gap;
            }
            else
            {
                since += height + gap;
            }
        }
        return least;
    }

    // A corner triangle stands farther off than the rows from one another.
    private const double FromCorner = 1.5;

    /// <summary>How large rows on point are drawn.</summary>
    /// <param name="Disc">Radius of the discs with the numbers of the rows.</param>
    /// <param name="Step">How far a row is moved across and down from the one before.</param>
    /// <param name="Side">What the discs take at each side.</param>
    private sealed record DiagonalMeasures(double Scale, double Disc, double Step, double Side)
    {
        public static DiagonalMeasures Of(
            List<Band> rows,
            Quilt quilt,
            FigureStyle style,
            FigureRoom room
        )
        {
            Box center = FlatQuilt.ToBox(quilt.Center);
            double disc = new Draft(style).DiscRadius(
                rows.Count.ToString(CultureInfo.InvariantCulture)
            );
            // The rows move apart to the lower right; together that may take a fifth of the room.
            double step = Math.Min(
                Gap * Diagonal,
                Math.Min(room.Width.Value, room.Height.Value) * 0.2 / Math.Max(1, rows.Count - 1)
            );
            double side = (2 * disc) + 4 + style.Edge.Value,
                taken = (step * (rows.Count - 1)) + (2 * step * FromCorner) + (2 * side);
            double scale = Math.Min(
                (room.Width.Value - taken) / center.Width,
                (room.Height.Value - taken) / center.Height
            );
            return new(scale, disc, step, side);
        }
    }

    private static Picture DrawDiagonal(Quilt quilt, Palette palette, FigureRoom room)
    {
        FigureStyle style = palette.Style;
        var draft = new Draft(style);
        var flat = new Bands(quilt);
        Box center = FlatQuilt.ToBox(quilt.Center);
        List<Band> rows = flat.Rows;
        List<Band> corners = [.. flat.All.Where(b => b.Row.Kind == LayoutRowKind.Corner)];
        (double scale, double disc, double step, double side) = DiagonalMeasures.Of(
            rows,
            quilt,
            style,
            room
        );
        double spread = step * (rows.Count - 1),
            corner = step * FromCorner;
        var names = new BlockNames(quilt);
        Points? size = SizeOfNames(quilt, names, style, scale);
        var start = new Spot(
            side + corner - (center.X * scale),
            side + corner - (center.Y * scale)
        );
        // Nothing reaches above the first row's corner triangle or to its left but the numbers.
        for (int i = 0; i < rows.Count; i++)
        {
            Spot by = start + new Spot(step * i, step * i);
            PaintBand(draft, quilt, rows[i], palette, names, size, scale, by);
        }
        int lowest = RowOf(rows, center, upper: false),
            highest = RowOf(rows, center, upper: true);
        foreach (Band band in corners)
        {
            Spot middle = band.Box.Center - center.Center;
            bool left = middle.X < 0,
                upper = middle.Y < 0;
            int with =
                left == upper ? (upper ? 0 : rows.Count - 1)
                : upper ? highest
                : lowest;
            Spot by =
                start
                + new Spot(step * with, step * with)
                + new Spot(left ? -corner : corner, upper ? -corner : corner);
            PaintBand(draft, quilt, band, palette, names, size, scale, by);
        }
        int sashing = 0;
        for (int i = 0; i < rows.Count; i++)
        {
            Spot by = start + new Spot(step * i, step * i);
            Spot end = LowEnd(rows[i], quilt);
            if (rows[i].Row.Kind == LayoutRowKind.Sashing)
            {
                double near = disc + 1;
                draft.Label(
                    FigureWords.LetterOf(sashing++),
                    (end * scale) + by + new Spot(-near * Diagonal, near * Diagonal),
                    style.Small
                );
                continue;
            }
            double away = disc + 2;
            if (i == lowest)
            {
                end += LowCorner(corners, center);
                away += corner;
            }
            draft.Disc(
                Number(rows[i].Row),
                (end * scale) + by + new Spot(-away * Diagonal, away * Diagonal)
            );
        }
        double across = (center.Width * scale) + spread + (2 * (corner + side)),
            down = (center.Height * scale) + spread + (2 * (corner + side));
        return new(draft.Finish(across, down), FigureWords.RowAssembly(quilt));
    }

    private static string Number(LayoutRow row) =>
        (row.Number + 1).ToString(CultureInfo.InvariantCulture);

    // The row that reaches into the lower left or the upper right corner.
    private static int RowOf(List<Band> rows, Box center, bool upper)
    {
        var at = new Spot(upper ? center.Right : center.X, upper ? center.Y : center.Bottom);
        int best = 0;
        double least = double.MaxValue;
        for (int i = 0; i < rows.Count; i++)
        {
            foreach (FlatQuilt.FlatPatch patch in rows[i].Patches)
            {
                double far = (Box.Of(patch.Placed()).Center - at).Length;
                if (rows[i].Row.Kind == LayoutRowKind.Blocks && far < least)
                {
                    (best, least) = (i, far);
                }
            }
        }
        return best;
    }

    // From the end of the row to the quilt's corner, over the corner triangle.
    private static Spot LowCorner(List<Band> corners, Box center)
    {
        Band low = corners
            .OrderBy(b => b.Box.Center.X - center.X + (center.Bottom - b.Box.Center.Y))
            .First();
        double depth = low.Box.Width / 2;
        return new Spot(-depth, depth);
    }

    // The middle of the lower left end of a row: halfway across the row, as far out as it reaches.
    private static Spot LowEnd(Band band, Quilt quilt)
    {
        double reachOut = double.MaxValue,
            from = double.MaxValue,
            to = double.MinValue;
        foreach (FlatQuilt.FlatPatch patch in band.Patches)
        {
            foreach (Spot corner in patch.Placed())
            {
                reachOut = Math.Min(reachOut, corner.X - corner.Y);
                if (band.Row.Kind == LayoutRowKind.Sashing)
                {
                    from = Math.Min(from, corner.X + corner.Y);
                    to = Math.Max(to, corner.X + corner.Y);
                }
            }
        }
        foreach (LayoutPart part in band.Row.Parts.Where(p => p.Kind == LayoutPartKind.Block))
        {
            foreach (Spot corner in FlatQuilt.OutlineOf(quilt.Places[part.Index]))
            {
                from = Math.Min(from, corner.X + corner.Y);
                to = Math.Max(to, corner.X + corner.Y);
            }
        }
        // The triangle at the end is halfway across the row only half as far out as its point.
        double half = (to - from) / 2;
        double reach =
            band.Row.Parts[0].Kind == LayoutPartKind.SettingPiece ? reachOut + half : reachOut;
        double sum = (from + to) / 2;
        return new Spot((sum + reach) / 2, (sum - reach) / 2);
    }

    /// <summary>A row with all its patches, and the edges of its pieces.</summary>
    private sealed record Band(
        LayoutRow Row,
        Box Box,
        List<Spot[]> Pieces,
        List<FlatQuilt.FlatPatch> Patches
    );

    private sealed class Bands
    {
        public Bands(Quilt quilt)
        {
            var flat = FlatQuilt.Of(quilt);
            var byBlock = new List<FlatQuilt.FlatPatch>[quilt.Places.Length];
            for (int i = 0; i < byBlock.Length; i++)
            {
                byBlock[i] = [];
            }
            foreach (FlatQuilt.FlatPatch patch in flat.Patches)
            {
                if (patch.Place >= 0)
                {
                    byBlock[patch.Place].Add(patch);
                }
            }
            foreach (LayoutRow row in quilt.Rows)
            {
                var pieces = new List<Spot[]>();
                var patches = new List<FlatQuilt.FlatPatch>();
                foreach (LayoutPart part in row.Parts)
                {
                    Spot[] outline = part.Kind switch
                    {
                        LayoutPartKind.Block => FlatQuilt.OutlineOf(quilt.Places[part.Index]),
                        LayoutPartKind.Sash => FlatQuilt.OutlineOf(quilt.Sashes[part.Index]),
                        _ => FlatQuilt.ToSpots(quilt.Pieces[part.Index].Shape),
                    };
                    pieces.Add(outline);
                    if (part.Kind == LayoutPartKind.Block)
                    {
                        patches.AddRange(byBlock[part.Index]);
                    }
                    else
                    {
                        string fabric =
                            part.Kind == LayoutPartKind.Sash
                                ? quilt.Sashes[part.Index].Fabric
                                : quilt.Pieces[part.Index].Fabric;
                        patches.Add(new(outline, default, fabric, FlatQuilt.Sashing));
                    }
                }
                Box box = pieces.Select(p => Box.Of(p)).Aggregate((a, b) => a.With(b));
                All.Add(new Band(row, box, pieces, patches));
            }
        }

        public List<Band> All { get; } = [];

        /// <summary>All but the corner triangles.</summary>
        public List<Band> Rows => All.FindAll(band => band.Row.Kind != LayoutRowKind.Corner);
    }

    private static void PaintBand(
        Draft draft,
        Quilt quilt,
        Band band,
        Palette palette,
        BlockNames names,
        Points? sizeOfNames,
        double scale,
        Spot by
    )
    {
        FigureStyle style = draft.Style;
        foreach (
            var same in band.Patches.GroupBy(p => (p.Layer, p.Fabric)).OrderBy(g => g.Key.Layer)
        )
        {
            FabricLook look = palette[same.Key.Fabric];
            var lines = new SeamLines();
            foreach (FlatQuilt.FlatPatch patch in same)
            {
                lines.Add(patch.Corners, patch.By);
            }
            draft.Area(
                Paths.Closed(lines.Outline(), scale, by),
                look.Color,
                hatch: style.IsBlackOnly ? look.Hatch : null
            );
        }
        var seams = new SeamLines();
        foreach (FlatQuilt.FlatPatch patch in band.Patches)
        {
            seams.Add(patch.Corners, patch.By);
        }
        draft.Area(
            Paths.Lines(seams.Seams(), scale, by),
            stroke: style.Pen(style.Hair, style.Quiet)
        );
        var joins = new SeamLines();
        foreach (Spot[] piece in band.Pieces)
        {
            joins.Add(piece);
        }
        draft.Area(
            Paths.Lines(joins.Seams(), scale, by),
            stroke: style.Pen(style.Edge) with
            {
                Cap = StrokeCap.Square,
            }
        );
        // Where all blocks are alike a name says nothing and hides the patchwork.
        if (!names.Differ || sizeOfNames is null)
        {
            return;
        }
        foreach (LayoutPart part in band.Row.Parts)
        {
            if (part.Kind != LayoutPartKind.Block)
            {
                continue;
            }
            BlockPlace place = quilt.Places[part.Index];
            Box box = FlatQuilt.ToBox(place.Place);
            KeyPlate.TryPaint(
                draft,
                names[place.Block],
                (FlatQuilt.CenterOf(place) * scale) + by,
                box.Width * scale,
                box.Height * scale,
                corner: !place.Frame.OnPoint,
                size: sizeOfNames
            );
        }
    }
}
