using System.Collections.Immutable;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Techniques;

namespace PatternPress.Quilting.Tables;

/// <summary>The cutting instructions of one fabric.</summary>
/// <param name="Fabric">Fabric key.</param>
/// <param name="Use">For the top, or binding bought apart.</param>
/// <param name="Rows">The pieces, in order of id.</param>
/// <param name="BySize">The strips of each size.</param>
public sealed record CuttingTable(
    string Fabric,
    FabricUse Use,
    ImmutableArray<CutRow> Rows,
    ImmutableArray<StripList?> BySize
);

/// <summary>One kind of piece.</summary>
/// <param name="Id">"A1": the fabric and a number.</param>
/// <param name="After">What is done to the piece after it is cut.</param>
/// <param name="WholeStrip">A strip across the whole width of the fabric that is not cut into pieces here.</param>
/// <param name="Uses">For a patch or a unit's piece, where it is used.</param>
public sealed record CutRow(
    string Id,
    CutPurpose Purpose,
    PieceCut After,
    bool WholeStrip,
    ImmutableArray<BlockUse> Uses,
    ImmutableArray<CutCell?> BySize
);

/// <param name="Count">Pieces to cut, before any diagonal cut.</param>
/// <param name="Width">As cut. For a whole strip: the usable width.</param>
/// <param name="Height">As cut.</param>
public sealed record CutCell(long Count, Length Width, Length Height);

/// <summary>The strips that one size cuts from a fabric.</summary>
/// <param name="UsableWidth">The width of fabric the strips are planned for.</param>
/// <param name="StripLength">What each strip gives once its ends are squared.</param>
/// <param name="Strips">In the order they are cut.</param>
/// <param name="Total">Length of fabric all strips take together.</param>
/// <param name="Panels">The panels they are cut from; null for fabric by the yard.</param>
public sealed record StripList(
    Length UsableWidth,
    Length StripLength,
    ImmutableArray<StripRow> Strips,
    Length Total,
    PanelSheet? Panels = null
);

/// <summary>The panels that one size cuts from a fabric.</summary>
/// <param name="Kind">What several of them are called: "fat quarters".</param>
/// <param name="Width">Across the fabric they were cut from, as they are cut up.</param>
/// <param name="Height">Along that fabric.</param>
/// <param name="Layouts">How they are cut.</param>
public sealed record PanelSheet(
    string Kind,
    Length Width,
    Length Height,
    ImmutableArray<PanelRow> Layouts
)
{
    /// <summary>Length of a strip of a layout.</summary>
    public Length Room(int layout) => Layouts[layout].Up ? Height : Width;

    /// <summary>How many are cut.</summary>
    public long Count => Layouts.Sum(layout => layout.Count);
}

/// <summary>Panels that are cut alike.</summary>
/// <param name="Count">How many.</param>
/// <param name="Up">Whether their strips run along the fabric they were cut from rather than across it.</param>
/// <param name="Left">What is left of each beyond its strips.</param>
public sealed record PanelRow(long Count, bool Up, Length Left);

/// <summary>Strips that are cut alike.</summary>
/// <param name="Height">Cut height of each strip.</param>
/// <param name="Count">How many.</param>
/// <param name="Pieces">What each is cut into, from its first end on.</param>
/// <param name="End">What is left at the end of each.</param>
/// <param name="Beside">The row of long pieces, by its index in the list, beside which these strips are cut, across what is left at
/// its end; null for strips across the whole width.</param>
/// <param name="Panel">The panels they are cut from; null for fabric by the yard.</param>
public sealed record StripRow(
    Length Height,
    long Count,
    ImmutableArray<StripPieces> Pieces,
    Length End,
    int? Beside = null,
    PanelStrips? Panel = null
);

/// <summary>Strips of a panel that are cut alike.</summary>
/// <param name="Layout">Index among the ways the panels are cut.</param>
/// <param name="Strips">How many from one panel.</param>
public sealed record PanelStrips(int Layout, long Strips);

/// <param name="Cuts">Ids of the rows; several where equal sizes are cut together.</param>
/// <param name="PerStrip">Pieces from each strip.</param>
/// <param name="Length">Of one piece along the strip.</param>
/// <param name="Height">Of one piece across the strip; less than the strip's where it is trimmed.</param>
public sealed record StripPieces(
    ImmutableArray<string> Cuts,
    long PerStrip,
    Length Length,
    Length Height
);
