using PatternPress.Quilting.Tables;

namespace PatternPress.Proofing;

/// <summary>The rows of the tables by the names that other rows call them by.</summary>
internal sealed class TableIndex(PrintedTables tables)
{
    public PrintedTables Tables { get; } = tables;

    public Dictionary<string, (CuttingTable Table, CutRow Row)> Cuts { get; } = [];

    public Dictionary<string, (UnitTable Table, UnitRow Row)> Units { get; } = [];

    public Dictionary<(string Coloring, int Number), BlockRow> Blocks { get; } = [];

    public Dictionary<string, FabricLabel> Fabrics { get; } = [];

    public bool IsDirectional(string fabric) =>
        Fabrics.TryGetValue(fabric, out FabricLabel? label) && label.Directional;

    public static string Named(CuttingTable table) =>
        table.Use == FabricUse.Binding
            ? $"cutting {table.Fabric} for binding"
            : $"cutting {table.Fabric}";

    public static string Named(UnitTable table) => $"unit {table.Number}, {table.KindName}";

    public static string Named(BlockRow row) =>
        row.Number == 1 ? row.Coloring : $"{row.Coloring} number {row.Number}";
}
