using System.Collections.Immutable;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Rules.Neighbors;
using PatternPress.Source;

namespace PatternPress.Quilting.Rules;

/// <summary>What the checking rules look at: the pattern as designed and what was computed from it.</summary>
/// <param name="pattern">The design.</param>
/// <param name="quilts">One for every size that could be resolved, in the designer's order.</param>
/// <param name="making">How those sizes are made, with the problems met; asked for once it is needed.</param>
/// <param name="source">The file's text, so that a rule can point into prose; null points at the whole of it.</param>
public sealed class RuleContext(
    Pattern pattern,
    ImmutableArray<Quilt> quilts,
    Func<Making> making,
    SourceText? source = null
)
{
    private Making? _making;

    // Most rules ask for them.
    private readonly Dictionary<Quilt, ColoredBlock[]> _blocks = CountBlocks(quilts);

    private ImmutableArray<SizeNeighbors>? _neighbors;

    public RuleContext(
        Pattern pattern,
        ImmutableArray<Quilt> quilts,
        Making making,
        SourceText? source = null
    )
        : this(pattern, quilts, () => making, source) { }

    public Pattern Pattern { get; } = pattern;

    public ImmutableArray<Quilt> Quilts { get; } = quilts;

    public Making Making => _making ??= making();

    public SourceText? Source { get; } = source;

    /// <summary>Whether every size was resolved: only then is "nowhere used" true.</summary>
    public bool IsWhole => Quilts.Length == Pattern.Sizes.Length;

    /// <summary>Which fabrics touch in each size; worked out once for all rules that ask.</summary>
    internal ImmutableArray<SizeNeighbors> Neighbors =>
        _neighbors ??= [.. NeighborFinder.Find(this)];

    /// <summary>The different colored blocks of a quilt, in order of coloring.</summary>
    /// <param name="quilt">One of <see cref="Quilts"/>.</param>
    internal ColoredBlock[] BlocksOf(Quilt quilt) => _blocks[quilt];

    private static Dictionary<Quilt, ColoredBlock[]> CountBlocks(ImmutableArray<Quilt> quilts)
    {
        var blocks = new Dictionary<Quilt, ColoredBlock[]>(ReferenceEqualityComparer.Instance);
        foreach (Quilt quilt in quilts)
        {
            blocks.Add(quilt, [.. quilt.BlockCounts().Select(count => count.Block)]);
        }
        return blocks;
    }
}
