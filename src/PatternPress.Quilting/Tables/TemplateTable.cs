using System.Collections.Immutable;
using PatternPress.Quilting.Techniques;

namespace PatternPress.Quilting.Tables;

/// <summary>A template, printed in true size: a shape that pieces are cut to which no ruler cuts.</summary>
/// <param name="Name">"T1".</param>
/// <param name="Unit">Number of the unit it is for; null for the patches of a one-patch quilt.</param>
/// <param name="Piece">The technique's name for the piece.</param>
/// <param name="Cuts">Ids of the pieces it is laid on, fabric by fabric.</param>
/// <param name="BySize">Its shape in each size.</param>
public sealed record TemplateTable(
    string Name,
    int? Unit,
    string Piece,
    ImmutableArray<string> Cuts,
    ImmutableArray<TemplateCell?> BySize
);

/// <param name="Shape">As it is printed.</param>
/// <param name="Counts">Pieces to cut, in the order of the template's cuts; 0 where the size has none.</param>
public sealed record TemplateCell(PieceTemplate Shape, ImmutableArray<long> Counts);
