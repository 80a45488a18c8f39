using System.Collections.Immutable;

namespace PatternPress.Booklet.Proofreading;

/// <summary>A part of a proof sheet, whatever it is written as.</summary>
/// <param name="Heading">Empty where the part goes on with the one before.</param>
/// <param name="Level">1 for a chapter, 2 below it.</param>
/// <param name="Words">A line below the heading; may be empty.</param>
internal sealed record SheetPart(string Heading, int Level, string Words, SheetTable? Table)
{
    /// <summary>Whether it says all that there is to say below its heading; else parts of a lower level follow.</summary>
    public bool IsWhole { get; init; } = true;
}

/// <param name="Heads">One for each column; the first column heads its row.</param>
/// <param name="Ticked">Whether each row has a box to tick before it.</param>
internal sealed record SheetTable(
    ImmutableArray<string> Heads,
    ImmutableArray<ImmutableArray<string>> Rows,
    bool Ticked
);
