using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Rules;
using PatternPress.Quilting.Settings;
using PatternPress.Quilting.Settings.Fills;

namespace PatternPress.Quilting.Resolving;

/// <summary>Turns a pattern and one of its sizes into a quilt with every patch placed.</summary>
public static class QuiltResolver
{
    /// <summary>No bed and no wall takes more; keeps numbers and pages within reason.</summary>
    private static readonly Length _largest = Length.FromInches(400);

    /// <summary>Draws every block of a pattern at every size's block size, used or not.</summary>
    /// <param name="findings">Units that cannot fill their regions are reported here.</param>
    public static BlockSet ResolveBlocks(Pattern pattern, FindingCollector findings)
    {
        var blocks = new BlockSet(pattern);
        foreach (SizeDesign size in pattern.Sizes)
        {
            bool takesPlaces =
                SettingCatalog.Find(size.Quilt.FieldSetting.Value)
                is { HasGrid: true }
                    or { IsFree: true };
            foreach (BlockDesign design in pattern.Blocks)
            {
                if (design.Sized || size.BlockSize is not null)
                {
                    _ = blocks.Draw(design, size.BlockSize, size, findings);
                }
                else if (!takesPlaces && !IsOnlyInside(design, pattern))
                {
                    findings.Add(PP0227_SizelessBlock.Found(design.Span, design.Key, size.Key));
                }
            }
        }
        return blocks;
    }

    // Such a block is drawn at the size of its region.
    private static bool IsOnlyInside(BlockDesign design, Pattern pattern) =>
        pattern.Colorings.All(c => c.Block != design.Key)
        && pattern.Blocks.Any(b => b.Inner.Any(inner => inner.Key == design.Key));

    /// <summary>Places everything. Null where something was reported.</summary>
    public static Quilt? Resolve(
        Pattern pattern,
        SizeDesign size,
        BlockSet blocks,
        FindingCollector findings
    )
    {
        QuiltDesign design = size.Quilt;
        if (SettingCatalog.Find(design.FieldSetting.Value) is not { } setting)
        {
            return null;
        }
        FillGrid grid = setting.Places(size);
        if (
            !SettingNeeds.AreMet(setting, size, findings)
            || Spread(design, grid, size, findings) is not { } cells
        )
        {
            return null;
        }
        if (setting.Lay(new Layout(pattern, size, blocks, cells, findings)) is not { } field)
        {
            return null;
        }
        var middle = new Rect(Length.Zero, Length.Zero, field.Width, field.Height);
        if (new BorderResolver(pattern, size, blocks, findings).Around(middle) is not { } borders)
        {
            return null;
        }
        Rect inside = borders.IsEmpty ? middle : borders[^1].Outside;
        // The upper left corner of the whole is the origin.
        var by = new Point(-inside.X, -inside.Y);
        if (inside.Width > _largest || inside.Height > _largest)
        {
            findings.Add(
                PP0220_TooManyBlocks.TooLarge(
                    size.Span,
                    size.Key,
                    inside.Width,
                    inside.Height,
                    _largest
                )
            );
            return null;
        }
        return new Quilt(
            pattern,
            size,
            inside.Width,
            inside.Height,
            middle.MoveBy(by),
            [.. field.Places.Select(p => p.MovedBy(by))],
            [.. field.Sashes.Select(s => s.MovedBy(by))],
            [.. borders.Select(border => border.MovedBy(by))]
        )
        {
            Pieces = [.. field.Pieces.Select(p => p.MovedBy(by))],
            Rows = field.Rows,
            Order = field.Order,
        };
    }

    /// <summary>A coloring for every place; null where something was reported.</summary>
    private static FillCell[][]? Spread(
        QuiltDesign design,
        FillGrid grid,
        SizeDesign size,
        FindingCollector findings
    )
    {
        if (design.Between is not { } between || !grid.Between)
        {
            return Spread(design.Fill, grid, size, findings);
        }
        // The places in between have a fill of their own, in rows and columns like the others.
        FillCell[][]? main = Spread(
            design.Fill,
            new FillGrid(grid.Rows, grid.Columns),
            size,
            findings
        );
        FillCell[][]? others =
            grid.Rows > 1 && grid.Columns > 1
                ? Spread(between, new FillGrid(grid.Rows - 1, grid.Columns - 1), size, findings)
                : [];
        return main is null || others is null
            ? null
            : grid.Fill(
                (line, place) => line % 2 == 0 ? main[line / 2][place] : others[line / 2][place]
            );
    }

    private static FillCell[][]? Spread(
        Fill fill,
        FillGrid grid,
        SizeDesign size,
        FindingCollector findings
    )
    {
        if (
            FillCatalog
                .Of(fill.Kind)
                .TrySpread(fill, grid, out FillCell[][]? cells, out string? problem)
        )
        {
            return cells;
        }
        findings.Add(
            fill.Kind switch
            {
                FillKind.Map => PP0214_MapDoesNotMatchSize.Found(
                    fill.Span,
                    size.Span,
                    size.Key,
                    fill.Rows.Max(r => r.Length),
                    fill.Rows.Length,
                    grid
                ),
                FillKind.Scatter => PP0224_ScatterTooTight.Found(
                    fill.Span,
                    fill.Rows.Sum(r => r.Length),
                    size.Key,
                    grid.Columns,
                    grid.Rows
                ),
                _ => new Finding(PP0230_WrongNumberOfEntries.Found(fill.Span, problem)),
            }
        );
        return null;
    }
}
