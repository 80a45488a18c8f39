using System.Collections.Immutable;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Pages;

namespace PatternPress.Typesetting.Layout.Tables;

/// <summary>Places as many rows of a table as a room holds.</summary>
sealed class TableSetter(LayoutContext context, Table table, TableGrid grid, TableProgress progress)
{
    readonly List<(SetRow Row, Points Y)> placed = [];
    readonly List<(SetRow Row, Points Y)> heads = [];

    public Fit Fit(Room room)
    {
        var y = Points.Zero;
        foreach (var row in table.Header)
        {
            var head = RowSetter.Set(context, table, grid, row, RowTags.For(row, header: true));
            heads.Add((head, y));
            y += head.Height;
        }

        for (var first = 0; first < table.Rows.Length; )
        {
            var end = EndOfGroup(first);
            var group = new List<SetRow>(end - first);
            for (var i = first; i < end; i++)
            {
                group.Add(Set(i));
            }

            var height = group.Select(row => row.Height).Sum();
            if (y + height <= room.Height)
            {
                foreach (var row in group)
                {
                    placed.Add((row, y));
                    y += row.Height;
                }

                first = end;
                continue;
            }

            if (placed.Count > 0)
            {
                return new Fit.Splits(Build(y), Rest(first));
            }

            if (!room.AtTop)
            {
                return new Fit.Moves(
                    $"the next rows of a table need {y + height} pt and have {room.Height} pt",
                    y + height
                );
            }

            return FitRowByRow(room, group, first, y);
        }

        // The header of a table without rows, too, must have its place.
        return y > room.Height && !room.Forced
            ? new Fit.Moves($"the header of a table needs {y} pt and has {room.Height} pt", y)
            : new Fit.Fits(Build(y));
    }

    // At the top of a page, with a group that is taller than the page: as many of its rows as fit, or a part of a row.
    Fit FitRowByRow(Room room, List<SetRow> group, int first, Points y)
    {
        foreach (var row in group)
        {
            if (y + row.Height > room.Height)
            {
                break;
            }

            placed.Add((row, y));
            y += row.Height;
        }

        if (placed.Count > 0)
        {
            return new Fit.Splits(Build(y), Rest(first + placed.Count));
        }

        var whole = table.Rows[first];
        var tags = progress.OpenRow ?? RowTags.For(whole, header: false);
        using (context.Within(whole.Origin))
        {
            if (
                RowSetter.Divide(
                    context,
                    table,
                    grid,
                    whole,
                    tags,
                    room with
                    {
                        Height = room.Height - y,
                    }
                )
                is var (part, rest)
            )
            {
                placed.Add((part, y));
                return new Fit.Splits(
                    Build(y + part.Height),
                    Rest(first, table.Rows.SetItem(first, rest), tags)
                );
            }

            if (!room.Forced)
            {
                return new Fit.Moves("a row of a table is taller than a page", y + group[0].Height);
            }

            context.Report(
                LayoutProblemKind.TooTall,
                $"a row of a table is {group[0].Height} pt tall, {room.Height - y} pt are left for it",
                group[0].Height,
                room.Height - y
            );
        }

        placed.Add((group[0], y));
        y += group[0].Height;
        return first + 1 < table.Rows.Length
            ? new Fit.Splits(Build(y), Rest(first + 1))
            : new Fit.Fits(Build(y));
    }

    SetRow Set(int row)
    {
        var tags =
            row == 0 && progress.OpenRow is { } open
                ? open
                : RowTags.For(table.Rows[row], header: false);
        using (context.Within(table.Rows[row].Origin))
        {
            return RowSetter.Set(context, table, grid, table.Rows[row], tags);
        }
    }

    int EndOfGroup(int first)
    {
        var end = first;
        while (end + 1 < table.Rows.Length && table.Rows[end].KeepWithNext)
        {
            end++;
        }

        return end + 1;
    }

    Table Rest(int from, ImmutableArray<TableRow>? rows = null, RowTags? open = null) =>
        table with
        {
            Rows = (rows ?? table.Rows)[from..],
            Continued = progress with
            {
                GoesOn = true,
                RowsDone = progress.RowsDone + from,
                OpenRow = open,
            },
        };

    Fragment Build(Points height)
    {
        var builder = new FragmentBuilder();
        builder.AddArtifact(Backgrounds());
        builder.Add(new PageItem.TagBegin(progress.Table));
        if (heads.Count > 0)
        {
            builder.Add(
                progress.GoesOn
                    ? new PageItem.ArtifactBegin(ArtifactKind.Layout)
                    : new PageItem.TagBegin(progress.Head)
            );
            AddRows(builder, heads);
            builder.Add(
                progress.GoesOn ? new PageItem.ArtifactEnd() : new PageItem.TagEnd(progress.Head)
            );
        }

        builder.Add(new PageItem.TagBegin(progress.Body));
        AddRows(builder, placed);
        builder.Add(new PageItem.TagEnd(progress.Body)).Add(new PageItem.TagEnd(progress.Table));
        builder.AddArtifact(Rules(height));
        return builder.ToFragment(grid.Width, height);
    }

    static void AddRows(FragmentBuilder builder, List<(SetRow Row, Points Y)> rows)
    {
        foreach (var (row, y) in rows)
        {
            builder.Add(row.Fragment, Points.Zero, y);
        }
    }

    IEnumerable<PageItem> Backgrounds()
    {
        foreach (var (row, y) in heads)
        {
            foreach (
                var item in Backgrounds(row, y, row.Row.Background ?? table.Style.HeaderBackground)
            )
            {
                yield return item;
            }
        }

        for (var i = 0; i < placed.Count; i++)
        {
            var (row, y) = placed[i];
            var striped = (progress.RowsDone + i) % 2 == 1;
            foreach (
                var item in Backgrounds(
                    row,
                    y,
                    row.Row.Background ?? (striped ? table.Style.Stripe : null)
                )
            )
            {
                yield return item;
            }
        }
    }

    IEnumerable<PageItem> Backgrounds(SetRow row, Points y, Ink? ink)
    {
        if (ink is not null)
        {
            yield return Area(Points.Zero, y, grid.Width, row.Height, ink.Value);
        }

        foreach (var (cell, column, span) in TableGrid.Places(table, row.Row))
        {
            if (cell.Background is { } own)
            {
                yield return Area(
                    grid.WidthOf(0, column),
                    y,
                    grid.WidthOf(column, span),
                    row.Height,
                    own
                );
            }
        }
    }

    IEnumerable<PageItem> Rules(Points height)
    {
        var style = table.Style;
        var headEnd = heads.Count == 0 ? Points.Zero : heads[^1].Y + heads[^1].Row.Height;
        for (var i = 1; i < placed.Count; i++)
        {
            var rule = placed[i].Row.Row.RuleAbove
                ? style.GroupRule ?? style.RowRule
                : style.RowRule;
            if (rule is not null)
            {
                yield return Across(placed[i].Y, rule);
            }
        }

        if (style.ColumnRule is not null)
        {
            for (var column = 1; column < table.Columns.Length; column++)
            {
                foreach (var item in Down(column, style.ColumnRule))
                {
                    yield return item;
                }
            }
        }

        if (style.HeaderRule is not null && heads.Count > 0)
        {
            yield return Across(headEnd, style.HeaderRule);
        }

        if (style.TopRule is not null)
        {
            yield return Across(Points.Zero, style.TopRule);
        }

        if (style.BottomRule is not null)
        {
            yield return Across(height, style.BottomRule);
        }
    }

    // A rule between columns, left out where a cell spans them; rows that meet share one stroke.
    IEnumerable<PageItem> Down(int column, Stroke stroke)
    {
        var x = grid.WidthOf(0, column).Value;
        var (from, to) = (Points.Zero, Points.Zero);
        foreach (var (row, y) in heads.Concat(placed))
        {
            if (
                TableGrid
                    .Places(table, row.Row)
                    .Any(place => place.Column < column && place.Column + place.Span > column)
            )
            {
                if (to > from)
                {
                    yield return new PageItem.Path(
                        VectorPath.Polyline(new(x, from.Value), new(x, to.Value)),
                        null,
                        stroke
                    );
                }

                from = y + row.Height;
            }

            to = y + row.Height;
        }

        if (to > from)
        {
            yield return new PageItem.Path(
                VectorPath.Polyline(new(x, from.Value), new(x, to.Value)),
                null,
                stroke
            );
        }
    }

    PageItem.Path Across(Points y, Stroke stroke) =>
        new(VectorPath.Polyline(new(0, y.Value), new(grid.Width.Value, y.Value)), null, stroke);

    static PageItem.Path Area(Points x, Points y, Points width, Points height, Ink ink) =>
        new(VectorPath.Rectangle(x.Value, y.Value, width.Value, height.Value), ink, null);
}
