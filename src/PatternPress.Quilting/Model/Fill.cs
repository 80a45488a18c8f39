using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Source;

namespace PatternPress.Quilting.Model;

/// <summary>How colorings are spread over the places of a setting.</summary>
/// <param name="Kind">The way of filling.</param>
/// <param name="Rows">The colorings as written, row by row. One row for the kinds that take a list.</param>
/// <param name="Seed">Starts the scatter; the same seed gives the same quilt everywhere.</param>
public sealed record Fill(
    FillKind Kind,
    ImmutableArray<ImmutableArray<FillCell>> Rows,
    int Seed,
    Span Span
)
{
    /// <summary>Nothing is said of what the quilt is filled with.</summary>
    /// <param name="quilt">Where it could have been said.</param>
    public static Fill None(Span quilt) => new(FillKind.Repeat, [], 0, quilt);

    /// <summary>Whether nothing is said.</summary>
    public bool IsNone => Rows.IsEmpty;
}

/// <summary>One cell of a fill: a coloring and how its block is turned.</summary>
public sealed record FillCell(string Coloring, Turn Turn, Span Span);

public enum FillKind
{
    /// <summary>The whole layout is drawn; its rows and columns must match the size.</summary>
    Map,

    /// <summary>The drawing repeats to the right and down.</summary>
    Repeat,

    /// <summary>Two colorings alternate like the squares of a chess board.</summary>
    Checkerboard,

    /// <summary>The first entry in the middle, the next in the ring of places around it, and so on.</summary>
    Rings,

    /// <summary>Place (r, c) takes entry (r + c): stripes from lower left to upper right; the list repeats.</summary>
    Diagonals,

    /// <summary>Each row of the quilt is one coloring; the list repeats.</summary>
    Rows,

    /// <summary>Spread by chance from a seed: no two edge neighbours alike and each entry used evenly.</summary>
    Scatter,
}
