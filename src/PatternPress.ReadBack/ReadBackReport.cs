using System.Collections.Immutable;

namespace PatternPress.ReadBack;

/// <summary>What reading a written file again has shown.</summary>
/// <param name="Misprints">In the order of the pages.</param>
/// <param name="Words">All words found where they were expected, and the labels in figures.</param>
/// <param name="Compared">Pieces of text compared.</param>
public sealed record ReadBackReport(
    ImmutableArray<Misprint> Misprints,
    ImmutableArray<PrintedWords> Words,
    int Compared
);
