using System.Collections.Immutable;
using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Tables;

/// <summary>How many panels do instead of yardage, for the fabrics of which the pattern promises it.</summary>
/// <param name="Kind">What several of them are called: "fat quarters".</param>
/// <param name="Width">Across the fabric they were cut from, usable, as bought.</param>
/// <param name="Height">Along that fabric, usable, as bought.</param>
/// <param name="Rows">A fabric each, in the order of the requirements.</param>
public sealed record SubstituteTable(
    string Kind,
    Length Width,
    Length Height,
    ImmutableArray<SubstituteRow> Rows
);

/// <param name="Fabric">Fabric key.</param>
public sealed record SubstituteRow(string Fabric, ImmutableArray<SubstituteCell?> BySize);

/// <param name="ToBuy">How many panels.</param>
/// <param name="Strips">How they are cut, in data only: it shows that the number is enough.</param>
public sealed record SubstituteCell(long ToBuy, StripList Strips);
