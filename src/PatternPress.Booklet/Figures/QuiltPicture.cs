using PatternPress.Booklet.Figures.Drafting;
using PatternPress.Quilting.Resolving;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>
/// The whole quilt of one size in colour, its prints as light textures, bound at the edge. All patches of a fabric
/// are one path, and seams that run on are one line, so that even a cover stays small.
/// </summary>
public static class QuiltPicture
{
    /// <summary>Finished width of a binding in inches (common practice, no source).</summary>
    private const double BindingInches = 0.375;

    /// <summary>The binding of a small picture is at least this wide, in points.</summary>
    private const double LeastRim = 0.9;

    /// <summary>Seams closer than this on paper, in points, would turn the picture grey; then only blocks are outlined.</summary>
    private const double LeastSeamGap = 3.2;

    public static Picture Draw(Quilt quilt, Palette palette, FigureRoom room)
    {
        FigureStyle style = palette.Style;
        var flat = FlatQuilt.Of(quilt);
        string? binding = quilt.Size.Quilt.Binding?.Fabric.Value;
        double edge = style.Bold.Value;
        // The binding folds over the edge: the quilt grows by its width less the seam it covers.
        double bound = binding is null ? 0 : BindingInches;
        double rim = 0;
        double scale = Fit(bound, 0);
        if (binding is not null)
        {
            rim = bound * scale;
            if (rim < LeastRim)
            {
                rim = LeastRim;
                scale = Fit(0, rim);
            }
        }
        var by = new Spot((edge / 2) + rim, (edge / 2) + rim);
        var quiltBox = new Box(by.X, by.Y, flat.Width * scale, flat.Height * scale);
        var draft = new Draft(style);
        if (binding is not null)
        {
            draft.Area(Paths.Of(quiltBox.Grown(rim)), palette[binding].Color);
        }
        PaintFabrics(draft, flat, palette, scale, by);
        DrawSeams(draft, flat, scale, by);
        if (binding is not null)
        {
            draft.Area(Paths.Of(quiltBox), stroke: style.Pen(style.Hair, style.Quiet));
        }
        draft.Area(
            Paths.Of(quiltBox.Grown(rim)),
            stroke: style.Pen(style.Edge) with
            {
                Join = StrokeJoin.Miter,
            }
        );
        Box whole = quiltBox.Grown(rim + (edge / 2));
        return new(draft.Finish(whole.Right, whole.Bottom), FigureWords.QuiltPicture(quilt));

        double Fit(double inches, double points) =>
            Math.Min(
                (room.Width.Value - edge - (2 * points)) / (flat.Width + (2 * inches)),
                (room.Height.Value - edge - (2 * points)) / (flat.Height + (2 * inches))
            );
    }

    /// <summary>Every fabric as one flat path with its print.</summary>
    internal static void PaintFabrics(
        Draft draft,
        FlatQuilt flat,
        Palette palette,
        double scale,
        Spot by
    )
    {
        foreach (
            (string fabric, int degrees, VectorPath path) in PrintPaths(flat, palette, scale, by)
        )
        {
            if (draft.Style.IsBlackOnly)
            {
                // Hatches take the place of colours.
                draft.Area(path, palette[fabric].Color, hatch: palette[fabric].Hatch);
            }
            else
            {
                ClothPainter.Paint(draft, path, palette[fabric], scale, by, degrees);
            }
        }
    }

    /// <summary>The outline of all patches of each fabric together, in the order of the palette.</summary>
    internal static IEnumerable<(string Fabric, VectorPath Path)> FabricPaths(
        FlatQuilt flat,
        Palette palette,
        double scale,
        Spot by
    ) => Outlines(flat, palette, scale, by, _ => 0).Select(o => (o.Fabric, o.Path));

    /// <summary>The same, apart where the print lies another way.</summary>
    private static IEnumerable<(string Fabric, int Degrees, VectorPath Path)> PrintPaths(
        FlatQuilt flat,
        Palette palette,
        double scale,
        Spot by
    ) => Outlines(flat, palette, scale, by, p => palette[p.Fabric].PrintDegrees(p.Print));

    private static IEnumerable<(string Fabric, int Degrees, VectorPath Path)> Outlines(
        FlatQuilt flat,
        Palette palette,
        double scale,
        Spot by,
        Func<FlatQuilt.FlatPatch, int> degreesOf
    ) =>
        flat
            .Patches.GroupBy(patch => patch.Layer)
            .OrderBy(layer => layer.Key)
            .SelectMany(layer => Outlines(layer, palette, scale, by, degreesOf));

    // Of patches that lie beside each other.
    private static IEnumerable<(string Fabric, int Degrees, VectorPath Path)> Outlines(
        IEnumerable<FlatQuilt.FlatPatch> patches,
        Palette palette,
        double scale,
        Spot by,
        Func<FlatQuilt.FlatPatch, int> degreesOf
    )
    {
        var lines = new Dictionary<string, SortedDictionary<int, SeamLines>>();
        var others = new List<string>();
        foreach (FlatQuilt.FlatPatch patch in patches)
        {
            if (!lines.TryGetValue(patch.Fabric, out SortedDictionary<int, SeamLines>? ways))
            {
                lines.Add(patch.Fabric, ways = []);
                others.Add(patch.Fabric);
            }
            int degrees = degreesOf(patch);
            if (!ways.TryGetValue(degrees, out SeamLines? of))
            {
                ways.Add(degrees, of = new SeamLines());
            }
            of.Add(patch.Corners, patch.By);
        }
        IEnumerable<string> known = palette.Looks.Select(look => look.Key).Distinct();
        foreach (string fabric in known.Concat(others).Distinct())
        {
            if (lines.TryGetValue(fabric, out SortedDictionary<int, SeamLines>? ways))
            {
                foreach ((int degrees, SeamLines of) in ways)
                {
                    yield return (fabric, degrees, Paths.Closed(of.Outline(), scale, by));
                }
            }
        }
    }

    private static void DrawSeams(Draft draft, FlatQuilt flat, double scale, Spot by)
    {
        double least = double.MaxValue;
        foreach (FlatQuilt.FlatPatch patch in flat.Patches)
        {
            Box box = Box.Of(patch.Corners);
            least = Math.Min(least, Math.Min(box.Width, box.Height));
        }
        if (least * scale < LeastSeamGap)
        {
            return;
        }
        var seams = new SeamLines();
        foreach (FlatQuilt.FlatPatch patch in flat.Patches)
        {
            seams.Add(patch.Corners, patch.By);
        }
        draft.Area(
            Paths.Lines(seams.Seams(), scale, by),
            stroke: draft.Style.Pen(draft.Style.Hair, draft.Style.Quiet) with
            {
                Cap = StrokeCap.Butt,
            }
        );
    }
}
