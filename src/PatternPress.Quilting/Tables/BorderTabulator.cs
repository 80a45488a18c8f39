using System.Collections.Immutable;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;

namespace PatternPress.Quilting.Tables;

/// <summary>The borders, from the inside out.</summary>
internal static class BorderTabulator
{
    public static ImmutableArray<BorderRow> Tabulate(Making making)
    {
        var rows = ImmutableArray.CreateBuilder<BorderRow>();
        foreach (
            int number in making
                .Sizes.SelectMany(size => size.Quilt.Borders)
                .Select(border => border.Number)
                .Distinct()
                .Order()
        )
        {
            rows.Add(new BorderRow(number, [.. making.Sizes.Select(size => CellOf(size, number))]));
        }
        return rows.ToImmutable();
    }

    /// <summary>The parts of a border in the order they are sewn on.</summary>
    private static ImmutableArray<BorderPart> OrderOf(BorderCorners corners)
    {
        ImmutableArray<BorderPart> sides = [BorderPart.Sides, BorderPart.Left, BorderPart.Right],
            ends = [BorderPart.TopAndBottom, BorderPart.Top, BorderPart.Bottom];
        return corners == BorderCorners.TopFirst
            ? [.. ends, .. sides]
            // Corners go to the ends of top and bottom before these are sewn on.
            : [.. sides, BorderPart.Corners, .. ends];
    }

    private static BorderCell? CellOf(SizeMaking size, int number)
    {
        if (size.Quilt.Borders.FirstOrDefault(b => b.Number == number) is not { } border)
        {
            return null;
        }
        ImmutableArray<JoinedStrips> joined =
        [
            .. size.Joined.Where(strips =>
                strips.Purpose is CutPurpose.Border { Part: BorderPart.Joined } purpose
                && purpose.Number == number
            ),
        ];
        ImmutableArray<BorderPart> order = OrderOf(border.Design.Corners);
        return new BorderCell(
            border.Design.Name,
            // Strips on two sides only meet nowhere: what is sewn first then means nothing.
            border.Widths.MeetInCorners
                ? border.Design.Corners
                : BorderCorners.SidesFirst,
            border.Widths,
            border.Inside.Width,
            border.Inside.Height,
            border.Outside.Width,
            border.Outside.Height,
            [
                .. BorderCuts
                    .Runs(border)
                    .Sorted((a, b) => order.IndexOf(a.Part).CompareTo(order.IndexOf(b.Part)))
                    .Select(run => PartOf(size, number, run, joined)),
            ],
            [.. joined.Select(JoinedRow.Of)]
        )
        {
            IsCoping = border.IsCoping,
            Rows = [.. RowsOf(size.Quilt, border).OrderBy(row => order.IndexOf(row.Part))],
        };
    }

    private static IEnumerable<BorderBlocksRow> RowsOf(Quilt quilt, Border border)
    {
        if (border.Blocks.IsEmpty)
        {
            yield break;
        }
        var numbers = PartSorting
            .Count(quilt)
            .ToDictionary(b => (b.Block.Key, b.Block.Width, b.Block.Height), b => b.Number);
        Length width = quilt.House.Unfinished(border.Widths.Top);
        // Opposite sides are alike, so one of them tells about both.
        foreach (BorderSide side in new[] { BorderSide.Left, BorderSide.Top })
        {
            ImmutableArray<PlacementCell> cells = CellsOf(side);
            if (cells.IsEmpty)
            {
                continue;
            }
            Length length = Length.Zero;
            foreach (BorderBlock block in border.Blocks.Where(b => b.Side == side))
            {
                length +=
                    side == BorderSide.Left ? block.Place.Place.Height : block.Place.Place.Width;
            }
            yield return new BorderBlocksRow(
                side == BorderSide.Left ? BorderPart.Sides : BorderPart.TopAndBottom,
                2,
                cells,
                width,
                quilt.House.Unfinished(length)
            );
        }
        ImmutableArray<PlacementCell> corners = CellsOf(BorderSide.Corner);
        if (!corners.IsEmpty)
        {
            yield return new BorderBlocksRow(
                BorderPart.Corners,
                corners.Length,
                [corners[0]],
                width,
                width
            );
        }

        ImmutableArray<PlacementCell> CellsOf(BorderSide side) =>
            [
                .. border
                    .Blocks.Where(b => b.Side == side)
                    .Select(b => new PlacementCell(
                        b.Place.Block.Key,
                        numbers[(b.Place.Block.Key, b.Place.Block.Width, b.Place.Block.Height)],
                        b.Turn
                    )),
            ];
    }

    private static BorderPartRow PartOf(
        SizeMaking size,
        int number,
        BorderRun run,
        ImmutableArray<JoinedStrips> joined
    )
    {
        var purpose = new CutPurpose.Border(number, run.Part);
        if (
            size.Cuts.FirstOrDefault(cut => cut.Purpose == purpose && cut.Fabric == run.Fabric) is
            { } cut
        )
        {
            return new BorderPartRow(
                run.Part,
                run.Fabric,
                cut.Id,
                run.Count,
                run.IsLevel ? cut.Height : cut.Width,
                run.IsLevel ? cut.Width : cut.Height,
                false
            );
        }
        JoinedStrips strips = joined.First(j =>
            j.Fabric == run.Fabric && j.Pieces.Any(piece => piece.Part == run.Part)
        );
        Length length = strips.Pieces.First(piece => piece.Part == run.Part).Length;
        return new BorderPartRow(
            run.Part,
            run.Fabric,
            strips.Cut,
            run.Count,
            strips.StripWidth,
            length,
            true
        );
    }
}
