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
)
{
    /// <summary>The fill of the places in between the rows and columns of a setting on point; null where <see cref="Fill"/>
    /// covers them too, or there are none.</summary>
    public Fill? Between { get; init; }

    /// <summary>The triangles along the edge of a setting on point.</summary>
    public TriangleDesign? Triangles { get; init; }

    /// <summary>Finished widths of the columns, from the left, where blocks may be of several sizes; they repeat.</summary>
    public Sourced<ImmutableArray<Length>>? Columns { get; init; }

    /// <summary>The half blocks at the ends of staggered lines: one line of one or two colorings.</summary>
    public Fill? Ends { get; init; }

    /// <summary>Whether lines of blocks run down the quilt; null where it is not said.</summary>
    public Sourced<bool>? AlongColumns { get; init; }

    /// <summary>Finished heights of the rows, from the top; they repeat.</summary>
    public Sourced<ImmutableArray<Length>>? Rows { get; init; }
}

/// <summary>The triangles that fill the edge of a setting on point.</summary>
/// <param name="Sides">Fabric of the side triangles.</param>
/// <param name="Corners">Fabric of the corner triangles.</param>
/// <param name="Float">How far the points of the outer blocks stay away from the edge, finished.</param>
public sealed record TriangleDesign(
    Sourced<string> Sides,
    Sourced<string> Corners,
    Length Float,
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

    /// <summary>The strips meet in a seam at 45° from the inner to the outer corner.</summary>
    Mitered,
}

public sealed record BindingDesign(Sourced<string> Fabric, Length? Width, Span Span);
