using System.Collections.Immutable;
using PatternPress.Typesetting;

namespace PatternPress.ReadBack.Reading;

/// <summary>A page as found in a file.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Pieces">In the order of the content.</param>
/// <param name="Unmarked">Letters that belong to no marked content.</param>
/// <param name="FontsOutside">Names of fonts that are not in the file.</param>
internal sealed record ReadPage(
    int Number,
    Points Width,
    Points Height,
    ImmutableArray<ReadPiece> Pieces,
    int Unmarked,
    ImmutableArray<string> FontsOutside
);

/// <summary>A run of marked content.</summary>
/// <param name="Artifact">Whether it is not part of what is read.</param>
/// <param name="Tag">"P", "TD", "Figure" …</param>
/// <param name="Words">The actual text where the file gives one: "12 5/16".</param>
/// <param name="Boxes">The ink of each word.</param>
internal sealed record ReadPiece(
    bool Artifact,
    string Tag,
    string Words,
    ImmutableArray<ReadWord> Boxes
);

/// <param name="Ink">The box around its letters, from the sheet's upper left corner.</param>
/// <param name="Baseline">Of its first letter.</param>
internal readonly record struct ReadWord(string Words, PageRect Ink, Points Baseline);
