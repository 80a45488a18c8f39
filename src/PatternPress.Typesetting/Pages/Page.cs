using System.Collections.Immutable;

namespace PatternPress.Typesetting.Pages;

/// <summary>A finished page: items in the order in which they are drawn and read.</summary>
/// <param name="Number">Counted from 1.</param>
public sealed record Page(int Number, PaperSize Paper, ImmutableArray<PageItem> Items);
