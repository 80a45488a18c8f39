namespace PatternPress.Typesetting.Pages;

/// <summary>
/// An element of the structure tree. Identity matters: a paragraph that goes on over the page is the same tag twice.
/// </summary>
public sealed class Tag(TagRole role)
{
    public TagRole Role { get; } = role;

    /// <summary>What is to be read instead of showing it: of figures.</summary>
    public string? Alt { get; init; }

    /// <summary>The characters that the shown shapes stand for.</summary>
    public string? ActualText { get; init; }

    /// <summary>The language where it differs from the document's (BCP 47).</summary>
    public string? Language { get; init; }

    /// <summary>Of header cells: whether they head a column or a row.</summary>
    public HeaderScope Scope { get; init; }

    /// <summary>Of cells: how many columns they span.</summary>
    public int ColumnSpan { get; init; } = 1;

    /// <summary>Of lists: whether the labels are numbers.</summary>
    public bool Numbered { get; init; }

    /// <summary>Of tables: what the table holds, in words.</summary>
    public string? Summary { get; init; }

    public override string ToString() => Role.ToString();
}
