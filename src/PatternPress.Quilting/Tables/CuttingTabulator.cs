using System.Collections.Immutable;
using PatternPress.Quilting.Cutting;

namespace PatternPress.Quilting.Tables;

/// <summary>The cutting instructions of every fabric.</summary>
internal static class CuttingTabulator
{
    public static ImmutableArray<CuttingTable> Tabulate(Making making)
    {
        var uses = making
            .Shapes.SelectMany(shape => shape.Classes)
            .ToDictionary(c => c.Label, c => c.Uses);
        var patches = PatchUses(making);
        var tables = ImmutableArray.CreateBuilder<CuttingTable>();
        foreach (FabricUse use in new[] { FabricUse.Top, FabricUse.Binding })
        {
            foreach (string fabric in Tabulator.FabricKeys(making, use))
            {
                tables.Add(
                    new CuttingTable(
                        fabric,
                        use,
                        [.. RowsOf(making, fabric, use, uses, patches)],
                        [.. making.Sizes.Select(size => StripsOf(size.Fabric(fabric, use)))]
                    )
                );
            }
        }
        return tables.ToImmutable();
    }

    private static IEnumerable<CutRow> RowsOf(
        Making making,
        string fabric,
        FabricUse use,
        Dictionary<string, ImmutableArray<BlockUse>> uses,
        Dictionary<string, ImmutableArray<BlockUse>> patches
    )
    {
        // Which rows belong to the table is told by the plans, which hold every piece that is cut.
        var ids = new List<string>();
        foreach (SizeMaking size in making.Sizes)
        {
            foreach (
                string id in (size.Fabric(fabric, use)?.Strips ?? [])
                    .SelectMany(strip => strip.Segments)
                    .SelectMany(segment => segment.Cuts)
            )
            {
                if (!ids.Contains(id))
                {
                    ids.Add(id);
                }
            }
        }
        ids.Sort(
            (a, b) => a.Length != b.Length ? a.Length - b.Length : string.CompareOrdinal(a, b)
        );
        foreach (string id in ids)
        {
            ImmutableArray<Cut?> cuts =
            [
                .. making.Sizes.Select(size => size.Cuts.FirstOrDefault(cut => cut.Id == id)),
            ];
            Cut example = cuts.First(cut => cut is not null)!;
            yield return new CutRow(
                id,
                example.Purpose,
                example.After,
                example.WholeStrip,
                example.Purpose switch
                {
                    CutPurpose.UnitPiece piece => uses[piece.Unit],
                    CutPurpose.BlockPatch => patches[id],
                    _ => [],
                },
                [
                    .. cuts.Select(cut =>
                        cut is null ? null : new CutCell(cut.Count, cut.Width, cut.Height)
                    ),
                ]
            );
        }
    }

    private static Dictionary<string, ImmutableArray<BlockUse>> PatchUses(Making making)
    {
        var uses = new Dictionary<string, List<BlockUse>>();
        foreach (BlockMakeup block in making.Blocks)
        {
            foreach (BlockPart part in block.Parts)
            {
                if (part.Cut is null || block.Block is null)
                {
                    continue;
                }
                if (!uses.TryGetValue(part.Cut, out List<BlockUse>? list))
                {
                    uses.Add(part.Cut, list = []);
                }
                var use = new BlockUse(block.Block, block.Coloring, part.Letter);
                if (!list.Contains(use))
                {
                    list.Add(use);
                }
            }
        }
        return uses.ToDictionary(use => use.Key, use => use.Value.ToImmutableArray());
    }

    internal static StripList? StripsOf(FabricPlan? plan) =>
        plan is null
            ? null
            : new StripList(
                plan.UsableWidth,
                plan.StripLength,
                [
                    .. plan.Strips.Select(strip => new StripRow(
                        strip.Height,
                        strip.Count,
                        [
                            .. strip.Segments.Select(segment => new StripPieces(
                                segment.Cuts,
                                segment.PiecesPerStrip,
                                segment.Width,
                                segment.Height
                            )),
                        ],
                        strip.End,
                        strip.Beside,
                        strip.Panel is { } share
                            ? new PanelStrips(share.Layout, share.Strips)
                            : null
                    )),
                ],
                plan.StripsLength,
                plan.Panels is { } panels
                    ? new PanelSheet(
                        panels.Stock.Kind.Name,
                        panels.Stock.Width,
                        panels.Stock.Height,
                        [
                            .. panels.Layouts.Select(
                                (layout, i) =>
                                    new PanelRow(
                                        layout.Count,
                                        layout.Up,
                                        panels.Left(i, plan.Strips)
                                    )
                            ),
                        ]
                    )
                    : null
            );
}
