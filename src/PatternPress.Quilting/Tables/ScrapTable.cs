using System.Collections.Immutable;
using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Tables;

/// <summary>All pieces by what their fabrics are for rather than by fabric, for makers who use up scraps.</summary>
/// <param name="Rows">A role's rows stand together.</param>
public sealed record ScrapTable(ImmutableArray<ScrapRow> Rows);

/// <summary>Pieces of one cut size for one role.</summary>
/// <param name="Role">The use of the fabrics, "background"; the name of a fabric without one; "binding".</param>
/// <param name="Fabrics">Keys of the fabrics with that role.</param>
/// <param name="IsStrip">A strip that is joined or sewn whole, of the length given.</param>
/// <param name="Width">As cut; the longer side unless the print has an up.</param>
/// <param name="Height">As cut.</param>
public sealed record ScrapRow(
    string Role,
    ImmutableArray<string> Fabrics,
    bool IsStrip,
    Length Width,
    Length Height,
    ImmutableArray<ScrapCell?> BySize
);

/// <param name="Count">How many, before any diagonal cut.</param>
public sealed record ScrapCell(long Count);
