namespace PatternPress.Typesetting.Blocks;

/// <summary>How wide a column is.</summary>
public abstract record ColumnWidth
{
    ColumnWidth() { }

    /// <summary>A distance on paper.</summary>
    public sealed record Fixed(Points Width) : ColumnWidth;

    /// <summary>A share of what the other columns leave.</summary>
    public sealed record Share(int Parts = 1) : ColumnWidth;

    /// <summary>As wide as its content wants, less if there is not enough room.</summary>
    public sealed record Natural : ColumnWidth;
}
