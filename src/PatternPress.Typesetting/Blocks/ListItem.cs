using PatternPress.Typesetting.Inlines;

namespace PatternPress.Typesetting.Blocks;

/// <summary>An item of a list.</summary>
public sealed record ListItem(Block Content)
{
    /// <summary>An item of plain words; fractions written as in "2 1/2" are set as fractions.</summary>
    public ListItem(string words)
        : this(new Text(words)) { }

    /// <summary>What stands before the item instead of its number or bullet.</summary>
    public string? Label { get; init; }

    /// <summary>Where a click on the number or bullet leads.</summary>
    public LinkTarget? LabelLink { get; init; }
}
