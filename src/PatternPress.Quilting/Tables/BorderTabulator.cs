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
        int borders = making.Sizes.Select(size => size.Quilt.Borders.Length).DefaultIfEmpty().Max();
        var rows = ImmutableArray.CreateBuilder<BorderRow>(borders);
        for (int number = 1; number <= borders; number++)
        {
            rows.Add(new BorderRow(number, [.. making.Sizes.Select(size => CellOf(size, number))]));
        }
        return rows.MoveToImmutable();
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
        ImmutableArray<BorderPart> order = border.Design.Corners switch
        {
            BorderCorners.SidesFirst => [BorderPart.Sides, BorderPart.TopAndBottom],
            BorderCorners.TopFirst => [BorderPart.TopAndBottom, BorderPart.Sides],
            // Corners go to the ends of top and bottom before these are sewn on.
            _ => [BorderPart.Sides, BorderPart.Corners, BorderPart.TopAndBottom],
        };
        return new BorderCell(
            border.Design.Name,
            border.Design.Corners,
            border.Design.Width,
            border.Inside.Width,
            border.Inside.Height,
            border.Outside.Width,
            border.Outside.Height,
            [
                .. BorderCuts
                    .Runs(border)
                    .OrderBy(run => order.IndexOf(run.Part))
                    .Select(run => PartOf(size, number, run, joined)),
            ],
            [.. joined.Select(JoinedRow.Of)]
        );
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
            bool level = run.Part == BorderPart.TopAndBottom;
            return new BorderPartRow(
                run.Part,
                run.Fabric,
                cut.Id,
                run.Count,
                level ? cut.Height : cut.Width,
                level ? cut.Width : cut.Height,
                false
            );
        }
        JoinedStrips strips = joined.First(j => j.Fabric == run.Fabric);
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
