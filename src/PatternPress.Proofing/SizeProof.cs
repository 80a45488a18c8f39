using System.Collections.Immutable;

namespace PatternPress.Proofing;

/// <summary>What came of making one size.</summary>
/// <param name="Size">Key of the size.</param>
/// <param name="Checked">Things compared.</param>
/// <param name="Mistakes">In the order of making.</param>
/// <param name="Remainders">What is left over as printed: fabric, pieces of strips, units that a batch makes beyond need.</param>
public sealed record SizeProof(
    string Size,
    long Checked,
    ImmutableArray<Mistake> Mistakes,
    ImmutableArray<Remainder> Remainders
)
{
    public Verdict Verdict => ProofReport.VerdictOf(Mistakes);

    /// <summary>The first step that a maker could not do as printed; null if there is none.</summary>
    public Mistake? FirstWrongStep =>
        Mistakes.FirstOrDefault(mistake => mistake.Kind != MistakeKind.Excess);

    /// <summary>Where the maker runs short.</summary>
    public IEnumerable<Mistake> Shortages =>
        Mistakes.Where(mistake => mistake.Kind == MistakeKind.Short);

    /// <summary>Where the maker buys, cuts or makes more than need be.</summary>
    public IEnumerable<Mistake> Excesses =>
        Mistakes.Where(mistake => mistake.Kind == MistakeKind.Excess);
}

public enum Verdict
{
    /// <summary>The quilt comes out as drawn and nothing is bought, cut or made in vain.</summary>
    Proved,

    /// <summary>The quilt comes out as drawn; something printed is more than need be.</summary>
    ProvedWithExcess,

    /// <summary>A maker who follows the tables does not get the quilt as drawn.</summary>
    Refuted,
}
