using System.Globalization;
using PatternPress.Booklet.Figures.Drafting;
using PatternPress.Quilting.Resolving;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>
/// The rows of a quilt pulled apart: block rows numbered and each block marked with its key, sashing rows, lettered, between
/// them. The quilt's borders are not shown; they have a figure of their own.
/// </summary>
public static class RowAssembly
{
    private const double Gap = 8;

    public static Picture Draw(Quilt quilt, Palette palette, FigureRoom room)
    {
        FigureStyle style = palette.Style;
        var draft = new Draft(style);
        List<Band> bands = BandsOf(quilt);
        Box center = FlatQuilt.ToBox(quilt.Center);
        double disc = draft.DiscRadius(bands.Count.ToString(CultureInfo.InvariantCulture)),
            left = (2 * disc) + 5,
            edge = style.Edge.Value;
        // Many rows: the gaps may take a fifth of the height.
        double gap = Math.Min(Gap, room.Height.Value * 0.2 / Math.Max(1, bands.Count - 1));
        double scale = Math.Min(
            (room.Width.Value - left - edge) / center.Width,
            (room.Height.Value - (gap * (bands.Count - 1)) - style.Small.Value - edge)
                / center.Height
        );
        var flat = FlatQuilt.Of(quilt);
        // A letter may be higher than the first or the last row of sashing beside which it stands.
        double outer = bands.Exists(band => band.Row is null) ? style.Small.Value / 2 : 0;
        double y = (edge / 2) + outer;
        int sashing = 0;
        foreach (Band band in bands)
        {
            var by = new Spot(left + (edge / 2) - (center.X * scale), y - (band.Box.Y * scale));
            PaintBand(draft, quilt, flat, band, palette, scale, by);
            if (band.Row is { } row)
            {
                draft.Disc(
                    (row + 1).ToString(CultureInfo.InvariantCulture),
                    new Spot(disc + 0.5, y + (band.Box.Height * scale / 2))
                );
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

    /// <summary>A row of blocks with the strips between them, or a sashing row.</summary>
    /// <param name="Row">Null for a sashing row.</param>
    private sealed record Band(int? Row, Box Box, List<Box> Pieces, List<int> Places);

    private static List<Band> BandsOf(Quilt quilt)
    {
        var bands = new List<Band>();
        foreach (var row in quilt.Places.Select((place, i) => (place, i)).GroupBy(p => p.place.Row))
        {
            List<Box> pieces = [.. row.Select(p => FlatQuilt.ToBox(p.place.Place))];
            pieces.AddRange(
                quilt
                    .Sashes.Where(s => s.Kind == SashKind.Upright && s.Row == row.Key)
                    .Select(s => FlatQuilt.ToBox(s.Place))
            );
            bands.Add(new(row.Key, Around(pieces), pieces, [.. row.Select(p => p.i)]));
        }
        foreach (
            var row in quilt.Sashes.Where(s => s.Kind != SashKind.Upright).GroupBy(s => s.Place.Y)
        )
        {
            List<Box> pieces = [.. row.Select(s => FlatQuilt.ToBox(s.Place))];
            bands.Add(new(null, Around(pieces), pieces, []));
        }
        bands.Sort((a, b) => a.Box.Y.CompareTo(b.Box.Y));
        return bands;
    }

    private static Box Around(List<Box> boxes) => boxes.Aggregate((a, b) => a.With(b));

    private static void PaintBand(
        Draft draft,
        Quilt quilt,
        FlatQuilt flat,
        Band band,
        Palette palette,
        double scale,
        Spot by
    )
    {
        FigureStyle style = draft.Style;
        const double near = 1e-6;
        Box within = band.Box.Grown(near);
        FlatQuilt.FlatPatch[] patches =
        [
            .. flat.Patches.Where(p =>
                p.Place != FlatQuilt.Border && within.Holds(Box.Of(p.Corners).MovedBy(p.By))
            ),
        ];
        foreach (var same in patches.GroupBy(p => p.Fabric))
        {
            FabricLook look = palette[same.Key];
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
        foreach (FlatQuilt.FlatPatch patch in patches)
        {
            seams.Add(patch.Corners, patch.By);
        }
        draft.Area(
            Paths.Lines(seams.Seams(), scale, by),
            stroke: style.Pen(style.Hair, style.Quiet)
        );
        var joins = new SeamLines();
        foreach (Box piece in band.Pieces)
        {
            joins.Add(piece.Corners());
        }
        draft.Area(
            Paths.Lines(joins.Seams(), scale, by),
            stroke: style.Pen(style.Edge) with
            {
                Cap = StrokeCap.Square,
            }
        );
        // Where all blocks are alike a name says nothing and hides the patchwork.
        bool named = quilt.Places.Select(p => p.Block.Key).Distinct().Skip(1).Any();
        foreach (int i in named ? band.Places : [])
        {
            BlockPlace place = quilt.Places[i];
            Box box = FlatQuilt.ToBox(place.Place);
            KeyPlate.TryPaint(
                draft,
                place.Block.Key,
                (box.Center * scale) + by,
                box.Width * scale,
                box.Height * scale,
                corner: true
            );
        }
    }
}
