using System.Collections.Immutable;

namespace PatternPress.Proofing;

/// <summary>What came of playing the maker with a pattern's printed tables.</summary>
/// <param name="Pattern">The pattern's id.</param>
/// <param name="General">What is wrong with the tables as a whole: rows that name what is not there, columns missing.</param>
/// <param name="Sizes">In the order of the tables.</param>
/// <param name="GeneralChecked">Things compared that belong to no single size.</param>
public sealed record ProofReport(
    string Pattern,
    ImmutableArray<Mistake> General,
    ImmutableArray<SizeProof> Sizes,
    long GeneralChecked
)
{
    /// <summary>Whether every size can be made as printed. Buying or cutting too much does not stand against it.</summary>
    public bool Holds => Verdict != Verdict.Refuted;

    /// <summary>The worst of all sizes.</summary>
    public Verdict Verdict =>
        Sizes.Select(size => size.Verdict).Append(VerdictOf(General)).Append(Verdict.Proved).Max();

    /// <summary>All things compared.</summary>
    public long Checked => GeneralChecked + Sizes.Sum(size => size.Checked);

    /// <summary>All mistakes, those of the whole pattern first, then size by size in the order of making.</summary>
    public IEnumerable<Mistake> Mistakes => General.Concat(Sizes.SelectMany(size => size.Mistakes));

    internal static Verdict VerdictOf(ImmutableArray<Mistake> mistakes) =>
        mistakes.IsEmpty ? Verdict.Proved
        : mistakes.All(mistake => mistake.Kind == MistakeKind.Excess) ? Verdict.ProvedWithExcess
        : Verdict.Refuted;
}
