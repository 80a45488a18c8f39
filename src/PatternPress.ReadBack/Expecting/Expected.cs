using System.Collections.Immutable;

namespace PatternPress.ReadBack.Expecting;

/// <summary>Words that must be in the file.</summary>
/// <param name="Words">As a reader sees them; empty for a page number, of which only the digits are known.</param>
/// <param name="Heads">Of a cell: what stands above its columns.</param>
internal sealed record Expected(WordsKind Kind, string Words, ImmutableArray<string> Heads)
{
    /// <summary>The row of a table that it stands in, counted through the document from 1; 0 outside of tables.</summary>
    public int Row { get; init; }

    public bool IsPageNumber => Words.Length == 0;

    /// <summary>What is compared.</summary>
    public string Bare { get; } = Expecting.Bare.Of(Words);
}
