namespace PatternPress.Quilting.Settings;

/// <summary>
/// Blocks of several sizes on a grid whose columns and rows may be of unlike widths: touching cells of one coloring are one
/// block. Sewn in sections whose seams run straight from edge to edge, and with partial seams where parts go around each other.
/// </summary>
public sealed class InSections : Setting
{
    public override string Keyword => "in-sections";

    public override bool HasGrid => true;

    public override bool TakesSashing => false;

    public override Field? Lay(Layout layout)
    {
        var cells = new CellGrid(
            layout,
            CellGrid.Lines(layout.Design.Columns!.Value.Value, layout.Size.Columns),
            CellGrid.Lines(layout.Design.Rows!.Value.Value, layout.Size.Rows)
        );
        return cells.Blocks() is not { } places
            ? null
            : SectionOrder.Sewn(layout, cells.Width, cells.Height, places, []);
    }
}
