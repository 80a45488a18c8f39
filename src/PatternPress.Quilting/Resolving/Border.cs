using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Resolving;

/// <summary>One border in its place.</summary>
/// <param name="Number">From 1 at the inside; numbers of borders that a size leaves out are missing.</param>
/// <param name="Inside">What it goes round.</param>
/// <param name="Widths">Finished, on the four sides.</param>
/// <param name="Pieces">Strips and corner squares.</param>
public sealed record Border(
    int Number,
    BorderDesign Design,
    Rect Inside,
    BorderWidths Widths,
    ImmutableArray<BorderPiece> Pieces
)
{
    /// <summary>Blocks along its sides, each side from its left end seen with that side up, and in its corners, clockwise from
    /// the upper left one.</summary>
    public ImmutableArray<BorderBlock> Blocks { get; init; } = [];

    /// <summary>Whether it is there to make the blocks of the next border come out.</summary>
    public bool IsCoping { get; init; }

    /// <summary>Whether it is one of a medallion's rounds.</summary>
    public bool IsRound { get; init; }

    /// <summary>Whether its sides are rows of blocks.</summary>
    public bool IsPieced => Design.Blocks is not null;

    public Rect Outside =>
        new(
            Inside.X - Widths.Left,
            Inside.Y - Widths.Top,
            Inside.Width + Widths.Left + Widths.Right,
            Inside.Height + Widths.Top + Widths.Bottom
        );

    public Border MovedBy(Point by) =>
        this with
        {
            Inside = Inside.MoveBy(by),
            Pieces = [.. Pieces.Select(piece => piece.MovedBy(by))],
            Blocks = [.. Blocks.Select(block => block with { Place = block.Place.MovedBy(by) })],
        };

    /// <summary>Every patch of the border: strips and squares, then blocks.</summary>
    public IEnumerable<Patch> Patches()
    {
        foreach (BorderPiece piece in Pieces)
        {
            yield return new Patch(piece.Outline, piece.Fabric);
        }
        foreach (BorderBlock block in Blocks)
        {
            foreach (Patch patch in block.Place.Patches())
            {
                yield return patch;
            }
        }
    }
}

/// <summary>A border strip or corner square.</summary>
/// <param name="Place">Finished; of a strip with mitered ends the rectangle it lies in.</param>
public sealed record BorderPiece(BorderSide Side, Rect Place, string Fabric)
{
    /// <summary>Its shape where its ends are mitered; else null.</summary>
    public Polygon? Mitered { get; init; }

    public Polygon Outline => Mitered ?? Place.ToPolygon();

    public BorderPiece MovedBy(Point by) =>
        this with
        {
            Place = Place.MoveBy(by),
            Mitered = Mitered?.MoveBy(by),
        };
}

/// <summary>A block of a border.</summary>
/// <param name="Turn">How it is turned seen with its side up: as it is sewn into its row.</param>
/// <param name="Place">Where it lies in the quilt, turned with its side.</param>
public sealed record BorderBlock(BorderSide Side, Turn Turn, BlockPlace Place);

public enum BorderSide
{
    Left,
    Right,
    Top,
    Bottom,
    Corner,
}
