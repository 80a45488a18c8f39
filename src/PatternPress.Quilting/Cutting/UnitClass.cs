using System.Collections.Immutable;

namespace PatternPress.Quilting.Cutting;

/// <summary>
/// Units that are made together: alike in kind, form and fabrics in every size of the pattern, so that one row of a
/// table means the same thing in all its columns.
/// </summary>
/// <param name="Label">Its name in print: "1" or, where a shape comes in several combinations of fabrics, "1a", "1b".</param>
/// <param name="Fabrics">Fabric key by role.</param>
/// <param name="Uses">Where it is used: block and map letter, in the order of the source.</param>
public sealed record UnitClass(
    string Label,
    ImmutableArray<string> Fabrics,
    ImmutableArray<BlockUse> Uses
);
