using System.Collections.Immutable;

namespace PatternPress.Typesetting.Pages;

/// <summary>A finished page: items in the order in which they are drawn and read.</summary>
/// <param name="Number">Counted from 1.</param>
public sealed record Page(int Number, PaperSize Paper, ImmutableArray<PageItem> Items)
{
    /// <summary>What is left once a printed sheet is trimmed; none where nothing is cut off.</summary>
    public PageRect? Trim { get; init; }

    /// <summary>How far the print reaches, past the trim, so that no white shows where the knife strays.</summary>
    public PageRect? Bleed { get; init; }
}
