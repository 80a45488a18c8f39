using System.Collections.Immutable;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Tables;

namespace PatternPress.Proofing;

/// <summary>
/// Plays the maker who holds nothing but the printed tables: buys, cuts, sews and lays out every size and compares
/// what comes out with the drawing.
/// </summary>
public static class Proof
{
    /// <param name="drawing">Every size of the tables, in their order.</param>
    public static ProofReport Prove(PrintedTables tables, ImmutableArray<Quilt> drawing) =>
        new Prover(drawing).Prove(tables);
}
