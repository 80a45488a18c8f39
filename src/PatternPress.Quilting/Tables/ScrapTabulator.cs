using System.Collections.Immutable;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Tables;

/// <summary>Adds the cutting tables' pieces up by role and cut size.</summary>
internal static class ScrapTabulator
{
    /// <summary>The role of what binds the quilt, whatever its fabric.</summary>
    private const string Binding = "binding";

    public static ScrapTable? Tabulate(Making making, ImmutableArray<CuttingTable> cutting)
    {
        Pattern pattern = making.Pattern;
        if (!pattern.Scraps)
        {
            return null;
        }
        var roles = new List<(string Role, List<string> Fabrics)>();
        var counts =
            new Dictionary<(string Role, bool IsStrip, Length Width, Length Height), long[]>();
        foreach (CuttingTable table in cutting)
        {
            Fabric? fabric = pattern.Fabric(table.Fabric);
            string role =
                table.Use == FabricUse.Binding ? Binding
                : fabric is null ? table.Fabric
                : fabric.Use ?? fabric.Name;
            int at = roles.FindIndex(known => known.Role == role);
            if (at < 0)
            {
                at = roles.Count;
                roles.Add((role, []));
            }
            if (!roles[at].Fabrics.Contains(table.Fabric))
            {
                roles[at].Fabrics.Add(table.Fabric);
            }
            foreach (CutRow row in table.Rows)
            {
                for (int i = 0; i < row.BySize.Length; i++)
                {
                    if (row.BySize[i] is not { } cell)
                    {
                        continue;
                    }
                    bool upright = row.WholeStrip || fabric is { Directional: true };
                    var key = (
                        role,
                        row.WholeStrip,
                        upright ? cell.Width : Length.Max(cell.Width, cell.Height),
                        upright ? cell.Height : Length.Min(cell.Width, cell.Height)
                    );
                    if (!counts.TryGetValue(key, out long[]? bySize))
                    {
                        counts.Add(key, bySize = new long[row.BySize.Length]);
                    }
                    bySize[i] += cell.Count;
                }
            }
        }
        return new ScrapTable([
            .. counts
                .OrderBy(row => roles.FindIndex(known => known.Role == row.Key.Role))
                .ThenByDescending(row => row.Key.IsStrip)
                .ThenByDescending(row => row.Key.Height)
                .ThenByDescending(row => row.Key.Width)
                .Select(row => new ScrapRow(
                    row.Key.Role,
                    [.. roles.Find(known => known.Role == row.Key.Role).Fabrics],
                    row.Key.IsStrip,
                    row.Key.Width,
                    row.Key.Height,
                    [.. row.Value.Select(count => count > 0 ? new ScrapCell(count) : null)]
                )),
        ]);
    }
}
