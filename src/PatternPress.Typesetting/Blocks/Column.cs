namespace PatternPress.Typesetting.Blocks;

/// <summary>One of several columns.</summary>
public sealed record Column(ColumnWidth Width, Block Content)
{
    public VerticalAlignment Vertical { get; init; } = VerticalAlignment.Top;

    public static Column Fixed(Points width, Block content) =>
        new(new ColumnWidth.Fixed(width), content);

    public static Column Share(Block content, int parts = 1) =>
        new(new ColumnWidth.Share(parts), content);

    public static Column Natural(Block content) => new(new ColumnWidth.Natural(), content);
}
