using System.Collections.Immutable;
using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Techniques;

/// <summary>How one batch of a unit is made: pieces in, units out.</summary>
/// <param name="Technique">The technique's keyword.</param>
/// <param name="Pieces">What is cut for one batch.</param>
/// <param name="Yield">Units from one batch.</param>
/// <param name="UnfinishedWidth">The unit's width when sewn and trimmed: finished + 2 seams.</param>
/// <param name="UnfinishedHeight">Its height.</param>
/// <param name="Trim">Whether the unit comes out larger and is trimmed to its unfinished size.</param>
/// <param name="Leftovers">What one batch leaves that is worth keeping (the flipped corners cut off), per batch.</param>
/// <param name="Steps">The steps in order, each with its diagram.</param>
/// <param name="Measures">Further measures the step text quotes, by name ("segment", "sew-line").</param>
public sealed record Recipe(
    string Technique,
    ImmutableArray<RecipePiece> Pieces,
    int Yield,
    Length UnfinishedWidth,
    Length UnfinishedHeight,
    bool Trim,
    ImmutableArray<Leftover> Leftovers,
    ImmutableArray<Step> Steps,
    ImmutableDictionary<string, Length> Measures
)
{
    /// <summary>The strip sets of one batch, in the order of the rows they give; empty for other techniques.</summary>
    public ImmutableArray<StripSet> StripSets { get; init; } = [];

    /// <summary>The least number of whole batches that give that many units.</summary>
    public long BatchesFor(long units) => (units + Yield - 1) / Yield;

    /// <summary>
    /// What is cut for a number of units. Strip sets are counted each by itself, which may need fewer strips than
    /// whole batches; everything else comes in whole batches.
    /// </summary>
    public ImmutableArray<RecipePiece> PiecesFor(long units)
    {
        if (StripSets.IsEmpty)
        {
            long batches = BatchesFor(units);
            return
            [
                .. Pieces.Select(p =>
                    p with
                    {
                        Count = checked(
                            (int)(
                                p.InStrip > 0
                                    ? ((p.Slices * batches) + p.InStrip - 1) / p.InStrip
                                    : p.Count * batches
                            )
                        ),
                    }
                ),
            ];
        }
        return
        [
            .. Pieces.Select(p =>
                p with
                {
                    Count = StripSets.Sum(set =>
                        set.SetsFor(units) * set.Roles.Count(role => role == p.Role)
                    ),
                }
            ),
        ];
    }
}

/// <summary>
/// A piece of a recipe as it is cut. Several may have one name where the same piece is cut from the fabrics of
/// several roles; they are then of one size.
/// </summary>
/// <param name="Name">Which piece it is within the technique, for step text and tables: "large square".</param>
/// <param name="Role">Whose fabric.</param>
/// <param name="Width">Cut width; the usable width of the fabric for a whole strip.</param>
/// <param name="Height">Cut height, along the length of the fabric.</param>
/// <param name="Exactly">The exact (unrounded) cut width and height, for the proof.</param>
/// <param name="Count">Pieces per batch.</param>
/// <param name="Cut">What is done to it after it is cut.</param>
/// <param name="WholeStrip">Whether it is a strip across the whole width of the fabric, not subcut before sewing.</param>
public sealed record RecipePiece(
    string Name,
    int Role,
    Length Width,
    Length Height,
    (Length Width, Length Height) Exactly,
    int Count,
    PieceCut Cut,
    bool WholeStrip
)
{
    /// <summary>The shape it is cut to around a template; null for pieces that a ruler cuts.</summary>
    public PieceTemplate? Template { get; init; }

    /// <summary>Pieces that a batch takes where they are sliced at an angle from whole strips; else 0. Then <see cref="Count"/> is the
    /// strips for a single batch.</summary>
    public int Slices { get; init; }

    /// <summary>How many such pieces a strip gives; 0 where none are sliced.</summary>
    public int InStrip { get; init; }
}

/// <summary>What is done to a square before it is sewn.</summary>
public enum PieceCut
{
    None,

    /// <summary>Cut once corner to corner: two half-square triangles.</summary>
    OnceDiagonally,

    /// <summary>Cut corner to corner both ways: four quarter-square triangles.</summary>
    TwiceDiagonally,

    /// <summary>A strip cut across at 60 degrees into triangles, diamonds or half hexagons.</summary>
    AcrossAtSixty,

    /// <summary>Cut along a template laid on it: one piece.</summary>
    AroundTemplate,

    /// <summary>A strip cut across at 45°, as far apart as it is wide: diamonds.</summary>
    AcrossAtFortyFive,
}

/// <summary>Strips sewn side by side and cut across into segments, each a row of a unit.</summary>
/// <param name="Roles">Whose fabric each strip is, in the order they are sewn.</param>
/// <param name="SegmentsPerUnit">Segments of this set in one unit.</param>
/// <param name="SegmentsPerSet">Segments that one set gives across the usable width.</param>
/// <param name="Segment">Cut width of a segment.</param>
public sealed record StripSet(
    ImmutableArray<int> Roles,
    int SegmentsPerUnit,
    int SegmentsPerSet,
    Length Segment
)
{
    /// <summary>Sets to sew for that many units.</summary>
    public int SetsFor(long units) =>
        checked((int)(((units * SegmentsPerUnit) + SegmentsPerSet - 1) / SegmentsPerSet));
}

/// <summary>Something left over by a batch that a maker may keep.</summary>
/// <param name="Name">"half-square triangle unit".</param>
/// <param name="Width">Size it can be trimmed to, unfinished.</param>
public sealed record Leftover(string Name, int Count, Length Width, Length Height);
