using System.Collections.Immutable;
using PatternPress.Proofing.Shapes;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Tables;

namespace PatternPress.Proofing.Steps;

/// <summary>
/// Reads all tables before anything is bought: every column is there, every name is given once, and what a row names
/// exists and names it back.
/// </summary>
internal sealed class ReadStep
{
    private readonly TableIndex _index;
    private readonly Pattern _pattern;
    private readonly Notes _notes;

    // What each cutting row is for and where it goes, as told by the tables that take its pieces.
    private readonly Dictionary<string, CutPurpose> _purposes = [];
    private readonly Dictionary<string, List<BlockUse>> _uses = [];
    private readonly Dictionary<string, List<BlockUse>> _unitUses = [];

    private ReadStep(TableIndex index, Pattern pattern, Notes notes)
    {
        _index = index;
        _pattern = pattern;
        _notes = notes;
    }

    /// <summary>Null where a column is missing, so that no size can be told from another.</summary>
    public static TableIndex? Read(
        PrintedTables tables,
        ImmutableArray<DrawnQuilt> drawing,
        Notes notes
    )
    {
        if (!HasAllColumns(tables, drawing, notes))
        {
            return null;
        }
        var step = new ReadStep(new TableIndex(tables), drawing[0].Quilt.Pattern, notes);
        step.Headings();
        step.Fabrics();
        step.Name();
        step.Blocks();
        step.Units();
        step.Sashing();
        step.Triangles();
        step.Patches();
        step.Borders();
        step.Binding();
        step.CutRows();
        return step._index;
    }

    private PrintedTables Tables => _index.Tables;

    private static bool HasAllColumns(
        PrintedTables tables,
        ImmutableArray<DrawnQuilt> drawing,
        Notes notes
    )
    {
        int sizes = drawing.Length;
        bool all = sizes > 0;
        if (Lacks(tables.Sizes.Length))
        {
            Columns("sizes", "", tables.Sizes.Length);
        }
        for (int i = 0; i < sizes && i < tables.Sizes.Length; i++)
        {
            SizeColumn column = tables.Sizes[i];
            SizeDesign design = drawing[i].Quilt.Size;
            all &= Same("sizes", $"column {i + 1}", "size", column.Key, design.Key);
            Same("sizes", column.Key, "name", column.Name, design.Name);
        }
        foreach (RequirementRow row in tables.Requirements.Fabrics)
        {
            if (Lacks(row.BySize.Length))
            {
                Columns("requirements", $"fabric {row.Fabric}", row.BySize.Length);
            }
        }
        foreach (RequirementRow row in tables.Requirements.Binding)
        {
            if (Lacks(row.BySize.Length))
            {
                Columns("requirements", $"binding {row.Fabric}", row.BySize.Length);
            }
        }
        foreach (RequirementRow row in tables.Requirements.Backing)
        {
            if (Lacks(row.BySize.Length))
            {
                Columns("requirements", "backing", row.BySize.Length);
            }
        }
        foreach (RequirementRow row in tables.Requirements.Totals)
        {
            if (Lacks(row.BySize.Length))
            {
                Columns("requirements", $"total {row.Fabric}", row.BySize.Length);
            }
        }
        foreach (SubstituteRow row in tables.Substitute?.Rows ?? [])
        {
            if (Lacks(row.BySize.Length))
            {
                Columns("substitutes", $"fabric {row.Fabric}", row.BySize.Length);
            }
        }
        foreach (ScrapRow row in tables.Scraps?.Rows ?? [])
        {
            if (Lacks(row.BySize.Length))
            {
                Columns("scraps", row.Role, row.BySize.Length);
            }
        }
        if (Lacks(tables.Requirements.Batting.Length))
        {
            Columns("requirements", "batting", tables.Requirements.Batting.Length);
        }
        foreach (CuttingTable table in tables.Cutting)
        {
            if (Lacks(table.BySize.Length))
            {
                Columns(TableIndex.Named(table), "strips", table.BySize.Length);
            }
            foreach (CutRow row in table.Rows)
            {
                if (Lacks(row.BySize.Length))
                {
                    Columns(TableIndex.Named(table), row.Id, row.BySize.Length);
                }
            }
        }
        foreach (UnitTable table in tables.Units)
        {
            foreach (UnitRow row in table.Rows)
            {
                if (Lacks(row.BySize.Length))
                {
                    Columns(TableIndex.Named(table), row.Label, row.BySize.Length);
                }
            }
        }
        foreach (PatchRow row in tables.Patches)
        {
            if (Lacks(row.BySize.Length))
            {
                Columns("patches", $"{row.Kind} {row.Fabric}", row.BySize.Length);
            }
        }
        foreach (AppliqueTable applique in tables.Appliques)
        {
            if (Lacks(applique.BySize.Length))
            {
                Columns("appliqués", applique.Name, applique.BySize.Length);
            }
        }
        foreach (FoundationTable foundation in tables.Foundations)
        {
            if (Lacks(foundation.BySize.Length))
            {
                Columns("foundations", foundation.Name, foundation.BySize.Length);
            }
        }
        foreach (TemplateTable template in tables.Templates)
        {
            if (Lacks(template.BySize.Length))
            {
                Columns("templates", template.Name, template.BySize.Length);
            }
        }
        foreach (BlockRow row in tables.Blocks)
        {
            if (Lacks(row.BySize.Length))
            {
                Columns("blocks", TableIndex.Named(row), row.BySize.Length);
            }
            foreach (InnerBlockRow inner in row.Inner)
            {
                if (Lacks(inner.BySize.Length))
                {
                    Columns("blocks", TableIndex.Named(row), inner.BySize.Length);
                }
            }
        }
        if (Lacks(tables.Placement.Length))
        {
            Columns("placement charts", "", tables.Placement.Length);
        }
        foreach (SashingRow row in tables.Sashing)
        {
            if (Lacks(row.BySize.Length))
            {
                Columns("sashing", $"{row.Kind} {row.Fabric}", row.BySize.Length);
            }
        }
        foreach (TriangleRow row in tables.Triangles)
        {
            if (Lacks(row.BySize.Length))
            {
                Columns("triangles", $"{row.Kind} {row.Fabric}", row.BySize.Length);
            }
        }
        foreach (BorderRow row in tables.Borders)
        {
            if (Lacks(row.BySize.Length))
            {
                Columns("borders", $"border {row.Number}", row.BySize.Length);
            }
        }
        if (Lacks(tables.Binding.Length))
        {
            Columns("binding", "", tables.Binding.Length);
        }
        if (Lacks(tables.Backing.Length))
        {
            Columns("backing", "", tables.Backing.Length);
        }
        return all;

        bool Lacks(int count) => !notes.Ok(count == sizes);

        void Columns(string table, string row, int count)
        {
            all = false;
            notes.Wrong(
                ProofStep.Read,
                table,
                row,
                "columns",
                $"{count}",
                $"the sizes drawn are {sizes}"
            );
        }

        bool Same(string table, string row, string what, string printed, string drawn) =>
            notes.Same(ProofStep.Read, table, row, what, printed, drawn, "the drawing says");
    }

    private void Headings()
    {
        if (!_notes.Ok(Tables.Unit == _pattern.House.Unit))
        {
            Wrong(
                "title",
                "",
                "unit of measure",
                $"{Tables.Unit}",
                $"the pattern is in {_pattern.House.Unit}"
            );
        }
    }

    private void Fabrics()
    {
        var used = Tables.Cutting.Select(table => table.Fabric).ToHashSet();
        used.UnionWith(Tables.Backing.Select(cell => cell?.Fabric).OfType<string>());
        foreach (FabricLabel label in Tables.Fabrics)
        {
            if (!_notes.Ok(_index.Fabrics.TryAdd(label.Key, label)))
            {
                Wrong("fabrics", label.Key, "letter", label.Key, "another fabric has it already");
            }
            if (!_notes.Ok(used.Contains(label.Key)))
            {
                Wrong("fabrics", label.Key, "letter", label.Key, "no table uses that fabric");
            }
            Fabric? fabric = _pattern.Fabric(label.Key);
            Same("fabrics", label.Key, "name", label.Name, fabric?.Name, "the pattern says");
            if (!_notes.Ok(label.Directional == (fabric?.Directional ?? false)))
            {
                Wrong(
                    "fabrics",
                    label.Key,
                    "directional",
                    label.Directional ? "yes" : "no",
                    "the pattern says the opposite"
                );
            }
        }
        foreach (string fabric in used.Order(StringComparer.Ordinal))
        {
            if (!_notes.Ok(_index.Fabrics.ContainsKey(fabric)))
            {
                Wrong("fabrics", "", "letters", "none", $"the tables use fabric {fabric}");
            }
        }
    }

    // Gives every row its place under its name.
    private void Name()
    {
        var tables = new HashSet<(string, FabricUse)>();
        foreach (CuttingTable table in Tables.Cutting)
        {
            if (!_notes.Ok(tables.Add((table.Fabric, table.Use))))
            {
                Wrong(
                    TableIndex.Named(table),
                    "",
                    "fabric",
                    table.Fabric,
                    "it has a table already"
                );
            }
            foreach (CutRow row in table.Rows)
            {
                if (!_notes.Ok(_index.Cuts.TryAdd(row.Id, (table, row))))
                {
                    Twice(TableIndex.Named(table), row.Id, "name", row.Id);
                }
            }
        }
        for (int i = 0; i < Tables.Units.Length; i++)
        {
            UnitTable table = Tables.Units[i];
            string named = TableIndex.Named(table);
            _notes.Same(
                ProofStep.Read,
                named,
                "",
                "number",
                table.Number,
                i + 1,
                "units count on to"
            );
            if (!_notes.Ok(!table.Rows.IsEmpty))
            {
                Wrong(named, "", "rows", "none", "a unit needs its fabrics");
            }
            foreach (UnitRow row in table.Rows)
            {
                if (!_notes.Ok(_index.Units.TryAdd(row.Label, (table, row))))
                {
                    Twice(named, row.Label, "label", row.Label);
                }
                string number = $"{table.Number}";
                if (
                    !_notes.Ok(
                        row.Label.StartsWith(number, StringComparison.Ordinal)
                            && row.Label.Skip(number.Length).All(char.IsAsciiLetter)
                    )
                )
                {
                    Wrong(named, row.Label, "label", row.Label, $"the unit's number is {number}");
                }
            }
        }
        foreach (BlockRow row in Tables.Blocks)
        {
            if (!_notes.Ok(_index.Blocks.TryAdd((row.Coloring, row.Number), row)))
            {
                Twice("blocks", TableIndex.Named(row), "name", TableIndex.Named(row));
            }
        }
    }

    private void Blocks()
    {
        foreach (BlockRow row in Tables.Blocks)
        {
            string name = TableIndex.Named(row);
            Coloring? coloring = _pattern.Coloring(row.Coloring);
            Same("blocks", name, "block", row.Block, coloring?.Block, "the drawing says");
            BlockDesign? design = row.Block is null ? null : _pattern.Block(row.Block);
            Same("blocks", name, "name", row.Name, design?.Name ?? "", "the drawing says");
            if (
                !_notes.Ok(
                    row.Columns.AsSpan().SequenceEqual((design?.Columns ?? []).AsSpan())
                        && row.Rows.AsSpan().SequenceEqual((design?.Rows ?? []).AsSpan())
                )
            )
            {
                Wrong(
                    "blocks",
                    name,
                    "grid",
                    $"{string.Join(" ", row.Columns)} by {string.Join(" ", row.Rows)}",
                    design is null
                        ? "a plain block has none"
                        : $"the drawing has {string.Join(" ", design.Columns)} by {string.Join(" ", design.Rows)}"
                );
            }
            _notes.Same(
                ProofStep.Read,
                "blocks",
                name,
                "parts",
                row.Parts.Length,
                design?.Units.Length ?? 1,
                "the drawing has"
            );
            for (int i = 0; i < row.Parts.Length; i++)
            {
                UnitRegion? region =
                    design is not null && i < design.Units.Length ? design.Units[i] : null;
                Part(row, row.Parts[i], region);
            }
        }
    }

    private void Part(BlockRow row, BlockPart part, UnitRegion? region)
    {
        (string, int, int, int, int) printed = (
            part.Letter,
            part.Column,
            part.Row,
            part.Columns,
            part.Rows
        );
        (string, int, int, int, int) drawn = region is null
            ? ("", 0, 0, 1, 1)
            : (region.Design.Letter, region.Column, region.Row, region.Columns, region.Rows);
        if (!_notes.Ok(printed == drawn))
        {
            Wrong("blocks", Name(), "part", Told(printed), $"the drawing has {Told(drawn)}");
        }
        if (!_notes.Ok((part.Unit is null) != (part.Cut is null)))
        {
            Wrong(
                "blocks",
                Name(),
                "part",
                part.Unit is null ? "nothing" : $"unit {part.Unit} and piece {part.Cut}",
                "it must be one unit or one piece"
            );
        }
        var use = new BlockUse(row.Block ?? "", row.Coloring, part.Letter);
        if (part.Unit is { } unit)
        {
            if (!_notes.Ok(_index.Units.ContainsKey(unit)))
            {
                Wrong("blocks", Name(), "unit", unit, "there is no unit of that label");
            }
            Add(_unitUses, unit, use);
        }
        if (part.Cut is { } cut)
        {
            bool plain = row.Block is null;
            if (_index.Cuts.TryGetValue(cut, out (CuttingTable, CutRow Row) found))
            {
                // The number tells alike rows apart and has no other meaning.
                CutPurpose purpose = found.Row.Purpose;
                if (plain)
                {
                    Purpose(cut, purpose as CutPurpose.PlainBlock ?? new CutPurpose.PlainBlock(1));
                }
                else
                {
                    Purpose(cut, purpose as CutPurpose.BlockPatch ?? new CutPurpose.BlockPatch(1));
                }
            }
            if (!plain)
            {
                Add(_uses, cut, use);
            }
        }

        string Name() => $"{TableIndex.Named(row)} at {part.Column + 1},{part.Row + 1}";

        static string Told((string Letter, int Column, int Row, int Columns, int Rows) part) =>
            $"{part.Letter} {part.Columns}×{part.Rows} at {part.Column},{part.Row}";
    }

    private void Units()
    {
        foreach (UnitTable table in Tables.Units)
        {
            string named = TableIndex.Named(table);
            foreach (UnitRow row in table.Rows)
            {
                Uses(named, row.Label, row.Uses, _unitUses.GetValueOrDefault(row.Label) ?? []);
                foreach (UnitCell? cell in row.BySize)
                {
                    foreach (UnitPiece piece in cell?.Pieces ?? [])
                    {
                        // Roles that share a fabric may share a row; it then goes by the first of them.
                        int role = cell!
                            .Pieces.Where(other =>
                                other.Cut == piece.Cut && other.Name == piece.Name
                            )
                            .Min(other => other.Role);
                        Purpose(piece.Cut, new CutPurpose.UnitPiece(row.Label, piece.Name, role));
                        if (!_uses.ContainsKey(piece.Cut))
                        {
                            _uses[piece.Cut] = [.. row.Uses];
                        }
                    }
                }
            }
        }
    }

    private void Sashing()
    {
        var last = new Dictionary<(SashKind, string), int>();
        foreach (SashingRow row in Tables.Sashing)
        {
            int number = last[(row.Kind, row.Fabric)] =
                last.GetValueOrDefault((row.Kind, row.Fabric)) + 1;
            _notes.Same(
                ProofStep.Read,
                "sashing",
                $"{row.Kind} {row.Fabric}",
                "number",
                row.Number,
                number,
                "rows of that kind count on to"
            );
            foreach (SashingCell? cell in row.BySize)
            {
                if (cell is not null)
                {
                    Purpose(
                        cell.Cut,
                        cell.Joined is null
                            ? new CutPurpose.Sashing(row.Kind, row.Number)
                            : new CutPurpose.SashingJoined(row.Kind, row.Number)
                    );
                }
            }
        }
    }

    private void Triangles()
    {
        var last = new Dictionary<(SettingPieceKind, string), int>();
        foreach (TriangleRow row in Tables.Triangles)
        {
            int number = last[(row.Kind, row.Fabric)] =
                last.GetValueOrDefault((row.Kind, row.Fabric)) + 1;
            _notes.Same(
                ProofStep.Read,
                "triangles",
                $"{row.Kind} {row.Fabric}",
                "number",
                row.Number,
                number,
                "rows of that kind count on to"
            );
            foreach (TriangleCell? cell in row.BySize)
            {
                if (cell is not null)
                {
                    Purpose(cell.Cut, new CutPurpose.SettingTriangle(row.Kind, row.Number));
                }
            }
        }
    }

    private void Patches()
    {
        var seen = new HashSet<(SettingPieceKind, bool, string)>();
        foreach (PatchRow row in Tables.Patches)
        {
            if (!_notes.Ok(seen.Add((row.Kind, row.Reversed, row.Fabric))))
            {
                Wrong(
                    "patches",
                    PurposeText.Word(row.Kind, row.Reversed),
                    "fabric",
                    row.Fabric,
                    "it has a row already"
                );
            }
            foreach (PatchCell? cell in row.BySize)
            {
                if (cell is not null)
                {
                    Purpose(cell.Cut, new CutPurpose.OnePatch(row.Kind, row.Reversed));
                }
            }
        }
    }

    private void Borders()
    {
        int last = 0;
        foreach (BorderRow row in Tables.Borders)
        {
            if (!_notes.Ok(row.Number > last))
            {
                Wrong(
                    "borders",
                    $"border {row.Number}",
                    "number",
                    $"{row.Number}",
                    $"from the inside out it comes after border {last}"
                );
            }
            last = row.Number;
            foreach (BorderCell? cell in row.BySize)
            {
                foreach (BorderPartRow part in cell?.Parts ?? [])
                {
                    Purpose(
                        part.Cut,
                        part.Joined
                            ? new CutPurpose.Border(
                                row.Number,
                                BorderPart.Joined,
                                SetOf(cell!, part)
                            )
                            : new CutPurpose.Border(row.Number, part.Part)
                    );
                }
            }
        }
    }

    // Strips of one width are joined together: those of the first width a border has, from the left on, are its first set.
    private static int SetOf(BorderCell cell, BorderPartRow part)
    {
        BorderWidths w = cell.Widths;
        Length width = part.Part switch
        {
            BorderPart.Sides or BorderPart.Left => w.Left,
            BorderPart.Right => w.Right,
            BorderPart.Bottom => w.Bottom,
            _ => w.Top,
        };
        int set = 1;
        foreach (Length other in new[] { w.Left, w.Right, w.Top, w.Bottom }.Distinct())
        {
            if (other == width)
            {
                break;
            }
            set += other.Sign > 0 ? 1 : 0;
        }
        return set;
    }

    private void Binding()
    {
        foreach (BindingCell? cell in Tables.Binding)
        {
            if (cell is not null)
            {
                Purpose(
                    cell.Cut,
                    cell.Square is null ? new CutPurpose.Binding() : new CutPurpose.BiasSquare()
                );
            }
        }
    }

    private void CutRows()
    {
        var patches = new List<int>();
        var plain = new Dictionary<string, List<int>>();
        foreach (CuttingTable table in Tables.Cutting)
        {
            string named = TableIndex.Named(table);
            foreach (CutRow row in table.Rows)
            {
                switch (row.Purpose)
                {
                    case CutPurpose.BlockPatch patch:
                        patches.Add(patch.Number);
                        break;
                    case CutPurpose.PlainBlock block:
                        if (!plain.TryGetValue(table.Fabric, out List<int>? numbers))
                        {
                            plain.Add(table.Fabric, numbers = []);
                        }
                        numbers.Add(block.Number);
                        break;
                }
                if (!_notes.Ok(_purposes.TryGetValue(row.Id, out CutPurpose? purpose)))
                {
                    Wrong(named, row.Id, "use", $"{row.Purpose}", "no other table takes the piece");
                }
                else if (!_notes.Ok(purpose == row.Purpose))
                {
                    Wrong(named, row.Id, "use", $"{row.Purpose}", $"it is taken for {purpose}");
                }
                Uses(named, row.Id, row.Uses, _uses.GetValueOrDefault(row.Id) ?? []);
                Treatment(named, row);
            }
        }
        Numbers("patches", patches);
        foreach ((string fabric, List<int> numbers) in plain)
        {
            Numbers($"plain blocks of {fabric}", numbers);
        }
    }

    // Pieces of units are looked at where they are sewn.
    private void Treatment(string table, CutRow row)
    {
        if (row.Purpose is CutPurpose.UnitPiece or CutPurpose.OnePatch)
        {
            return;
        }
        bool whole =
            row.Purpose
            is CutPurpose.Binding
                or CutPurpose.SashingJoined
                or CutPurpose.Border { Part: BorderPart.Joined };
        if (!_notes.Ok(row.WholeStrip == whole))
        {
            Wrong(
                table,
                row.Id,
                "kind of piece",
                row.WholeStrip ? "a whole strip" : "a piece of a strip",
                whole ? "whole strips are joined" : "it is sewn in as a piece"
            );
        }
        PieceCut after = row.Purpose switch
        {
            CutPurpose.SettingTriangle { Kind: SettingPieceKind.Side } => PieceCut.TwiceDiagonally,
            CutPurpose.SettingTriangle => PieceCut.OnceDiagonally,
            _ => PieceCut.None,
        };
        if (!_notes.Ok(row.After == after))
        {
            Wrong(
                table,
                row.Id,
                "cut after",
                $"{row.After}",
                after == PieceCut.None
                    ? "it is sewn in as it is"
                    : "so the straight grain does not lie along the edge of the quilt"
            );
        }
    }

    private void Numbers(string what, List<int> numbers)
    {
        numbers.Sort();
        if (!_notes.Ok(numbers.SequenceEqual(Enumerable.Range(1, numbers.Count))))
        {
            Wrong(
                "cutting",
                "",
                $"numbers of {what}",
                string.Join(" ", numbers),
                $"they count from 1 to {numbers.Count}"
            );
        }
    }

    private void Purpose(string cut, CutPurpose purpose)
    {
        if (!_purposes.TryAdd(cut, purpose) && !_notes.Ok(_purposes[cut] == purpose))
        {
            Wrong("cutting", cut, "use", $"{_purposes[cut]}", $"{purpose} takes the same piece");
        }
    }

    private void Uses(
        string table,
        string row,
        ImmutableArray<BlockUse> printed,
        List<BlockUse> found
    )
    {
        var seen = new HashSet<BlockUse>(found);
        bool same = printed.Length == seen.Count;
        foreach (BlockUse use in printed)
        {
            same &= seen.Remove(use);
        }
        if (!_notes.Ok(same))
        {
            Wrong(table, row, "where used", Told(printed), $"the blocks say {Told(found)}");
        }

        static string Told(IEnumerable<BlockUse> uses)
        {
            string text = string.Join(", ", uses.Select(use => $"{use.Coloring}.{use.Letter}"));
            return text.Length == 0 ? "nowhere" : text;
        }
    }

    private static void Add(Dictionary<string, List<BlockUse>> uses, string key, BlockUse use)
    {
        if (!uses.TryGetValue(key, out List<BlockUse>? list))
        {
            uses.Add(key, list = []);
        }
        if (!list.Contains(use))
        {
            list.Add(use);
        }
    }

    private void Same(
        string table,
        string row,
        string what,
        string? printed,
        string? expected,
        string why
    ) => _notes.Same(ProofStep.Read, table, row, what, printed, expected, why);

    private void Twice(string table, string row, string what, string printed) =>
        Wrong(table, row, what, printed, "another row has it already");

    private void Wrong(string table, string row, string what, string printed, string expected) =>
        _notes.Wrong(ProofStep.Read, table, row, what, printed, expected);
}
