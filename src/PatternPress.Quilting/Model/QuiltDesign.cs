using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Source;

namespace PatternPress.Quilting.Model;

/// <summary>The quilt as designed, before a size is chosen; a size may change any part.</summary>
public sealed record QuiltDesign(
    Sourced<string> Setting,
    SashingDesign? Sashing,
    Fill Fill,
    ImmutableArray<BorderDesign> Borders,
    BindingDesign? Binding,
    Sourced<string>? Backing,
    bool Batting,
    Span Span
);

/// <summary>Strips between blocks.</summary>
/// <param name="Cornerstones">Fabric of the squares where strips meet; null for plain strips between rows.</param>
/// <param name="Around">Whether strips run around the outside too.</param>
public sealed record SashingDesign(
    Length Width,
    Sourced<string> Fabric,
    Sourced<string>? Cornerstones,
    bool Around,
    Span Span
);

/// <summary>One border, from the inside out.</summary>
public sealed record BorderDesign(
    Length Width,
    Sourced<string> Fabric,
    BorderCorners Corners,
    Sourced<string>? CornerFabric,
    string? Name,
    Span Span
);

/// <summary>How a border turns its corners.</summary>
public enum BorderCorners
{
    /// <summary>Side strips are sewn first; top and bottom run the full width.</summary>
    SidesFirst,

    /// <summary>Top and bottom strips are sewn first; the sides run the full height.</summary>
    TopFirst,

    /// <summary>A square of another fabric in each corner.</summary>
    Squares,
}

public sealed record BindingDesign(Sourced<string> Fabric, Length? Width, Span Span);
