using System.Collections.Immutable;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Editions;

namespace PatternPress.Booklet.Proofreading;

/// <summary>What a proof sheet tells besides the numbers and how they came about.</summary>
/// <param name="Making">How everything was computed.</param>
/// <param name="Holds">Whether every size stands the proof.</param>
/// <param name="Sizes">By size, in the order of the tables.</param>
/// <param name="Findings">What was found about the pattern, each in a line.</param>
/// <param name="Since">What differs from the edition released last; null where none has been.</param>
/// <param name="Fingerprints">SHA-256 of the program and the files, by name.</param>
public sealed record ProofNotes(
    Making Making,
    bool Holds,
    ImmutableArray<SizeNotes> Sizes,
    ImmutableArray<FindingNote> Findings,
    EditionComparison? Since,
    ImmutableArray<(string Name, string Digest)> Fingerprints
);

/// <param name="Checked">Things compared.</param>
/// <param name="Mistakes">What does not stand the proof, and what is more than need be.</param>
/// <param name="Left">What is left over when the quilt is done.</param>
public sealed record SizeNotes(
    string Size,
    bool Holds,
    long Checked,
    ImmutableArray<string> Mistakes,
    ImmutableArray<(string What, string HowMuch)> Left
);

public sealed record FindingNote(string Code, string Severity, string Text);
