using System.Collections.Immutable;
using PatternPress.Proofing.Shapes;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;

namespace PatternPress.Proofing.Ways;

/// <summary>What a way of making a unit takes and gives.</summary>
/// <param name="Pieces">For one batch.</param>
/// <param name="Yield">Units from one batch.</param>
/// <param name="Patches">The finished unit as it is pictured.</param>
internal sealed record WayPlan(
    ImmutableArray<NeededPiece> Pieces,
    long Yield,
    ImmutableArray<UnitPatch> Patches
)
{
    /// <summary>Strip sets, in the order of the rows they give; empty for other ways.</summary>
    public ImmutableArray<NeededSet> Sets { get; init; } = [];

    /// <summary>Height of a segment that is cut from a strip set: what its side must show.</summary>
    public PieceSide Segment { get; init; }

    /// <summary>Shapes that pieces are cut to around templates.</summary>
    public ImmutableArray<NeededTemplate> Templates { get; init; } = [];

    /// <summary>
    /// How many segments a set gives, from the heights of its strips as cut by role and the width of a segment; null where they are
    /// cut straight across.
    /// </summary>
    public Func<IReadOnlyDictionary<int, Length>, Length, long>? SegmentsFrom { get; init; }

    /// <summary>Whether the unit always comes out larger, however its pieces are cut.</summary>
    public bool Trims { get; init; }

    /// <summary>Whether the unit always comes out larger and is trimmed.</summary>
    public bool AlwaysTrim { get; init; }

    /// <summary>Corners stitched and flipped for one batch.</summary>
    public int Flips { get; init; }

    /// <summary>Name of the piece that is flipped.</summary>
    public string Flipped { get; init; } = "";

    /// <summary>Measures that the steps quote beside those of its pieces, by name.</summary>
    public IReadOnlyDictionary<string, Length> Measures { get; init; } =
        new Dictionary<string, Length>();

    /// <summary>Name of the piece that is cut through the middle; empty if none is.</summary>
    public string Halved { get; init; } = "";
}

/// <summary>Strips that are sewn side by side.</summary>
/// <param name="Roles">Whose fabric each is.</param>
/// <param name="PerUnit">Segments of it in a unit.</param>
internal sealed record NeededSet(ImmutableArray<int> Roles, int PerUnit);

/// <summary>What the template of a piece must show.</summary>
/// <param name="Piece">As the steps call it.</param>
/// <param name="Seam">The finished shape.</param>
/// <param name="Cut">With its seam allowance.</param>
/// <param name="Notches">Where each mark meets the seam line and the cut line.</param>
internal sealed record NeededTemplate(
    string Piece,
    Polygon Seam,
    Polygon Cut,
    ImmutableArray<(Point OnSeam, Point OnCut)> Notches
);
