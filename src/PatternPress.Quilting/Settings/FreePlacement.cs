using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Rules;

namespace PatternPress.Quilting.Settings;

/// <summary>
/// Blocks placed one by one, each by its distance from the upper left corner. Together they must fill a rectangle without a gap
/// and without lying over each other; a size repeats it across and down. Sewn in sections.
/// </summary>
public sealed class FreePlacement : Setting
{
    public override string Keyword => "free";

    public override bool IsFree => true;

    public override bool TakesSashing => false;

    public override Field? Lay(Layout layout)
    {
        List<(FreePlace Free, BlockPlace Block)>? placed = Place(layout);
        if (placed is null)
        {
            return null;
        }
        Length width = Length.Zero,
            height = Length.Zero;
        foreach ((FreePlace _, BlockPlace block) in placed)
        {
            width = Length.Max(width, block.Place.Right);
            height = Length.Max(height, block.Place.Bottom);
        }
        if (Overlap(layout, placed) || Gap(layout, placed, width, height))
        {
            return null;
        }
        var places = new List<BlockPlace>();
        for (int down = 0; down < layout.Size.Rows; down++)
        {
            for (int across = 0; across < layout.Size.Columns; across++)
            {
                var by = new Point(width * across, height * down);
                places.AddRange(placed.Select(p => p.Block.MovedBy(by)));
            }
        }
        for (int i = 0; i < places.Count; i++)
        {
            // They lie in no rows; a number tells them apart.
            places[i] = places[i] with
            {
                Column = i,
            };
        }
        return SectionOrder.Sewn(
            layout,
            width * layout.Size.Columns,
            height * layout.Size.Rows,
            places,
            []
        );
    }

    private static List<(FreePlace, BlockPlace)>? Place(Layout layout)
    {
        var placed = new List<(FreePlace, BlockPlace)>();
        var blocks = new Dictionary<(string, Length, Length), ColoredBlock>();
        bool all = true;
        foreach (FreePlace free in layout.Design.Places!.Value.Value)
        {
            Coloring coloring = layout.Pattern.Coloring(free.Cell.Coloring)!;
            Block? block = null;
            bool turned = free.Cell.Turn.SwapsSides;
            (Length Width, Length Height)? own =
                free.Size is { } said && turned ? (said.Height, said.Width) : free.Size;
            if (coloring.Block is { } key)
            {
                if (layout.Pattern.Block(key) is not { } design)
                {
                    all = false;
                    continue;
                }
                if (own is { } asked && !HasShape(design, asked))
                {
                    layout.Findings.Add(
                        PP0269_PlaceOfAnotherShape.Found(
                            free.Span,
                            free.Cell.Coloring,
                            layout.Size.Key,
                            design.Width,
                            design.Height,
                            asked.Width,
                            asked.Height
                        )
                    );
                    all = false;
                    continue;
                }
                if (own is not null || design.Sized)
                {
                    Length? side = own is { } size ? Length.Max(size.Width, size.Height) : null;
                    block = layout.Blocks.Draw(design, side, layout.Size, layout.Findings);
                    if (block is null)
                    {
                        all = false;
                        continue;
                    }
                    own = (block.Width, block.Height);
                }
            }
            if (own is not { } finished)
            {
                layout.Findings.Add(
                    PP0227_SizelessBlock.Placed(free.Span, free.Cell.Coloring, layout.Size.Key)
                );
                all = false;
                continue;
            }
            if (
                !blocks.TryGetValue(
                    (coloring.Key, finished.Width, finished.Height),
                    out ColoredBlock? colored
                )
            )
            {
                colored = new ColoredBlock(coloring, block, finished.Width, finished.Height);
                blocks.Add((coloring.Key, finished.Width, finished.Height), colored);
            }
            Rect place = turned
                ? new(free.Left, free.Top, finished.Height, finished.Width)
                : new(free.Left, free.Top, finished.Width, finished.Height);
            if (block is null && turned)
            {
                // A plain piece is no other for being turned.
                place = new(free.Left, free.Top, free.Size!.Value.Width, free.Size.Value.Height);
                colored = colored with { Width = place.Width, Height = place.Height };
            }
            placed.Add(
                (
                    free,
                    new BlockPlace(0, 0, colored, block is null ? Turn.None : free.Cell.Turn, place)
                )
            );
        }
        return all ? placed : null;
    }

    private static bool HasShape(BlockDesign design, (Length Width, Length Height) size) =>
        design.Width.Inches.One * size.Height.Inches.One
        == design.Height.Inches.One * size.Width.Inches.One;

    private static bool Overlap(Layout layout, List<(FreePlace Free, BlockPlace Block)> placed)
    {
        bool found = false;
        for (int i = 0; i < placed.Count; i++)
        {
            for (int j = 0; j < i; j++)
            {
                Rect one = placed[j].Block.Place,
                    other = placed[i].Block.Place;
                Length left = Length.Max(one.X, other.X),
                    right = Length.Min(one.Right, other.Right),
                    top = Length.Max(one.Y, other.Y),
                    bottom = Length.Min(one.Bottom, other.Bottom);
                if (left < right && top < bottom)
                {
                    found = true;
                    layout.Findings.Add(
                        PP0266_BlocksThatOverlap.Found(
                            placed[i].Free.Span,
                            placed[i].Block.Block.Key,
                            placed[j].Free.Span,
                            placed[j].Block.Block.Key,
                            layout.Size.Key,
                            new Rect(left, top, right - left, bottom - top)
                        )
                    );
                }
            }
        }
        return found;
    }

    // Cells between all edges that no block covers, taken together to rectangles.
    private static bool Gap(
        Layout layout,
        List<(FreePlace Free, BlockPlace Block)> placed,
        Length width,
        Length height
    )
    {
        Area covered = Area.Zero;
        foreach ((FreePlace _, BlockPlace block) in placed)
        {
            covered += block.Place.Area;
        }
        // None lies over another, so equal areas leave nothing open.
        if (covered == width * height)
        {
            return false;
        }
        Length[] x = Lines(placed.SelectMany(p => new[] { p.Block.Place.X, p.Block.Place.Right })),
            y = Lines(placed.SelectMany(p => new[] { p.Block.Place.Y, p.Block.Place.Bottom }));
        var open = new bool[y.Length - 1, x.Length - 1];
        for (int r = 0; r < y.Length - 1; r++)
        {
            for (int c = 0; c < x.Length - 1; c++)
            {
                open[r, c] = !placed.Exists(p =>
                    p.Block.Place.X <= x[c]
                    && x[c] < p.Block.Place.Right
                    && p.Block.Place.Y <= y[r]
                    && y[r] < p.Block.Place.Bottom
                );
            }
        }
        for (int r = 0; r < y.Length - 1; r++)
        {
            for (int c = 0; c < x.Length - 1; c++)
            {
                if (!open[r, c])
                {
                    continue;
                }
                int across = 1;
                while (c + across < x.Length - 1 && open[r, c + across])
                {
                    across++;
                }
                int down = 1;
                while (
                    r + down < y.Length - 1
                    && Enumerable.Range(c, across).All(i => open[r + down, i])
                )
                {
                    down++;
                }
                for (int i = r; i < r + down; i++)
                {
                    for (int k = c; k < c + across; k++)
                    {
                        open[i, k] = false;
                    }
                }
                layout.Findings.Add(
                    PP0267_GapBetweenBlocks.Found(
                        layout.Design.Places!.Value.Span,
                        layout.Size.Key,
                        new Rect(x[c], y[r], x[c + across] - x[c], y[r + down] - y[r])
                    )
                );
            }
        }
        return true;
    }

    private static Length[] Lines(IEnumerable<Length> edges)
    {
        List<Length> lines = [.. edges.Append(Length.Zero).Distinct()];
        lines.Sort();
        return [.. lines];
    }
}
