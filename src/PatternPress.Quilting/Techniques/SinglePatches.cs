using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Sketching;

namespace PatternPress.Quilting.Techniques;

/// <summary>Cells cut one by one to cell size + 2s and sewn into rows.</summary>
internal static class SinglePatches
{
    public static Recipe Recipe(Technique technique, UnitForm form, House house)
    {
        var grid = CellGrid.Of(form);
        var sewing = new Sewing(form, house);
        ImmutableArray<ImmutableArray<int>> rows = GridPictures.Rows(grid);
        return Batch.Of(
            technique,
            form,
            house,
            Pieces(form, house),
            1,
            trim: false,
            steps:
            [
                new Step("sew-rows", () => GridPictures.SewRow(sewing, rows[0])),
                new Step(
                    "press",
                    () =>
                        new Sketch([
                            .. rows.Take(2)
                                .Select(
                                    (row, i) =>
                                        GridPictures
                                            .PressRow(
                                                sewing,
                                                row,
                                                oneWay: house.Pressing == PressingStyle.ToOneSide,
                                                i
                                            )
                                            .Done()
                                ),
                        ])
                ),
                new Step("join-rows", () => GridPictures.JoinRows(sewing, grid)),
                new Step("measure", () => sewing.Finish(false, Length.Zero, 1)),
            ]
        );
    }

    public static ImmutableArray<RecipePiece> Pieces(UnitForm form, House house)
    {
        CellGrid grid = CellGrid.Of(form);
        CutSize width = CutSize.Close(house.Unfinished(form.Width / grid.Columns), house);
        CutSize height = CutSize.Close(house.Unfinished(form.Height / grid.Rows.Length), house);
        return
        [
            .. Enumerable
                .Range(0, grid.RoleCount)
                .Select(role =>
                    CutSize.Rectangle(
                        "patch",
                        role,
                        grid.Rows.Sum(row => row.Count(r => r == role)),
                        width,
                        height
                    )
                ),
        ];
    }
}
