using System.Collections.Immutable;

namespace PatternPress.ReadBack;

/// <summary>Words that were found in the file, as a reader sees them.</summary>
/// <param name="Page">From 1.</param>
/// <param name="Heads">Of a cell: what stands above its columns; else empty.</param>
public sealed record PrintedWords(
    WordsKind Kind,
    int Page,
    string Words,
    ImmutableArray<string> Heads
);

public enum WordsKind
{
    Paragraph,
    Heading,

    /// <summary>Of a table, headers too.</summary>
    Cell,

    /// <summary>What stands before an item of a list: the number of a step.</summary>
    ListLabel,
    Caption,

    /// <summary>A line of the table of contents.</summary>
    Contents,

    /// <summary>Labels within a figure.</summary>
    Figure,
}
