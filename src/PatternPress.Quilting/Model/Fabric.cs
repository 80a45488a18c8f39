using PatternPress.Quilting.Measures;
using PatternPress.Source;

namespace PatternPress.Quilting.Model;

/// <summary>One fabric of a pattern.</summary>
/// <param name="Key">The letter (or short name) that stands for it everywhere: in maps, tables and diagrams.</param>
/// <param name="Color">The flat colour it is drawn in; where the source names none, that of its picture from afar.</param>
/// <param name="Print">A word for its print: dot, stripe, check, blender …; null for a solid.</param>
/// <param name="Use">What the designer calls its role: background, accent …; may be null.</param>
/// <param name="Directional">Whether the print has an up: pieces may not be turned when cut.</param>
/// <param name="UsableWidth">Its own usable width; null for the house's.</param>
/// <param name="UsableWidthTo">The widest it may be, where it has a range of its own.</param>
/// <param name="Order">Its place in the source, from 0.</param>
public sealed record Fabric(
    string Key,
    string Name,
    Color Color,
    string? Print,
    string? Use,
    string? Collection,
    bool Directional,
    Length? UsableWidth,
    Length? UsableWidthTo,
    int Order,
    Span Span
)
{
    /// <summary>The panels it is bought in; null for fabric by the yard.</summary>
    public Panel? Panel { get; init; }

    /// <summary>The designer's picture of it; null for none.</summary>
    public Cloth? Cloth { get; init; }
}
