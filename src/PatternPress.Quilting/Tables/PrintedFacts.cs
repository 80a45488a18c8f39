using System.Globalization;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Techniques;

namespace PatternPress.Quilting.Tables;

/// <summary>Takes printed tables apart into single values, in a fixed order.</summary>
public static class PrintedFacts
{
    public static IEnumerable<PrintedFact> Of(PrintedTables tables)
    {
        var facts = new List<PrintedFact>();
        var writer = new Writer(tables, facts);
        writer.Sizes();
        writer.Requirements();
        writer.Substitute();
        writer.Scraps();
        writer.Cutting();
        writer.Units();
        writer.Templates();
        writer.Patches();
        writer.Foundations();
        writer.Appliques();
        writer.Blocks();
        writer.Placement();
        writer.Sashing();
        writer.Triangles();
        writer.Borders();
        writer.Finishing();
        return facts;
    }

    private sealed class Writer(PrintedTables tables, List<PrintedFact> facts)
    {
        private readonly bool _metric = HouseText.IsMetric(tables.Unit);
        private string _table = "",
            _row = "",
            _size = "";

        public void Sizes()
        {
            foreach (SizeColumn size in tables.Sizes)
            {
                (_table, _row, _size) = ("sizes", "quilt", size.Key);
                Text("name", size.Name);
                Measure("width", size.Width);
                Measure("height", size.Height);
                Measure("center width", size.CenterWidth);
                Measure("center height", size.CenterHeight);
                if (size.Across > 0)
                {
                    Count("blocks across", size.Across);
                    Count("blocks down", size.Down);
                }
                Count("blocks", size.Blocks);
                Measure("seam", size.Seam);
            }
        }

        public void Requirements()
        {
            _table = "requirements";
            RequirementsTable table = tables.Requirements;
            foreach (
                (string kind, RequirementRow row) in table
                    .Fabrics.Select(row => ("fabric", row))
                    .Concat(table.Binding.Select(row => ("binding", row)))
                    .Concat(table.Backing.Select(row => ("backing", row)))
                    .Concat(table.Totals.Select(row => ("total", row)))
            )
            {
                _row = row.Fabric is { } fabric ? $"{kind} {fabric}" : kind;
                BySize(
                    row.BySize,
                    cell =>
                    {
                        if (cell.Panels is { } panels)
                        {
                            facts.Add(
                                new PrintedFact(
                                    _table,
                                    _row,
                                    "buy",
                                    _size,
                                    panels.ToBuy.ToString(CultureInfo.InvariantCulture),
                                    panels.Kind
                                )
                            );
                            Measure("panel width", panels.Width);
                            Measure("panel height", panels.Height);
                            return;
                        }
                        Bought("buy", cell.Yardage);
                        Measure("need", cell.Yardage.Exactly);
                        Measure("usable width", cell.UsableWidth);
                    }
                );
            }
            _row = "batting";
            BySize(
                table.Batting,
                cell =>
                {
                    Measure("width", cell.Width);
                    Measure("height", cell.Height);
                    if (cell.Package is { } package)
                    {
                        Text("package", package.Name);
                        Measure("package width", package.Width);
                        Measure("package height", package.Height);
                    }
                }
            );
        }

        public void Substitute()
        {
            if (tables.Substitute is not { } table)
            {
                return;
            }
            (_table, _row, _size) = ("substitutes", table.Kind, "");
            Measure("width", table.Width);
            Measure("height", table.Height);
            foreach (SubstituteRow row in table.Rows)
            {
                for (int i = 0; i < row.BySize.Length; i++)
                {
                    if (row.BySize[i] is not { } cell)
                    {
                        continue;
                    }
                    (_table, _row, _size) = (
                        "substitutes",
                        $"fabric {row.Fabric}",
                        tables.Sizes[i].Key
                    );
                    facts.Add(
                        new PrintedFact(
                            _table,
                            _row,
                            "buy",
                            _size,
                            cell.ToBuy.ToString(CultureInfo.InvariantCulture),
                            table.Kind
                        )
                    );
                    _table = "substitute strips";
                    Strips(row.Fabric, tables.Sizes[i].Key, cell.Strips);
                }
            }
        }

        public void Scraps()
        {
            _table = "scraps";
            foreach (ScrapRow row in tables.Scraps?.Rows ?? [])
            {
                // The size is part of the row's name: a row for each.
                _row =
                    $"{row.Role} {(row.IsStrip ? "strip " : "")}{Told(row.Width)} × {Told(row.Height)}";
                _size = "";
                Text("fabrics", string.Join(" ", row.Fabrics));
                BySize(row.BySize, cell => Count("count", cell.Count));
            }

            string Told(Length length) => HouseText.Of(length, tables.Unit);
        }

        public void Cutting()
        {
            foreach (CuttingTable table in tables.Cutting)
            {
                _table = "cutting";
                foreach (CutRow row in table.Rows)
                {
                    (_row, _size) = (row.Id, "");
                    Text("for", PurposeText.Of(row.Purpose));
                    if (row.After != PieceCut.None)
                    {
                        Text(
                            "cut again",
                            row.After switch
                            {
                                PieceCut.OnceDiagonally => "once diagonally",
                                PieceCut.TwiceDiagonally => "twice diagonally",
                                PieceCut.AroundTemplate => "around a template",
                                _ => "across at 45 degrees",
                            }
                        );
                    }
                    BySize(
                        row.BySize,
                        cell =>
                        {
                            Count("count", cell.Count);
                            Measure("width", cell.Width);
                            Measure("height", cell.Height);
                        }
                    );
                }
                _table = "strips";
                string use = table.Use == FabricUse.Binding ? "binding " : "";
                for (int i = 0; i < table.BySize.Length; i++)
                {
                    if (table.BySize[i] is { } strips)
                    {
                        Strips(use + table.Fabric, tables.Sizes[i].Key, strips);
                    }
                }
            }
        }

        private void Strips(string fabric, string size, StripList list)
        {
            (_row, _size) = (fabric, size);
            Measure("usable width", list.UsableWidth);
            Measure("strip length", list.StripLength);
            Measure("together", list.Total);
            if (list.Panels is { } panels)
            {
                Count("panels", panels.Count);
                Measure("panel width", panels.Width);
                Measure("panel height", panels.Height);
                for (int i = 0; i < panels.Layouts.Length; i++)
                {
                    _row = $"{fabric} layout {i + 1}";
                    Count("panels", panels.Layouts[i].Count);
                    Text("strips", panels.Layouts[i].Up ? "along" : "across");
                    Measure("left", panels.Layouts[i].Left);
                }
            }
            for (int i = 0; i < list.Strips.Length; i++)
            {
                StripRow strip = list.Strips[i];
                _row = $"{fabric} step {i + 1}";
                Count("strips", strip.Count);
                Measure("height", strip.Height);
                for (int p = 0; p < strip.Pieces.Length; p++)
                {
                    StripPieces pieces = strip.Pieces[p];
                    // A strip may come back to a piece, lying the other way: every number keeps a name of its own.
                    int before = strip
                        .Pieces.Take(p)
                        .Count(other => other.Cuts.SequenceEqual(pieces.Cuts));
                    string ids =
                        string.Join(" ", pieces.Cuts) + (before == 0 ? "" : $" ({before + 1})");
                    Count($"{ids} from each", pieces.PerStrip);
                    Measure($"{ids} length", pieces.Length);
                    Measure($"{ids} height", pieces.Height);
                }
                Measure("end", strip.End);
                if (strip.Beside is { } beside)
                {
                    Count("beside step", beside + 1);
                }
                if (strip.Panel is { } panel)
                {
                    Count("layout", panel.Layout + 1);
                    Count("strips from each panel", panel.Strips);
                }
            }
        }

        public void Units()
        {
            _table = "units";
            foreach (UnitTable unit in tables.Units)
            {
                foreach (UnitRow row in unit.Rows)
                {
                    (_row, _size) = (row.Label, "");
                    Text("kind", unit.KindName);
                    Text("technique", unit.TechniqueName);
                    Text("fabrics", string.Join(" ", row.Fabrics));
                    BySize(row.BySize, Unit);
                }
            }
        }

        private void Unit(UnitCell cell)
        {
            Measure("finished width", cell.FinishedWidth);
            Measure("finished height", cell.FinishedHeight);
            Measure("unfinished width", cell.UnfinishedWidth);
            Measure("unfinished height", cell.UnfinishedHeight);
            Text("trim", cell.Trim ? "yes" : "no");
            Count("needed", cell.Needed);
            Count("made", cell.Made);
            if (cell.StripSets.IsEmpty)
            {
                Count("batches", cell.Batches);
                Count("from a batch", cell.Yield);
            }
            foreach (UnitPiece piece in cell.Pieces)
            {
                Count($"{piece.Cut} in a batch", piece.Count);
                if (piece.InStrip > 0)
                {
                    Count($"{piece.Cut} from a strip", piece.InStrip);
                }
            }
            for (int i = 0; i < cell.StripSets.Length; i++)
            {
                StripSetRow set = cell.StripSets[i];
                string name = $"strip set {i + 1}";
                Text(name, string.Join(" ", set.Roles));
                Count($"{name} sets", set.Sets);
                Count($"{name} segments", set.Segments);
                Count($"{name} segments in a set", set.SegmentsPerSet);
                Count($"{name} segments in a unit", set.SegmentsPerUnit);
                Measure($"{name} segment", set.Segment);
            }
            foreach (NamedLength measure in cell.Measures)
            {
                Measure(measure.Name, measure.Value);
            }
        }

        public void Templates()
        {
            _table = "templates";
            foreach (TemplateTable template in tables.Templates)
            {
                (_row, _size) = (template.Name, "");
                Text("piece", template.Piece);
                BySize(
                    template.BySize,
                    cell =>
                    {
                        for (int i = 0; i < cell.Counts.Length; i++)
                        {
                            Count($"pieces of {template.Cuts[i]}", cell.Counts[i]);
                        }
                        Geometry.Rect bounds = cell.Shape.Cut.Bounds;
                        Measure("width of the cut line", bounds.Width);
                        Measure("height of the cut line", bounds.Height);
                    }
                );
            }
        }

        public void Patches()
        {
            _table = "patches";
            foreach (PatchRow row in tables.Patches)
            {
                (_row, _size) = ($"{row.Fabric} {PurposeText.Word(row.Kind, row.Reversed)}", "");
                BySize(
                    row.BySize,
                    cell =>
                    {
                        Text("cut from", cell.Cut);
                        Count("pieces", cell.Count);
                        Count("strips or rectangles", cell.From);
                        Count("pieces from each", cell.PerStrip);
                        Measure("strip height", cell.Height);
                        Measure("finished height", cell.Finished);
                    }
                );
            }
        }

        public void Foundations()
        {
            _table = "foundations";
            foreach (FoundationTable foundation in tables.Foundations)
            {
                (_row, _size) = (foundation.Name, "");
                Text("unit", $"{foundation.Unit}");
                BySize(
                    foundation.BySize,
                    cell =>
                    {
                        Count("papers", cell.Copies);
                        Count("areas", cell.Areas.Length);
                    }
                );
            }
        }

        public void Appliques()
        {
            _table = "appliques";
            foreach (AppliqueTable applique in tables.Appliques)
            {
                (_row, _size) = (applique.Name, "");
                Text("unit", $"{applique.Unit}");
                BySize(
                    applique.BySize,
                    cell =>
                    {
                        Count("of each shape", cell.Copies);
                        Count("shapes", cell.Shapes.Length);
                    }
                );
            }
        }

        public void Blocks()
        {
            _table = "blocks";
            foreach (BlockRow block in tables.Blocks)
            {
                (_row, _size) = (NameOf(block.Coloring, block.Number), "");
                Text("block", block.Block ?? "plain");
                foreach (BlockPart part in block.Parts)
                {
                    string what = part.Unit is { } unit ? $"unit {unit}" : part.Cut ?? "";
                    string at =
                        part.Letter.Length == 0
                            ? "piece"
                            : $"{part.Letter} at column {part.Column + 1} row {part.Row + 1}";
                    Text(at, part.Turn.Quarters == 0 ? what : $"{what} turned {part.Turn.Degrees}");
                }
                string named = _row;
                foreach (InnerBlockRow inner in block.Inner)
                {
                    _row =
                        $"{named}, {inner.Block} inside at column {inner.Column + 1} row {inner.Row + 1}";
                    BySize(
                        inner.BySize,
                        cell =>
                        {
                            Measure("unfinished width", cell.UnfinishedWidth);
                            Measure("unfinished height", cell.UnfinishedHeight);
                        }
                    );
                }
                (_row, _size) = (named, "");
                BySize(
                    block.BySize,
                    cell =>
                    {
                        Count("count", cell.Count);
                        Measure("finished width", cell.FinishedWidth);
                        Measure("finished height", cell.FinishedHeight);
                        Measure("unfinished width", cell.UnfinishedWidth);
                        Measure("unfinished height", cell.UnfinishedHeight);
                    }
                );
            }
        }

        public void Placement()
        {
            _table = "placement";
            foreach (PlacementChart chart in tables.Placement)
            {
                _size = chart.Size;
                for (int r = 0; r < chart.Rows.Length; r++)
                {
                    _row = $"row {r + 1}";
                    for (int c = 0; c < chart.Rows[r].Length; c++)
                    {
                        Text($"column {c + 1}", Placed(chart.Rows[r][c]));
                    }
                }
                foreach (SectionRow section in chart.Sections)
                {
                    _row = $"section {section.Number}";
                    Count("count", section.Count);
                    Text("join", PurposeText.Word(section.Join));
                    Text(
                        "parts",
                        string.Join(
                            ", ",
                            section.Parts.Select(part =>
                                part.Block is { } cell ? Placed(cell)
                                : part.Strip is { } strip ? PurposeText.Of(strip)
                                : $"section {part.Section}"
                            )
                        )
                    );
                    Measure("finished width", section.FinishedWidth);
                    Measure("finished height", section.FinishedHeight);
                    Measure("unfinished width", section.UnfinishedWidth);
                    Measure("unfinished height", section.UnfinishedHeight);
                }
            }
        }

        private static string Placed(PlacementCell cell)
        {
            string name = NameOf(cell.Coloring, cell.Number);
            return cell.Turn.Quarters == 0 ? name : $"{name} turned {cell.Turn.Degrees}";
        }

        public void Sashing()
        {
            _table = "sashing";
            foreach (SashingRow row in tables.Sashing)
            {
                string number = row.Number == 1 ? "" : $" {row.Number}";
                _row = $"{PurposeText.Word(row.Kind)} {row.Fabric}{number}";
                BySize(
                    row.BySize,
                    cell =>
                    {
                        Text("cut from", cell.Cut);
                        Count("count", cell.Count);
                        Measure("finished width", cell.FinishedWidth);
                        Measure("finished height", cell.FinishedHeight);
                        Measure("cut width", cell.CutWidth);
                        Measure("cut height", cell.CutHeight);
                        if (cell.Joined is { } joined)
                        {
                            Joined(joined);
                        }
                    }
                );
            }
        }

        public void Triangles()
        {
            _table = "triangles";
            foreach (TriangleRow row in tables.Triangles)
            {
                string number = row.Number == 1 ? "" : $" {row.Number}";
                _row = $"{PurposeText.Word(row.Kind)} {row.Fabric}{number}";
                BySize(
                    row.BySize,
                    cell =>
                    {
                        Text("cut from", cell.Cut);
                        Count("count", cell.Count);
                        Count("squares", cell.Squares);
                        Measure("square", cell.Square);
                        Measure("finished edge", cell.Edge);
                    }
                );
            }
        }

        public void Borders()
        {
            _table = "borders";
            foreach (BorderRow row in tables.Borders)
            {
                _row = $"border {row.Number}";
                BySize(
                    row.BySize,
                    cell =>
                    {
                        if (cell.Widths.Even is { } even)
                        {
                            Measure("finished width", even);
                        }
                        else
                        {
                            Measure("finished width left", cell.Widths.Left);
                            Measure("finished width top", cell.Widths.Top);
                            Measure("finished width right", cell.Widths.Right);
                            Measure("finished width bottom", cell.Widths.Bottom);
                        }
                        Measure("inside width", cell.InsideWidth);
                        Measure("inside height", cell.InsideHeight);
                        Measure("outside width", cell.OutsideWidth);
                        Measure("outside height", cell.OutsideHeight);
                        for (int i = 0; i < cell.Parts.Length; i++)
                        {
                            BorderPartRow part = cell.Parts[i];
                            string word = PurposeText.Word(part.Part);
                            Text($"sewn {i + 1}", word);
                            Text($"{word} cut from", part.Cut);
                            Count($"{word} count", part.Count);
                            Measure($"{word} width", part.Width);
                            Measure($"{word} length", part.Length);
                        }
                        foreach (BorderBlocksRow row in cell.Rows)
                        {
                            string word = PurposeText.Word(row.Part);
                            Count($"{word} rows", row.Count);
                            Measure($"{word} row width", row.Width);
                            Measure($"{word} row length", row.Length);
                            foreach (
                                (string block, int count) in row.Blocks.CountBy(b =>
                                    NameOf(b.Coloring, b.Number)
                                )
                            )
                            {
                                Count($"{word} row, blocks {block}", count);
                            }
                            Text(
                                $"{word} row",
                                string.Join(
                                    ", ",
                                    row.Blocks.Select(b =>
                                        b.Turn.Quarters == 0
                                            ? NameOf(b.Coloring, b.Number)
                                            : $"{NameOf(b.Coloring, b.Number)} turned {b.Turn.Degrees}"
                                    )
                                )
                            );
                        }
                        foreach (JoinedRow joined in cell.Joined)
                        {
                            Joined(joined);
                        }
                    }
                );
            }
        }

        private void Joined(JoinedRow joined)
        {
            Count($"{joined.Cut} strips to join", joined.Strips);
            Measure($"{joined.Cut} strip length", joined.StripLength);
            Measure($"{joined.Cut} taken by a join", joined.JoinLoss);
            Measure($"{joined.Cut} joined length", joined.Length);
        }

        public void Finishing()
        {
            (_table, _row) = ("finishing", "binding");
            BySize(
                tables.Binding,
                cell =>
                {
                    Text("cut from", cell.Cut);
                    Count("strips", cell.Strips);
                    Measure("strip width", cell.StripWidth);
                    Measure("strip length", cell.StripLength);
                    Measure("taken by a join", cell.JoinLoss);
                    Measure("joined length", cell.Length);
                    Measure("perimeter", cell.Perimeter);
                    if (cell.Square is { } square)
                    {
                        Measure("bias square", square);
                    }
                    if (cell.Radius is { } radius)
                    {
                        Measure("corner radius", radius);
                    }
                }
            );
            _row = "backing";
            BySize(
                tables.Backing,
                cell =>
                {
                    Measure("width", cell.Width);
                    Measure("height", cell.Height);
                    Measure("overhang", cell.Overhang);
                    Measure("fabric width", cell.FabricWidth);
                    Count("panels", cell.Panels);
                    Measure("panel length", cell.PanelLength);
                    Text("seams", cell.Seams.ToString());
                    Measure("taken by a seam", cell.JoinLoss);
                }
            );
        }

        private void BySize<T>(
            System.Collections.Immutable.ImmutableArray<T?> cells,
            Action<T> write
        )
            where T : class
        {
            for (int i = 0; i < cells.Length; i++)
            {
                if (cells[i] is { } cell)
                {
                    _size = tables.Sizes[i].Key;
                    write(cell);
                }
            }
        }

        private static string NameOf(string coloring, int number) =>
            number == 1 ? coloring : $"{coloring} {number}";

        private void Text(string item, string value) =>
            facts.Add(new PrintedFact(_table, _row, item, _size, value, ""));

        private void Count(string item, long value) =>
            Text(item, value.ToString(CultureInfo.InvariantCulture));

        private void Measure(string item, Length value) =>
            facts.Add(
                new PrintedFact(
                    _table,
                    _row,
                    item,
                    _size,
                    _metric ? LengthText.Centimetres(value) : LengthText.Inches(value),
                    _metric ? "cm" : "in"
                )
            );

        private void Bought(string item, Yardage value)
        {
            string text = HouseText.Bought(value, tables.Unit);
            int space = text.LastIndexOf(' ');
            facts.Add(
                new PrintedFact(_table, _row, item, _size, text[..space], text[(space + 1)..])
            );
        }
    }
}
