using System.Collections.Immutable;

namespace PatternPress.Quilting.Model;

/// <summary>A whole pattern as read from its source file: names checked, measures exact, nothing computed yet.</summary>
/// <param name="Id">The file's name without its endings.</param>
/// <param name="Methods">The technique the designer asks for, by unit keyword ("half-square") or block and letter ("lamp.G").</param>
public sealed record Pattern(
    string Id,
    string File,
    PatternInfo Info,
    House House,
    ImmutableArray<Fabric> Fabrics,
    ImmutableArray<BlockDesign> Blocks,
    ImmutableArray<Coloring> Colorings,
    ImmutableDictionary<string, Sourced<string>> Methods,
    ImmutableArray<SizeDesign> Sizes
)
{
    /// <summary>What its fabrics can be cut from besides yardage; null where it promises nothing.</summary>
    public Promise? Suits { get; init; }

    /// <summary>Whether pieces are also counted by role, for makers who use up scraps.</summary>
    public bool Scraps { get; init; }

    public Fabric? Fabric(string key) => Fabrics.FirstOrDefault(f => f.Key == key);

    public BlockDesign? Block(string key) => Blocks.FirstOrDefault(b => b.Key == key);

    public Coloring? Coloring(string key) => Colorings.FirstOrDefault(c => c.Key == key);
}
