using System.Collections.Immutable;
using PatternPress.Source;

namespace PatternPress.Quilting.Model;

/// <summary>A block with a fabric for each of its parts; or, without a block, one plain piece of fabric.</summary>
/// <param name="Block">The block's key; null for a plain block.</param>
/// <param name="Fabrics">Fabric key by part name; a plain block has the single part "plain".</param>
/// <param name="Order">Its place in the source, from 0.</param>
public sealed record Coloring(
    string Key,
    string? Block,
    ImmutableDictionary<string, string> Fabrics,
    int Order,
    Span Span
)
{
    /// <summary>The part name of a plain block.</summary>
    public const string PlainPart = "plain";

    public bool IsPlain => Block is null;
}
