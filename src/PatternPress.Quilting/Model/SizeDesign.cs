using PatternPress.Quilting.Measures;
using PatternPress.Source;

namespace PatternPress.Quilting.Model;

/// <summary>One size of the quilt as designed.</summary>
/// <param name="Columns">Blocks across.</param>
/// <param name="Rows">Blocks down.</param>
/// <param name="BlockSize">The longer side of the blocks at this size; null for the size the blocks name.</param>
/// <param name="Quilt">The quilt's design with this size's changes made.</param>
/// <param name="House">The house rules with this size's changes made.</param>
/// <param name="Order">Its place in the source, from 0.</param>
public sealed record SizeDesign(
    string Key,
    string Name,
    int Columns,
    int Rows,
    Length? BlockSize,
    QuiltDesign Quilt,
    House House,
    int Order,
    Span Span
);
