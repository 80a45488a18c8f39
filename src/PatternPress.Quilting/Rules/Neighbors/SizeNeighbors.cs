using System.Collections.Immutable;

namespace PatternPress.Quilting.Rules.Neighbors;

/// <summary>Which fabrics touch somewhere in one size.</summary>
/// <param name="Pairs">Every pair once, in the order of the fabrics.</param>
internal sealed record SizeNeighbors(string Size, ImmutableArray<FabricPair> Pairs);

/// <summary>Two fabrics that share a seam.</summary>
/// <param name="First">Key of the one that stands earlier in the source.</param>
/// <param name="Where">A place where they touch: "in block \"lamp\"".</param>
internal sealed record FabricPair(string First, string Second, string Where);
