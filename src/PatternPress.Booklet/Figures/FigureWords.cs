using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;

namespace PatternPress.Booklet.Figures;

/// <summary>The English of the figures' alternative texts and labels. Nothing else in Figures holds a sentence.</summary>
internal static class FigureWords
{
    public static string QuiltPicture(Quilt quilt) =>
        Sentences(
            $"The {Name(quilt)} quilt in color, {Size(quilt)}",
            Layout(quilt),
            Sashing(quilt),
            Borders(quilt),
            quilt.Size.Quilt.Binding is { } binding
                ? $"It is bound in {Fabric(quilt, binding.Fabric.Value)}"
                : ""
        );

    public static string ColoringPage(Quilt quilt) =>
        Sentences(
            $"The {Name(quilt)} quilt drawn in outline for coloring, {Size(quilt)}",
            Layout(quilt),
            Sashing(quilt),
            quilt.Borders.IsEmpty
                ? ""
                : $"{Count(quilt.Borders.Length, "border")} around the blocks, also in outline"
        );

    public static string PlacementChart(Quilt quilt, bool patches) =>
        Sentences(
            $"Placement chart of the {Name(quilt)} quilt",
            patches
                ? "Every patch shows its fabric's color, hatch and letter"
                : "Every block is drawn as it lies in the quilt and marked with its key",
            string.Join(" ", Rows(quilt)),
            Sashing(quilt),
            Borders(quilt)
        );

    /// <summary>"Row 1: L1, L2 turned a quarter to the right, L1."</summary>
    public static IEnumerable<string> Rows(Quilt quilt) =>
        quilt
            .Places.GroupBy(p => p.Row)
            .OrderBy(row => row.Key)
            .Select(row =>
                $"Row {row.Key + 1}: {Runs([.. row.OrderBy(p => p.Column).Select(p => p.Block.Key + Turned(p.Turn))])}."
            );

    public static string Legend(IEnumerable<FabricLook> looks) =>
        Sentences(
            "Legend",
            List([.. looks.Select(l => $"{l.Key} {l.Name}, {l.Hatch.Hatch.Name}")])
        );

    public static string Swatch(FabricLook look) => $"Swatch of fabric {look.Key}, {look.Name}.";

    public static string Block(ColoredBlock block, Pattern pattern) =>
        Sentences($"Block {block.Key}: {Describe(block, pattern)}");

    public static string BlockOutline(Block block) =>
        Sentences($"Outline of the {block.Design.Name} block, {Count(block.Units.Length, "unit")}");

    /// <summary>"Lamp block, 12 in square, with sky in Ink and ray in Amber".</summary>
    public static string Describe(ColoredBlock block, Pattern pattern)
    {
        if (block.Block is null)
        {
            return $"plain block of {Fabric(pattern, block.Coloring.Fabrics[Coloring.PlainPart])}";
        }
        var parts = block
            .Block.Design.Parts.Where(p => block.Coloring.Fabrics.ContainsKey(p.Value))
            .Select(p => $"{p.Value} in {Fabric(pattern, block.Coloring.Fabrics[p.Value])}");
        return $"{block.Block.Design.Name} block with {List([.. parts])}";
    }

    public static string Name(Quilt quilt) => quilt.Size.Name.ToLowerInvariant();

    public static string Size(Quilt quilt) =>
        $"{Number(quilt.Width, quilt.House)} by {Measure(quilt.Height, quilt.House)}";

    /// <summary>"12 1/2 in" or "30 cm": on the ruler's marks where the exact length lies between.</summary>
    public static string Measure(Length length, House house) =>
        $"{Number(length, house)} {(house.Unit == LengthUnit.Inch ? "in" : "cm")}";

    public static string Number(Length length, House house)
    {
        if (house.Unit != LengthUnit.Inch)
        {
            return LengthText.Centimetres(length);
        }
        bool plain = length.Inches.IsRational && length.Inches.One.Denominator <= 16;
        return LengthText.Inches(plain ? length : house.Ruler.Nearest(length));
    }

    public static string Fabric(Quilt quilt, string key) => Fabric(quilt.Pattern, key);

    public static string Fabric(Pattern pattern, string key) =>
        pattern.Fabric(key) is { } fabric ? fabric.Name : key;

    public static string Turned(Turn turn) =>
        turn.Quarters switch
        {
            1 => " turned a quarter to the right",
            2 => " upside down",
            3 => " turned a quarter to the left",
            _ => "",
        };

    public static string Count(long count, string noun) =>
        count == 1 ? $"1 {noun}" : $"{count} {noun}s";

    public static string List(IReadOnlyList<string> items) =>
        items.Count switch
        {
            0 => "",
            1 => items[0],
            _ => $"{string.Join(", ", items.Take(items.Count - 1))} and {items[^1]}",
        };

    public static string Sentences(params string[] sentences) =>
        string.Join(
            " ",
            sentences.Where(s => s.Length > 0).Select(s => s.EndsWith('.') ? s : s + ".")
        );

    private static string Layout(Quilt quilt)
    {
        if (quilt.Places.IsEmpty)
        {
            return "";
        }
        var counts = quilt.BlockCounts().ToList();
        int rows = quilt.Places.Max(p => p.Row) + 1,
            columns = quilt.Places.Max(p => p.Column) + 1;
        string grid = $"{Count(columns, "column")} and {Count(rows, "row")} of blocks";
        // More colorings than that are a list for the table beside the picture.
        const int mostDescribed = 6;
        return counts.Count <= mostDescribed
            ? $"{grid}: {List([.. counts.Select(c => $"{c.Count} of {c.Block.Key} ({Describe(c.Block, quilt.Pattern)})")])}"
            : $"{grid} in {counts.Count} colorings: {List([.. counts.Select(c => $"{c.Count} of {c.Block.Key}")])}";
    }

    private static string Sashing(Quilt quilt)
    {
        var strips = quilt.Sashes.Where(s => s.Kind != SashKind.Cornerstone).Select(s => s.Fabric);
        var stones = quilt.Sashes.Where(s => s.Kind == SashKind.Cornerstone).Select(s => s.Fabric);
        string lay = Names(quilt, strips),
            squares = Names(quilt, stones);
        return lay.Length == 0 ? ""
            : squares.Length == 0 ? $"Sashing in {lay} lies between the blocks"
            : $"Sashing in {lay} lies between the blocks, with cornerstones in {squares}";
    }

    private static string Borders(Quilt quilt) =>
        quilt.Borders.IsEmpty
            ? ""
            : "From the inside out: "
                + List([
                    .. quilt.Borders.Select(b =>
                        $"border {b.Number} in {Fabric(quilt, b.Design.Fabric.Value)}, {Measure(b.Design.Width, quilt.House)} wide"
                        + (
                            b.Design.Corners == BorderCorners.Squares
                            && b.Pieces.FirstOrDefault(p => p.Side == BorderSide.Corner)
                                is { } square
                                ? $", with corner squares in {Fabric(quilt, square.Fabric)}"
                                : ""
                        )
                    ),
                ]);

    private static string Names(Quilt quilt, IEnumerable<string> keys) =>
        List([.. keys.Distinct().Select(k => Fabric(quilt, k))]);

    // "L1, L1, L1" becomes "3 × L1": long rows stay short.
    private static string Runs(IReadOnlyList<string> items)
    {
        var runs = new List<string>();
        for (int i = 0; i < items.Count; )
        {
            int end = i;
            while (end < items.Count && items[end] == items[i])
            {
                end++;
            }
            runs.Add(end - i == 1 ? items[i] : $"{end - i} × {items[i]}");
            i = end;
        }
        return string.Join(", ", runs);
    }
}
