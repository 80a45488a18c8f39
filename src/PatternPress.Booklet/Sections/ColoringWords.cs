using PatternPress.Booklet.Words;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Tables;

namespace PatternPress.Booklet.Sections;

/// <summary>Says which fabric each part of a block is in one coloring.</summary>
internal static class ColoringWords
{
    /// <summary>The most fabrics that are named in full.</summary>
    private const int MostNamed = 3;

    /// <summary>"points, vanes: B Amber" for each fabric of a coloring; letters only where there are many.</summary>
    public static IEnumerable<string> Lines(BlockRow row, SectionContext context)
    {
        List<IGrouping<string, string>> fabrics = Fabrics(row, context);
        return fabrics.Count <= MostNamed
            ? fabrics.Select(f => $"{string.Join(", ", f)}: {f.Key} {context.Fabric(f.Key)?.Name}")
            : fabrics
                .Select(f => $"{string.Join(", ", f)}\u00a0{f.Key}")
                .Chunk((fabrics.Count + 1) / 2)
                .Select(line => string.Join(", ", line));
    }

    /// <summary>"sky A, points, vanes B, gaps D": all on one line; the fabric's letter alone for a plain block.</summary>
    public static string Line(BlockRow row, SectionContext context) =>
        row.Block is null
            ? context.Pattern.Coloring(row.Coloring)?.Fabrics.GetValueOrDefault(Coloring.PlainPart)
                ?? ""
            : string.Join(
                ", ",
                Fabrics(row, context).Select(f => $"{string.Join(", ", f)}\u00a0{f.Key}")
            );

    private static List<IGrouping<string, string>> Fabrics(BlockRow row, SectionContext context)
    {
        Coloring? coloring = context.Pattern.Coloring(row.Coloring);
        BlockDesign? design = row.Block is null ? null : context.Pattern.Block(row.Block);
        return coloring is null || design is null
            ? []
            :
            [
                .. design
                    .Parts.Where(p => coloring.Fabrics.ContainsKey(p.Value))
                    .GroupBy(p => coloring.Fabrics[p.Value], p => p.Value),
            ];
    }
}
