namespace PatternPress.Typesetting.Inlines;

/// <summary>What a piece of a paragraph changes about the paragraph's style. Nothing set means: as the paragraph.</summary>
public sealed record InlineStyle
{
    public static readonly InlineStyle Plain = new();

    public bool? Bold { get; init; }

    public bool? Italic { get; init; }

    public Ink? Ink { get; init; }

    public string? Family { get; init; }

    /// <summary>Size in hundredths of the paragraph's size.</summary>
    public int Percent { get; init; } = 100;

    /// <summary>How far above the baseline the piece stands, in hundredths of the paragraph's size.</summary>
    public int RaisePercent { get; init; }

    public bool Underlined { get; init; }

    /// <summary>The language of the piece where it differs from the document's (BCP 47).</summary>
    public string? Language { get; init; }
}
