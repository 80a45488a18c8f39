using System.Collections.Immutable;
using System.Text;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Techniques;

namespace PatternPress.Quilting.Tables;

/// <summary>All tables as plain text, for review and for comparison in tests. One line a row, a column a size.</summary>
public sealed class TablesText
{
    private readonly PrintedTables _tables;
    private readonly StringBuilder _text = new();

    private TablesText(PrintedTables tables) => _tables = tables;

    public static string Of(PrintedTables tables)
    {
        var text = new TablesText(tables);
        text.Write();
        return text._text.ToString();
    }

    private void Write()
    {
        _text.Append($"{_tables.Title} ({_tables.Pattern}), edition {_tables.Edition}\n");
        Sizes();
        Requirements();
        Substitute();
        Scraps();
        Cutting();
        foreach (UnitTable unit in _tables.Units)
        {
            Unit(unit);
        }
        Templates();
        Patches();
        Foundations();
        Appliques();
        Blocks();
        foreach (PlacementChart chart in _tables.Placement)
        {
            Placement(chart);
        }
        Sashing();
        Triangles();
        Borders();
        Finishing();
    }

    private void Sizes()
    {
        Head("Sizes");
        Grid(
            Row("finished", s => Size(s.Width, s.Height)),
            Row("center", s => Size(s.CenterWidth, s.CenterHeight)),
            Row(
                "blocks",
                s => s.Across == 0 ? $"{s.Blocks}" : $"{s.Across} × {s.Down} = {s.Blocks}"
            ),
            Row("seam", s => L(s.Seam))
        );
    }

    private void Requirements()
    {
        Head("Requirements");
        RequirementsTable table = _tables.Requirements;
        var rows = new List<string[]> { SizeNames() };
        rows.AddRange(table.Fabrics.Select(row => Bought($"{row.Fabric} {Name(row.Fabric)}", row)));
        rows.AddRange(table.Binding.Select(row => Bought($"binding {row.Fabric}", row)));
        rows.AddRange(table.Backing.Select(row => Bought($"backing {row.Fabric ?? "(any)"}", row)));
        rows.AddRange(table.Totals.Select(row => Bought($"total {row.Fabric}", row)));
        rows.Add([
            "batting",
            .. table.Batting.Select(cell =>
                cell is null ? "-"
                : cell.Package is { } package
                    ? $"{Size(cell.Width, cell.Height)}: {package.Name} {Size(package.Width, package.Height)}"
                : Size(cell.Width, cell.Height)
            ),
        ]);
        Align(rows);
    }

    private void Substitute()
    {
        if (_tables.Substitute is not { } table)
        {
            return;
        }
        Head($"Instead: {table.Kind} of {Size(table.Width, table.Height)}");
        Align([
            SizeNames(),
            .. table.Rows.Select(row =>
                (string[])
                    [
                        $"{row.Fabric} {Name(row.Fabric)}",
                        .. row.BySize.Select(cell => cell is null ? "-" : $"{cell.ToBuy}"),
                    ]
            ),
        ]);
        foreach (SubstituteRow row in table.Rows)
        {
            for (int i = 0; i < row.BySize.Length; i++)
            {
                if (row.BySize[i] is { } cell)
                {
                    Strips($"{row.Fabric} {_tables.Sizes[i].Key}", cell.Strips);
                }
            }
        }
    }

    private void Scraps()
    {
        if (_tables.Scraps is not { } table)
        {
            return;
        }
        Head("Scraps");
        Align([
            SizeNames(),
            .. table.Rows.Select(row =>
                (string[])
                    [
                        $"{row.Role} ({string.Join(" ", row.Fabrics)}) {(row.IsStrip ? "strips " : "")}{Size(row.Width, row.Height)}",
                        .. row.BySize.Select(cell => cell is null ? "-" : $"{cell.Count}"),
                    ]
            ),
        ]);
    }

    private string[] Bought(string name, RequirementRow row) =>
        [
            name,
            .. row.BySize.Select(cell =>
                cell is null ? "-"
                : cell.Panels is { } panels
                    ? $"{panels.ToBuy} {panels.Kind} of {Size(panels.Width, panels.Height)}"
                : $"{HouseText.Bought(cell.Yardage, _tables.Unit)} ({L(cell.Yardage.Exactly)} at {L(cell.UsableWidth)})"
            ),
        ];

    private void Cutting()
    {
        foreach (CuttingTable table in _tables.Cutting)
        {
            string use = table.Use == FabricUse.Binding ? ", binding" : "";
            Head($"Cutting {table.Fabric} {Name(table.Fabric)}{use}");
            var rows = new List<string[]> { SizeNames() };
            foreach (CutRow row in table.Rows)
            {
                string uses = row.Purpose is CutPurpose.BlockPatch ? " " + Uses(row.Uses) : "";
                rows.Add([
                    $"{row.Id} {PurposeText.Of(row.Purpose)}{uses}{After(row.After)}",
                    .. row.BySize.Select(cell =>
                        cell is null ? "-"
                        : row.WholeStrip ? $"{cell.Count} strips {L(cell.Height)}"
                        : $"{cell.Count} of {Size(cell.Width, cell.Height)}"
                    ),
                ]);
            }
            Align(rows);
            for (int i = 0; i < table.BySize.Length; i++)
            {
                if (table.BySize[i] is { } strips)
                {
                    Strips(_tables.Sizes[i].Key, strips);
                }
            }
        }
    }

    private void Strips(string size, StripList list)
    {
        _text.Append(
            list.Panels is { } panels
                ? $"{size}: {panels.Count} {panels.Kind} of {Size(panels.Width, panels.Height)}, whole strips of {L(list.StripLength)}\n"
                : $"{size}: {L(list.Total)} of strips across {L(list.UsableWidth)}, each {L(list.StripLength)}\n"
        );
        int? layout = null;
        foreach (StripRow strip in list.Strips)
        {
            if (strip.Panel is { } share && list.Panels is { } sheet && share.Layout != layout)
            {
                layout = share.Layout;
                PanelRow panel = sheet.Layouts[share.Layout];
                _text.Append(
                    $"  {panel.Count} cut alike, strips {(panel.Up ? "along" : "across")}, {L(panel.Left)} left:\n"
                );
            }
            string pieces = string.Join(
                ", ",
                strip.Pieces.Select(p =>
                    $"{p.PerStrip} {string.Join("/", p.Cuts)} {Size(p.Length, p.Height)}"
                )
            );
            _text.Append(
                $"  {strip.Count} strips{(strip.Panel is { } from ? $" ({from.Strips} from each)" : "")} {L(strip.Height)}: {pieces}; end {L(strip.End)}{(strip.Beside is { } beside ? $"; beside step {beside + 1}" : "")}\n"
            );
        }
    }

    private void Unit(UnitTable unit)
    {
        Head($"Unit {unit.Number}: {unit.KindName}, {unit.Technique}");
        foreach (UnitRow row in unit.Rows)
        {
            _text.Append($"{row.Label} in {string.Join(", ", row.Fabrics)} for {Uses(row.Uses)}\n");
            Align([
                SizeNames(),
                Cells("finished", row, c => Size(c.FinishedWidth, c.FinishedHeight)),
                Cells(
                    "unfinished",
                    row,
                    c => Size(c.UnfinishedWidth, c.UnfinishedHeight) + (c.Trim ? ", trim" : "")
                ),
                Cells("needed", row, c => $"{c.Needed}"),
                Cells("a batch", row, Batch),
                Cells(
                    "make",
                    row,
                    c =>
                        c.StripSets.IsEmpty
                            ? $"{c.Batches} × {c.Yield} = {c.Made}"
                            : $"{Sets(c)} = {c.Made}"
                ),
            ]);
        }
    }

    private string Batch(UnitCell cell) =>
        string.Join(
            " + ",
            cell.Pieces.Select(p =>
                p.WholeStrip
                    ? $"{p.Count} {p.Cut} {L(p.Height)} strips"
                    : $"{p.Count} {p.Cut} {Size(p.Width, p.Height)}{After(p.After)}"
            )
        );

    private string Sets(UnitCell cell) =>
        string.Join(
            " + ",
            cell.StripSets.Select(set =>
                $"{set.Sets} sets {string.Join("", set.Roles)}, {set.Segments} segments {L(set.Segment)} ({set.SegmentsPerSet} a set)"
            )
        );

    private static string[] Cells(string name, UnitRow row, Func<UnitCell, string> text) =>
        [name, .. row.BySize.Select(cell => cell is null ? "-" : text(cell))];

    private void Templates()
    {
        foreach (TemplateTable template in _tables.Templates)
        {
            Head(
                $"Template {template.Name}: {template.Piece}{(template.Unit is { } unit ? $" of unit {unit}" : "")}"
            );
            for (int i = 0; i < template.BySize.Length; i++)
            {
                if (template.BySize[i] is not { } cell)
                {
                    continue;
                }
                string counts = string.Join(
                    ", ",
                    template.Cuts.Select((cut, n) => $"{cell.Counts[n]} {cut}")
                );
                _text.Append(
                    $"{_tables.Sizes[i].Key}: {counts}\n  sewn {Outline(cell.Shape.Seam)}\n  cut {Outline(cell.Shape.Cut)}\n"
                );
            }
        }
    }

    private void Patches()
    {
        if (_tables.Patches.IsEmpty)
        {
            return;
        }
        Head("Patches");
        var rows = new List<string[]> { SizeNames() };
        foreach (PatchRow row in _tables.Patches)
        {
            rows.Add([
                $"{PurposeText.Word(row.Kind, row.Reversed)} {row.Fabric}",
                .. row.BySize.Select(cell =>
                    cell is null
                        ? "-"
                        : $"{cell.Count} from {cell.From} {cell.Cut} {L(cell.Height)} ({cell.PerStrip} each), finished {L(cell.Finished)}"
                ),
            ]);
        }
        Align(rows);
    }

    private void Foundations()
    {
        foreach (FoundationTable foundation in _tables.Foundations)
        {
            Head($"Foundation {foundation.Name}: unit {foundation.Unit}");
            for (int i = 0; i < foundation.BySize.Length; i++)
            {
                if (foundation.BySize[i] is not { } cell)
                {
                    continue;
                }
                _text.Append($"{_tables.Sizes[i].Key}: {cell.Copies} papers\n");
                for (int n = 0; n < cell.Areas.Length; n++)
                {
                    _text.Append(
                        $"  {n + 1}, fabric {cell.Areas[n].Role + 1}: {Outline(cell.Areas[n].Shape)}\n"
                    );
                }
            }
        }
    }

    private void Appliques()
    {
        foreach (AppliqueTable applique in _tables.Appliques)
        {
            Head($"Appliqué {applique.Name}: unit {applique.Unit}");
            for (int i = 0; i < applique.BySize.Length; i++)
            {
                if (applique.BySize[i] is not { } cell)
                {
                    continue;
                }
                _text.Append($"{_tables.Sizes[i].Key}: {cell.Copies} of each\n");
                for (int n = 0; n < cell.Shapes.Length; n++)
                {
                    Rect bounds = cell.Shapes[n].Shape.Bounds;
                    _text.Append(
                        $"  {n + 1}, fabric {cell.Shapes[n].Role + 1}: {cell.Shapes[n].Shape.Corners.Length} corners in {Size(bounds.Width, bounds.Height)}\n"
                    );
                }
            }
        }
    }

    private string Outline(Polygon shape) =>
        string.Join(
            " ",
            shape.Corners.Select(
                (corner, i) =>
                    $"({L(corner.X)}, {L(corner.Y)})"
                    + (
                        shape.Arcs.FirstOrDefault(arc => arc.Edge == i) is var arc
                        && shape.Arcs.Any(a => a.Edge == i)
                            ? $" round ({L(arc.Center.X)}, {L(arc.Center.Y)}) to"
                            : ""
                    )
            )
        );

    private void Blocks()
    {
        Head("Blocks");
        var rows = new List<string[]> { SizeNames() };
        foreach (BlockRow row in _tables.Blocks)
        {
            rows.Add([
                BlockName(row.Coloring, row.Number) + " " + (row.Block ?? "plain"),
                .. row.BySize.Select(cell =>
                    cell is null
                        ? "-"
                        : $"{cell.Count}, unfinished {Size(cell.UnfinishedWidth, cell.UnfinishedHeight)}"
                ),
            ]);
        }
        Align(rows);
        foreach (BlockRow row in _tables.Blocks)
        {
            string parts = string.Join(
                ", ",
                row.Parts.Select(part =>
                {
                    string what =
                        part.Unit is { } unit ? $"unit {unit}"
                        : part.Cut is { } cut ? cut
                        : "?";
                    string turn = part.Turn.Quarters == 0 ? "" : $" turned {part.Turn.Degrees}";
                    return part.Letter.Length == 0
                        ? what
                        : $"{part.Letter} at {part.Column},{part.Row} {part.Columns}×{part.Rows} = {what}{turn}";
                })
            );
            _text.Append($"{BlockName(row.Coloring, row.Number)}: {parts}\n");
            foreach (InnerBlockRow inner in row.Inner)
            {
                string sizes = string.Join(
                    ", ",
                    inner.BySize.Select(cell =>
                        cell is null ? "-" : Size(cell.UnfinishedWidth, cell.UnfinishedHeight)
                    )
                );
                _text.Append(
                    $"  inside: {inner.Block} at {inner.Column},{inner.Row} {inner.Columns}×{inner.Rows}, unfinished {sizes}\n"
                );
            }
        }
    }

    private void Placement(PlacementChart chart)
    {
        string sashing = chart.Sashing is { } s
            ? $", sashing{(s.Around ? " around" : "")}{(s.Cornerstones ? " with cornerstones" : "")}"
            : "";
        Head($"Placement {chart.Size}: {chart.Setting}{sashing}");
        Align([
            .. chart.Rows.Select(row =>
                row.Select(cell =>
                        BlockName(cell.Coloring, cell.Number)
                        + (cell.Turn.Quarters == 0 ? "" : $"@{cell.Turn.Degrees}")
                    )
                    .ToArray()
            ),
        ]);
        foreach (SectionRow section in chart.Sections)
        {
            string parts = string.Join(
                ", ",
                section.Parts.Select(part =>
                    part.Block is { } cell
                        ? BlockName(cell.Coloring, cell.Number)
                            + (cell.Turn.Quarters == 0 ? "" : $"@{cell.Turn.Degrees}")
                    : part.Strip is { } strip ? PurposeText.Of(strip)
                    : $"section {part.Section}"
                )
            );
            _text.Append(
                $"section {section.Number}: {section.Count} of {parts}, {PurposeText.Word(section.Join)}; finished {Size(section.FinishedWidth, section.FinishedHeight)}, unfinished {Size(section.UnfinishedWidth, section.UnfinishedHeight)}\n"
            );
        }
    }

    private void Sashing()
    {
        if (_tables.Sashing.IsEmpty)
        {
            return;
        }
        Head("Sashing");
        var rows = new List<string[]> { SizeNames() };
        foreach (SashingRow row in _tables.Sashing)
        {
            rows.Add([
                $"{PurposeText.Word(row.Kind)} {row.Fabric}",
                .. row.BySize.Select(cell =>
                    cell is null
                        ? "-"
                        : $"{cell.Count} {cell.Cut} {Size(cell.CutWidth, cell.CutHeight)}, finished {Size(cell.FinishedWidth, cell.FinishedHeight)}"
                            + (cell.Joined is { } joined ? "; " + Joined(joined) : "")
                ),
            ]);
        }
        Align(rows);
    }

    private void Triangles()
    {
        if (_tables.Triangles.IsEmpty)
        {
            return;
        }
        Head("Setting triangles");
        var rows = new List<string[]> { SizeNames() };
        foreach (TriangleRow row in _tables.Triangles)
        {
            rows.Add([
                $"{PurposeText.Word(row.Kind)} {row.Fabric}",
                .. row.BySize.Select(cell =>
                    cell is null
                        ? "-"
                        : $"{cell.Count} from {cell.Squares} {cell.Cut} {L(cell.Square)}, finished edge {L(cell.Edge)}"
                ),
            ]);
        }
        Align(rows);
    }

    private void Borders()
    {
        foreach (BorderRow row in _tables.Borders)
        {
            Head($"Border {row.Number}");
            for (int i = 0; i < row.BySize.Length; i++)
            {
                if (row.BySize[i] is not { } cell)
                {
                    continue;
                }
                string parts = string.Join(
                    ", then ",
                    cell.Parts.Select(part =>
                            $"{PurposeText.Word(part.Part)} {part.Count} {part.Cut} {Size(part.Width, part.Length)}"
                        )
                        .Concat(
                            cell.Rows.Select(row =>
                                $"{PurposeText.Word(row.Part)} {row.Count} of {Blocks(row)} {Size(row.Width, row.Length)}"
                            )
                        )
                );
                string name = cell.Name is null ? "" : $" ({cell.Name})",
                    coping = cell.IsCoping ? " coping" : "";
                _text.Append(
                    $"{_tables.Sizes[i].Key}{name}:{coping} {Widths(cell.Widths)} around {Size(cell.InsideWidth, cell.InsideHeight)} gives {Size(cell.OutsideWidth, cell.OutsideHeight)}: {parts}\n"
                );
                foreach (JoinedRow joined in cell.Joined)
                {
                    _text.Append($"  {Joined(joined)}\n");
                }
            }
        }
    }

    private string Widths(Model.BorderWidths widths) =>
        widths.Even is { } even
            ? L(even)
            : $"left {L(widths.Left)} top {L(widths.Top)} right {L(widths.Right)} bottom {L(widths.Bottom)}";

    // "12 × L1, L2 turned 90".
    private static string Blocks(BorderBlocksRow row)
    {
        var runs = new List<(string Block, int Count)>();
        foreach (PlacementCell cell in row.Blocks)
        {
            string block =
                (cell.Number == 1 ? cell.Coloring : $"{cell.Coloring} number {cell.Number}")
                + (cell.Turn.Quarters == 0 ? "" : $" turned {cell.Turn.Degrees}");
            if (runs.Count > 0 && runs[^1].Block == block)
            {
                runs[^1] = (block, runs[^1].Count + 1);
            }
            else
            {
                runs.Add((block, 1));
            }
        }
        return string.Join(
            ", ",
            runs.Select(run => run.Count == 1 ? run.Block : $"{run.Count} × {run.Block}")
        );
    }

    private string Joined(JoinedRow joined) =>
        $"join {joined.Strips} {joined.Cut} of {L(joined.StripLength)} to {L(joined.Length)} ({L(joined.JoinLoss)} a join)";

    private void Finishing()
    {
        Head("Finishing");
        Align([
            SizeNames(),
            [
                "binding",
                .. _tables.Binding.Select(b =>
                    b is null
                        ? "-"
                        : $"{b.Strips} {b.Cut} {(b.Square is { } square ? $"{L(square)} square, bias " : "")}{L(b.StripWidth)}, {L(b.Length)} for {L(b.Perimeter)}{(b.Radius is { } radius ? $", corners {L(radius)}" : "")}"
                ),
            ],
            [
                "backing",
                .. _tables.Backing.Select(b =>
                    b is null
                        ? "-"
                        : $"{Size(b.Width, b.Height)}: {b.Panels} of {Size(b.FabricWidth, b.PanelLength)}, {b.Seams}"
                ),
            ],
        ]);
    }

    private void Head(string text) => _text.Append($"\n== {text}\n");

    private string[] SizeNames() => ["", .. _tables.Sizes.Select(s => s.Key)];

    private string[] Row(string name, Func<SizeColumn, string> text) =>
        [name, .. _tables.Sizes.Select(text)];

    private void Grid(params ReadOnlySpan<string[]> rows) => Align([SizeNames(), .. rows]);

    private void Align(List<string[]> rows)
    {
        int columns = rows.Count == 0 ? 0 : rows.Max(row => row.Length);
        int[] widths = new int[columns];
        foreach (string[] row in rows)
        {
            for (int i = 0; i < row.Length; i++)
            {
                widths[i] = Math.Max(widths[i], row[i].Length);
            }
        }
        foreach (string[] row in rows)
        {
            IEnumerable<string> cells = row.Select((cell, i) => cell.PadRight(widths[i]));
            _text.Append(string.Join(" | ", cells).TrimEnd()).Append('\n');
        }
    }

    private string Name(string? fabric) =>
        _tables.Fabrics.FirstOrDefault(f => f.Key == fabric)?.Name ?? "";

    private string L(Length length) =>
        HouseText.IsMetric(_tables.Unit)
            ? LengthText.Centimetres(length)
            : LengthText.Inches(length);

    private string Size(Length width, Length height) => $"{L(width)} × {L(height)}";

    private static string BlockName(string coloring, int number) =>
        number == 1 ? coloring : $"{coloring}#{number}";

    private static string After(PieceCut cut) =>
        cut switch
        {
            PieceCut.OnceDiagonally => " cut once diagonally",
            PieceCut.TwiceDiagonally => " cut twice diagonally",
            PieceCut.AcrossAtSixty => " cut across at 60 degrees",
            PieceCut.AroundTemplate => " cut around a template",
            PieceCut.AcrossAtFortyFive => " cut across at 45 degrees",
            _ => "",
        };

    private static string Uses(ImmutableArray<BlockUse> uses) =>
        string.Join(
            ", ",
            uses.GroupBy(use => use.Coloring)
                .Select(g => $"{g.Key}.{string.Join("", g.Select(use => use.Letter).Distinct())}")
        );
}
