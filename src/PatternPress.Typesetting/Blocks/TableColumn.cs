namespace PatternPress.Typesetting.Blocks;

/// <summary>A column of a table.</summary>
public sealed record TableColumn(ColumnWidth Width, CellAlignment Alignment = CellAlignment.Left)
{
    public static TableColumn Fixed(Points width, CellAlignment alignment = CellAlignment.Left) =>
        new(new ColumnWidth.Fixed(width), alignment);

    public static TableColumn Share(int parts = 1, CellAlignment alignment = CellAlignment.Left) =>
        new(new ColumnWidth.Share(parts), alignment);

    public static TableColumn Natural(CellAlignment alignment = CellAlignment.Left) =>
        new(new ColumnWidth.Natural(), alignment);
}
