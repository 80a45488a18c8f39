using PatternPress.Quilting.Finishing;
using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Tables;

/// <summary>Binding of one size.</summary>
/// <param name="Cut">Id of the strips.</param>
/// <param name="Strips">To cut and join.</param>
/// <param name="JoinLoss">Length that each diagonal join takes.</param>
/// <param name="Length">Of the joined strips.</param>
/// <param name="Perimeter">Of the quilt top, raw edge to raw edge.</param>
public sealed record BindingCell(
    string Fabric,
    string Cut,
    long Strips,
    Length StripWidth,
    Length StripLength,
    Length JoinLoss,
    Length Length,
    Length Perimeter
)
{
    /// <summary>Side of the squares that bias strips are made from; null for strips across the fabric. Then the strips are the
    /// long ones that a square gives.</summary>
    public Length? Square { get; init; }

    /// <summary>Radius that the corners are rounded with, finished; null for square ones.</summary>
    public Length? Radius { get; init; }
}

/// <summary>Backing of one size.</summary>
/// <param name="Width">Least width of the backing.</param>
/// <param name="Height">Least height.</param>
/// <param name="FabricWidth">Usable width of the fabric when it is cut.</param>
/// <param name="Panels">Pieces to cut, the whole width of the fabric.</param>
/// <param name="PanelLength">Of each.</param>
/// <param name="JoinLoss">Width that each seam takes.</param>
public sealed record BackingCell(
    string? Fabric,
    Length Width,
    Length Height,
    Length Overhang,
    Length FabricWidth,
    long Panels,
    Length PanelLength,
    BackingSeams Seams,
    Length JoinLoss
);

/// <summary>Batting of one size.</summary>
/// <param name="Width">Least width.</param>
/// <param name="Height">Least height.</param>
/// <param name="Package">The packaged size to buy; null where none is large enough.</param>
public sealed record BattingCell(
    Length Width,
    Length Height,
    Length Overhang,
    BattingPackage? Package
);
