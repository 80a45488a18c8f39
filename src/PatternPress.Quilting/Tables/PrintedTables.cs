using System.Collections.Immutable;
using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Tables;

/// <summary>
/// Exactly the numbers that a booklet prints, for all sizes, and nothing else: what a maker holds in the hand. Every
/// array "by size" runs in the order of <see cref="Sizes"/>; an entry is null where the row does not apply to a size.
/// </summary>
/// <param name="Pattern">The pattern's id.</param>
/// <param name="Unit">The unit that measures are printed in.</param>
/// <param name="Fabrics">In the order of the source, those that are used in any size.</param>
/// <param name="Cutting">One table for each line of the requirements that is cut into strips.</param>
/// <param name="Units">The units to sew, in the order they are numbered.</param>
/// <param name="Blocks">One row for each coloring, in the order of the source.</param>
/// <param name="Placement">One chart for each size.</param>
/// <param name="Sashing">Sashing strips and cornerstones.</param>
/// <param name="Borders">From the inside out.</param>
/// <param name="Binding">By size.</param>
/// <param name="Backing">By size; batting is told by the requirements.</param>
/// <param name="Templates">Shapes printed in true size, to cut pieces around.</param>
/// <param name="Patches">The pieces of a one-patch quilt.</param>
/// <param name="Foundations">Sections printed in true size, to sew on.</param>
/// <param name="Appliques">Shapes printed in true size, to trace and fuse.</param>
/// <param name="Substitute">Panels instead of yardage, where the pattern promises it.</param>
/// <param name="Scraps">All pieces by role, where the pattern asks for it.</param>
public sealed record PrintedTables(
    string Pattern,
    string Title,
    string Edition,
    LengthUnit Unit,
    ImmutableArray<SizeColumn> Sizes,
    ImmutableArray<FabricLabel> Fabrics,
    RequirementsTable Requirements,
    ImmutableArray<CuttingTable> Cutting,
    ImmutableArray<UnitTable> Units,
    ImmutableArray<BlockRow> Blocks,
    ImmutableArray<PlacementChart> Placement,
    ImmutableArray<SashingRow> Sashing,
    ImmutableArray<TriangleRow> Triangles,
    ImmutableArray<BorderRow> Borders,
    ImmutableArray<BindingCell?> Binding,
    ImmutableArray<BackingCell?> Backing,
    ImmutableArray<TemplateTable> Templates,
    ImmutableArray<PatchRow> Patches,
    ImmutableArray<FoundationTable> Foundations,
    ImmutableArray<AppliqueTable> Appliques,
    SubstituteTable? Substitute = null,
    ScrapTable? Scraps = null
);
