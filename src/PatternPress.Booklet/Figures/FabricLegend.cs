using System.Collections.Immutable;
using PatternPress.Booklet.Figures.Drafting;
using PatternPress.Quilting.Resolving;

namespace PatternPress.Booklet.Figures;

/// <summary>A strip of swatches with letters and names: what the letters and hatches of a chart stand for.</summary>
public static class FabricLegend
{
    private const double SwatchWidth = 30;
    private const double SwatchHeight = 11;
    private const double Gap = 4;
    private const double RowHeight = 15;

    /// <param name="fabrics">Fabric keys in the order they are listed.</param>
    public static Picture Draw(ImmutableArray<string> fabrics, Palette palette, FigureRoom room)
    {
        var draft = new Draft(palette.Style);
        double width = room.Width.Value;
        double height = HeightFor(fabrics, palette, width);
        Paint(draft, fabrics, palette, new Box(0, 0, width, height));
        return new(
            draft.Finish(width, Math.Max(1, height)),
            FigureWords.Legend(fabrics.Select(key => palette[key]))
        );
    }

    /// <summary>The fabrics of a quilt's top and its binding, in the order of the pattern.</summary>
    public static ImmutableArray<string> FabricsOf(Quilt quilt)
    {
        var used = new HashSet<string>();
        foreach (BlockPlace place in quilt.AllBlocks())
        {
            used.UnionWith(
                place.Block.Block is null
                    ? place.Block.Coloring.Fabrics.Values
                    : place.Block.Block.Units.SelectMany(unit => place.Block.FabricsOf(unit))
            );
        }
        used.UnionWith(quilt.Sashes.Select(s => s.Fabric));
        used.UnionWith(quilt.Pieces.Select(p => p.Fabric));
        used.UnionWith(quilt.Borders.SelectMany(b => b.Pieces).Select(p => p.Fabric));
        if (quilt.Size.Quilt.Binding is { } binding)
        {
            used.Add(binding.Fabric.Value);
        }
        return [.. quilt.Pattern.Fabrics.Select(f => f.Key).Where(used.Contains)];
    }

    internal static double HeightFor(
        ImmutableArray<string> fabrics,
        Palette palette,
        double width,
        Func<string, string>? uses = null
    )
    {
        int columns = ColumnsFor(fabrics, palette, width, uses);
        int rows = (fabrics.Length + columns - 1) / columns;
        double enlarged = palette.Style.Enlarged;
        return rows == 0 ? 0 : (((rows - 1) * RowHeight) + SwatchHeight + 1) * enlarged;
    }

    /// <summary>Lists the fabrics column by column.</summary>
    internal static void Paint(
        Draft draft,
        ImmutableArray<string> fabrics,
        Palette palette,
        Box box,
        Func<string, string>? uses = null
    )
    {
        FigureStyle style = draft.Style;
        double size = style.Small.Value,
            enlarged = style.Enlarged,
            half = style.Seam.Value / 2;
        int columns = ColumnsFor(fabrics, palette, box.Width, uses);
        int rows = (fabrics.Length + columns - 1) / columns;
        double pitch = box.Width / columns;
        for (int i = 0; i < fabrics.Length; i++)
        {
            FabricLook look = palette[fabrics[i]];
            double x = box.X + half + (i / rows * pitch),
                y = box.Y + half + (i % rows * RowHeight * enlarged);
            var swatch = new Box(x, y, SwatchWidth * enlarged, SwatchHeight * enlarged);
            FabricSwatch.Paint(draft, look, swatch);
            string name = Fitted(NameOf(look, uses), pitch - swatch.Width - (2 * Gap), size);
            double width = LabelSize.Width(name, size);
            draft.Text(name, new Spot(swatch.Right + Gap, swatch.Center.Y), style.Small, width);
        }
    }

    /// <summary>"Amber: points, vanes, cornerstones".</summary>
    private static string NameOf(FabricLook look, Func<string, string>? uses) =>
        uses?.Invoke(look.Key) is { Length: > 0 } said ? $"{look.Name}: {said}" : look.Name;

    private static int ColumnsFor(
        ImmutableArray<string> fabrics,
        Palette palette,
        double width,
        Func<string, string>? uses
    )
    {
        if (fabrics.IsEmpty)
        {
            return 1;
        }
        double size = palette.Style.Small.Value;
        double widest = fabrics.Max(key => LabelSize.Width(NameOf(palette[key], uses), size));
        double pitch =
            (SwatchWidth * palette.Style.Enlarged) + Math.Min(widest, width / 2.4) + (3 * Gap);
        return Math.Clamp((int)(width / pitch), 1, fabrics.Length);
    }

    // A name too long for its column ends in an ellipsis; the letter still stands for it.
    private static string Fitted(string name, double width, double size)
    {
        if (LabelSize.Width(name, size) <= width)
        {
            return name;
        }
        int length = name.Length;
        while (length > 1 && LabelSize.Width(name[..length] + "…", size) > width)
        {
            length--;
        }
        return name[..length].TrimEnd() + "…";
    }
}
