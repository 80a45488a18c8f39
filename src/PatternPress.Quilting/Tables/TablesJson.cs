using System.Buffers;
using System.Collections.Immutable;
using System.Text.Encodings.Web;
using System.Text.Json;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Tables;

/// <summary>
/// The printed tables as JSON. Measures are exact text in the tables' unit ("12 1/2", or centimetres as a decimal);
/// what holds for one size stands under the size's key.
/// </summary>
public sealed class TablesJson
{
    private readonly PrintedTables _tables;
    private readonly Utf8JsonWriter _json;

    private TablesJson(PrintedTables tables, Utf8JsonWriter json) =>
        (_tables, _json) = (tables, json);

    public static void Write(PrintedTables tables, IBufferWriter<byte> to)
    {
        using var json = new Utf8JsonWriter(
            to,
            new JsonWriterOptions
            {
                Indented = true,
                NewLine = "\n",
                // The file is data, not part of a web page: letters stay readable.
                Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
            }
        );
        new TablesJson(tables, json).Write();
    }

    public static byte[] Of(PrintedTables tables)
    {
        var bytes = new ArrayBufferWriter<byte>();
        Write(tables, bytes);
        return bytes.WrittenSpan.ToArray();
    }

    private void Write()
    {
        _json.WriteStartObject();
        Text("pattern", _tables.Pattern);
        Text("title", _tables.Title);
        Text("edition", _tables.Edition);
        Text("unit", HouseText.IsMetric(_tables.Unit) ? "cm" : "in");
        Array("sizes", _tables.Sizes, Size);
        Array("fabrics", _tables.Fabrics, Fabric);
        Requirements();
        Substitute();
        Scraps();
        Array("cutting", _tables.Cutting, Cutting);
        Array("units", _tables.Units, Unit);
        if (!_tables.Templates.IsEmpty)
        {
            Array("templates", _tables.Templates, Template);
        }
        if (!_tables.Patches.IsEmpty)
        {
            Array("patches", _tables.Patches, Patch);
        }
        if (!_tables.Appliques.IsEmpty)
        {
            Array(
                "appliques",
                _tables.Appliques,
                applique =>
                {
                    Text("name", applique.Name);
                    Count("unit", applique.Unit);
                    BySize(
                        "bySize",
                        applique.BySize,
                        cell =>
                        {
                            Count("ofEach", cell.Copies);
                            Array(
                                "shapes",
                                cell.Shapes,
                                shape =>
                                {
                                    Count("role", shape.Role);
                                    Outline("shape", shape.Shape);
                                }
                            );
                        }
                    );
                }
            );
        }
        if (!_tables.Foundations.IsEmpty)
        {
            Array("foundations", _tables.Foundations, Foundation);
        }
        Array("blocks", _tables.Blocks, Block);
        Array("placement", _tables.Placement, Placement);
        Array("sashing", _tables.Sashing, Sashing);
        if (!_tables.Triangles.IsEmpty)
        {
            Array("triangles", _tables.Triangles, Triangle);
        }
        Array("borders", _tables.Borders, Border);
        BySize("binding", _tables.Binding, Binding);
        BySize("backing", _tables.Backing, Backing);
        _json.WriteEndObject();
    }

    private void Size(SizeColumn size)
    {
        Text("key", size.Key);
        Text("name", size.Name);
        Measure("width", size.Width);
        Measure("height", size.Height);
        Measure("centerWidth", size.CenterWidth);
        Measure("centerHeight", size.CenterHeight);
        Count("across", size.Across);
        Count("down", size.Down);
        Count("blocks", size.Blocks);
        Measure("seam", size.Seam);
    }

    private void Fabric(FabricLabel fabric)
    {
        Text("key", fabric.Key);
        Text("name", fabric.Name);
        _json.WriteBoolean("directional", fabric.Directional);
    }

    private void Requirements()
    {
        _json.WriteStartObject("requirements");
        Array("fabrics", _tables.Requirements.Fabrics, Requirement);
        Array("binding", _tables.Requirements.Binding, Requirement);
        Array("backing", _tables.Requirements.Backing, Requirement);
        Array("totals", _tables.Requirements.Totals, Requirement);
        BySize("batting", _tables.Requirements.Batting, Batting);
        _json.WriteEndObject();
    }

    private void Requirement(RequirementRow row)
    {
        if (row.Fabric is { } fabric)
        {
            Text("fabric", fabric);
        }
        BySize(
            "bySize",
            row.BySize,
            cell =>
            {
                if (cell.Panels is { } panels)
                {
                    Text("buy", $"{panels.ToBuy} {panels.Kind}");
                    Text("panel", panels.Kind);
                    Count("panels", panels.ToBuy);
                    Measure("width", panels.Width);
                    Measure("height", panels.Height);
                    return;
                }
                Text("buy", HouseText.Bought(cell.Yardage, _tables.Unit));
                Measure("need", cell.Yardage.Exactly);
                Measure("usableWidth", cell.UsableWidth);
            }
        );
    }

    private void Substitute()
    {
        if (_tables.Substitute is not { } table)
        {
            return;
        }
        _json.WriteStartObject("substitute");
        Text("panel", table.Kind);
        Measure("width", table.Width);
        Measure("height", table.Height);
        Array(
            "fabrics",
            table.Rows,
            row =>
            {
                Text("fabric", row.Fabric);
                BySize(
                    "bySize",
                    row.BySize,
                    cell =>
                    {
                        Count("buy", cell.ToBuy);
                        _json.WriteStartObject("strips");
                        Strips(cell.Strips);
                        _json.WriteEndObject();
                    }
                );
            }
        );
        _json.WriteEndObject();
    }

    private void Scraps()
    {
        if (_tables.Scraps is not { } table)
        {
            return;
        }
        Array(
            "scraps",
            table.Rows,
            row =>
            {
                Text("role", row.Role);
                Texts("fabrics", row.Fabrics);
                _json.WriteBoolean("strip", row.IsStrip);
                Measure("width", row.Width);
                Measure("height", row.Height);
                BySize("bySize", row.BySize, cell => Count("count", cell.Count));
            }
        );
    }

    private void Cutting(CuttingTable table)
    {
        Text("fabric", table.Fabric);
        Text("use", table.Use == FabricUse.Binding ? "binding" : "top");
        Array(
            "pieces",
            table.Rows,
            row =>
            {
                Text("id", row.Id);
                Text("for", PurposeText.Of(row.Purpose));
                Count(
                    "diagonalCuts",
                    row.After switch
                    {
                        Techniques.PieceCut.OnceDiagonally => 1,
                        Techniques.PieceCut.TwiceDiagonally => 2,
                        _ => 0,
                    }
                );
                if (row.After == Techniques.PieceCut.AroundTemplate)
                {
                    _json.WriteBoolean("aroundTemplate", true);
                }
                if (row.After == Techniques.PieceCut.AcrossAtFortyFive)
                {
                    _json.WriteBoolean("slicedAt45", true);
                }
                _json.WriteBoolean("wholeStrip", row.WholeStrip);
                Uses(row.Uses);
                BySize(
                    "bySize",
                    row.BySize,
                    cell =>
                    {
                        Count("count", cell.Count);
                        Measure("width", cell.Width);
                        Measure("height", cell.Height);
                    }
                );
            }
        );
        BySize("strips", table.BySize, Strips);
    }

    private void Strips(StripList list)
    {
        Measure("usableWidth", list.UsableWidth);
        Measure("stripLength", list.StripLength);
        Measure("together", list.Total);
        if (list.Panels is { } panels)
        {
            _json.WriteStartObject("panels");
            Text("panel", panels.Kind);
            Count("count", panels.Count);
            Measure("width", panels.Width);
            Measure("height", panels.Height);
            Array(
                "layouts",
                panels.Layouts,
                layout =>
                {
                    Count("count", layout.Count);
                    Text("strips", layout.Up ? "along" : "across");
                    Measure("left", layout.Left);
                }
            );
            _json.WriteEndObject();
        }
        Array("steps", list.Strips, Strip);
    }

    private void Strip(StripRow strip)
    {
        Count("count", strip.Count);
        Measure("height", strip.Height);
        Array(
            "pieces",
            strip.Pieces,
            pieces =>
            {
                Texts("ids", pieces.Cuts);
                Count("fromEach", pieces.PerStrip);
                Measure("length", pieces.Length);
                Measure("height", pieces.Height);
            }
        );
        Measure("end", strip.End);
        if (strip.Beside is { } beside)
        {
            Count("besideStep", beside + 1);
        }
        if (strip.Panel is { } panel)
        {
            Count("layout", panel.Layout + 1);
            Count("fromEachPanel", panel.Strips);
        }
    }

    private void Unit(UnitTable unit)
    {
        Count("number", unit.Number);
        Text("kind", unit.Kind);
        Text("name", unit.KindName);
        Text("technique", unit.Technique);
        Text("techniqueName", unit.TechniqueName);
        Array(
            "rows",
            unit.Rows,
            row =>
            {
                Text("label", row.Label);
                Texts("fabrics", row.Fabrics);
                Uses(row.Uses);
                BySize("bySize", row.BySize, UnitCell);
            }
        );
    }

    private void Patch(PatchRow row)
    {
        Text("kind", PurposeText.Word(row.Kind));
        _json.WriteBoolean("reversed", row.Reversed);
        Text("fabric", row.Fabric);
        BySize(
            "bySize",
            row.BySize,
            cell =>
            {
                Text("id", cell.Cut);
                Count("count", cell.Count);
                Count("from", cell.From);
                Count("fromEach", cell.PerStrip);
                Measure("height", cell.Height);
                Measure("finished", cell.Finished);
            }
        );
    }

    private void Foundation(FoundationTable foundation)
    {
        Text("name", foundation.Name);
        Count("unit", foundation.Unit);
        BySize(
            "bySize",
            foundation.BySize,
            cell =>
            {
                Count("papers", cell.Copies);
                Array(
                    "areas",
                    cell.Areas,
                    area =>
                    {
                        Count("role", area.Role);
                        Outline("shape", area.Shape);
                    }
                );
            }
        );
    }

    private void Template(TemplateTable template)
    {
        Text("name", template.Name);
        if (template.Unit is { } unit)
        {
            Count("unit", unit);
        }
        Text("piece", template.Piece);
        Texts("ids", template.Cuts);
        BySize(
            "bySize",
            template.BySize,
            cell =>
            {
                _json.WriteStartArray("counts");
                foreach (long count in cell.Counts)
                {
                    _json.WriteNumberValue(count);
                }
                _json.WriteEndArray();
                Outline("seam", cell.Shape.Seam);
                Outline("cut", cell.Shape.Cut);
            }
        );
    }

    // Corners in order; an edge that is a quarter of a circle has its center beside the corner it begins at.
    private void Outline(string name, Polygon shape)
    {
        _json.WriteStartArray(name);
        for (int i = 0; i < shape.Corners.Length; i++)
        {
            _json.WriteStartObject();
            Measure("x", shape.Corners[i].X);
            Measure("y", shape.Corners[i].Y);
            foreach (QuarterArc arc in shape.Arcs)
            {
                if (arc.Edge == i)
                {
                    Measure("centerX", arc.Center.X);
                    Measure("centerY", arc.Center.Y);
                }
            }
            _json.WriteEndObject();
        }
        _json.WriteEndArray();
    }

    private void UnitCell(UnitCell cell)
    {
        if (cell.Variant.Length > 0)
        {
            Text("variant", cell.Variant);
        }
        Measure("finishedWidth", cell.FinishedWidth);
        Measure("finishedHeight", cell.FinishedHeight);
        Measure("unfinishedWidth", cell.UnfinishedWidth);
        Measure("unfinishedHeight", cell.UnfinishedHeight);
        _json.WriteBoolean("trim", cell.Trim);
        Count("needed", cell.Needed);
        Count("fromBatch", cell.Yield);
        Count("batches", cell.Batches);
        Count("made", cell.Made);
        Array(
            "batch",
            cell.Pieces,
            piece =>
            {
                Text("id", piece.Cut);
                Text("name", piece.Name);
                Count("role", piece.Role);
                Count("count", piece.Count);
                if (piece.InStrip > 0)
                {
                    Count("fromAStrip", piece.InStrip);
                }
                Measure("width", piece.Width);
                Measure("height", piece.Height);
            }
        );
        if (!cell.StripSets.IsEmpty)
        {
            Array(
                "stripSets",
                cell.StripSets,
                set =>
                {
                    _json.WriteStartArray("roles");
                    foreach (int role in set.Roles)
                    {
                        _json.WriteNumberValue(role);
                    }
                    _json.WriteEndArray();
                    Count("sets", set.Sets);
                    Measure("segment", set.Segment);
                    Count("segments", set.Segments);
                    Count("segmentsPerSet", set.SegmentsPerSet);
                    Count("segmentsPerUnit", set.SegmentsPerUnit);
                }
            );
        }
        if (!cell.Measures.IsEmpty)
        {
            _json.WriteStartObject("measures");
            foreach (NamedLength measure in cell.Measures)
            {
                Measure(measure.Name, measure.Value);
            }
            _json.WriteEndObject();
        }
        if (!cell.Leftovers.IsEmpty)
        {
            Array(
                "leftovers",
                cell.Leftovers,
                leftover =>
                {
                    Text("name", leftover.Name);
                    Count("count", leftover.Count);
                    Measure("width", leftover.Width);
                    Measure("height", leftover.Height);
                }
            );
        }
    }

    private void Block(BlockRow block)
    {
        Text("coloring", block.Coloring);
        Count("number", block.Number);
        if (block.Block is { } key)
        {
            Text("block", key);
            Text("name", block.Name);
            Texts("columns", [.. block.Columns.Select(c => c.ToString())]);
            Texts("rows", [.. block.Rows.Select(r => r.ToString())]);
        }
        Array(
            "parts",
            block.Parts,
            part =>
            {
                Text("letter", part.Letter);
                Count("column", part.Column);
                Count("row", part.Row);
                Count("columns", part.Columns);
                Count("rows", part.Rows);
                Turned(part.Turn);
                if (part.Unit is { } unit)
                {
                    Text("unit", unit);
                }
                if (part.Cut is { } cut)
                {
                    Text("piece", cut);
                }
            }
        );
        BySize(
            "bySize",
            block.BySize,
            cell =>
            {
                Count("count", cell.Count);
                Measure("finishedWidth", cell.FinishedWidth);
                Measure("finishedHeight", cell.FinishedHeight);
                Measure("unfinishedWidth", cell.UnfinishedWidth);
                Measure("unfinishedHeight", cell.UnfinishedHeight);
            }
        );
        if (!block.Inner.IsEmpty)
        {
            Array(
                "inside",
                block.Inner,
                inner =>
                {
                    Text("block", inner.Block);
                    Text("name", inner.Name);
                    Count("column", inner.Column);
                    Count("row", inner.Row);
                    Count("columns", inner.Columns);
                    Count("rows", inner.Rows);
                    BySize(
                        "bySize",
                        inner.BySize,
                        cell =>
                        {
                            Measure("unfinishedWidth", cell.UnfinishedWidth);
                            Measure("unfinishedHeight", cell.UnfinishedHeight);
                        }
                    );
                }
            );
        }
    }

    private void Placement(PlacementChart chart)
    {
        Text("size", chart.Size);
        Text("setting", chart.Setting);
        if (chart.Sashing is { } sashing)
        {
            _json.WriteStartObject("sashing");
            _json.WriteBoolean("around", sashing.Around);
            _json.WriteBoolean("cornerstones", sashing.Cornerstones);
            _json.WriteEndObject();
        }
        _json.WriteStartArray("rows");
        foreach (ImmutableArray<PlacementCell> row in chart.Rows)
        {
            _json.WriteStartArray();
            foreach (PlacementCell cell in row)
            {
                _json.WriteStartObject();
                Placed(cell);
                _json.WriteEndObject();
            }
            _json.WriteEndArray();
        }
        _json.WriteEndArray();
        if (!chart.Sections.IsEmpty)
        {
            Array("sections", chart.Sections, Section);
        }
    }

    private void Placed(PlacementCell cell)
    {
        Text("coloring", cell.Coloring);
        if (cell.Number != 1)
        {
            Count("number", cell.Number);
        }
        Turned(cell.Turn);
    }

    private void Section(SectionRow section)
    {
        Count("number", section.Number);
        Count("count", section.Count);
        Text("join", PurposeText.Word(section.Join));
        Array(
            "parts",
            section.Parts,
            part =>
            {
                if (part.Block is { } cell)
                {
                    Placed(cell);
                }
                else if (part.Strip is { } strip)
                {
                    Text("strip", PurposeText.Word(strip.Kind));
                    Text("fabric", strip.Fabric);
                    Count("number", strip.Number);
                }
                else
                {
                    Count("section", part.Section);
                }
            }
        );
        Measure("finishedWidth", section.FinishedWidth);
        Measure("finishedHeight", section.FinishedHeight);
        Measure("unfinishedWidth", section.UnfinishedWidth);
        Measure("unfinishedHeight", section.UnfinishedHeight);
    }

    private void Sashing(SashingRow row)
    {
        Text("kind", PurposeText.Word(row.Kind));
        Text("fabric", row.Fabric);
        Count("number", row.Number);
        BySize(
            "bySize",
            row.BySize,
            cell =>
            {
                Text("id", cell.Cut);
                Count("count", cell.Count);
                Measure("finishedWidth", cell.FinishedWidth);
                Measure("finishedHeight", cell.FinishedHeight);
                Measure("cutWidth", cell.CutWidth);
                Measure("cutHeight", cell.CutHeight);
                if (cell.Joined is { } joined)
                {
                    _json.WriteStartObject("joined");
                    Joined(joined);
                    _json.WriteEndObject();
                }
            }
        );
    }

    private void Triangle(TriangleRow row)
    {
        Text("kind", PurposeText.Word(row.Kind));
        Text("fabric", row.Fabric);
        Count("number", row.Number);
        BySize(
            "bySize",
            row.BySize,
            cell =>
            {
                Text("id", cell.Cut);
                Count("count", cell.Count);
                Count("squares", cell.Squares);
                Measure("square", cell.Square);
                Measure("finishedEdge", cell.Edge);
            }
        );
    }

    private void Border(BorderRow row)
    {
        Count("number", row.Number);
        BySize(
            "bySize",
            row.BySize,
            cell =>
            {
                if (cell.Name is { } name)
                {
                    Text("name", name);
                }
                if (cell.Widths.Even is { } even)
                {
                    Measure("finishedWidth", even);
                }
                else
                {
                    Measure("leftWidth", cell.Widths.Left);
                    Measure("topWidth", cell.Widths.Top);
                    Measure("rightWidth", cell.Widths.Right);
                    Measure("bottomWidth", cell.Widths.Bottom);
                }
                Measure("insideWidth", cell.InsideWidth);
                Measure("insideHeight", cell.InsideHeight);
                Measure("outsideWidth", cell.OutsideWidth);
                Measure("outsideHeight", cell.OutsideHeight);
                Array(
                    "sewn",
                    cell.Parts,
                    part =>
                    {
                        Text("part", PurposeText.Word(part.Part));
                        Text("fabric", part.Fabric);
                        Text("id", part.Cut);
                        Count("count", part.Count);
                        Measure("width", part.Width);
                        Measure("length", part.Length);
                    }
                );
                if (!cell.Rows.IsEmpty)
                {
                    Array("rows", cell.Rows, BorderBlocks);
                }
                Array("joined", cell.Joined, Joined);
            }
        );
    }

    private void BorderBlocks(BorderBlocksRow row)
    {
        Text("part", PurposeText.Word(row.Part));
        Count("count", row.Count);
        Measure("width", row.Width);
        Measure("length", row.Length);
        Array(
            "blocks",
            row.Blocks,
            cell =>
            {
                Text("coloring", cell.Coloring);
                Count("number", cell.Number);
                Count("turn", cell.Turn.Degrees);
            }
        );
    }

    private void Joined(JoinedRow joined)
    {
        Text("id", joined.Cut);
        Count("strips", joined.Strips);
        Measure("stripLength", joined.StripLength);
        Text("joins", joined.Joins == Model.JoinStyle.Diagonal ? "diagonal" : "straight");
        Measure("joinLoss", joined.JoinLoss);
        Measure("length", joined.Length);
    }

    private void Binding(BindingCell cell)
    {
        Text("fabric", cell.Fabric);
        Text("id", cell.Cut);
        Count("strips", cell.Strips);
        Measure("stripWidth", cell.StripWidth);
        Measure("stripLength", cell.StripLength);
        Measure("joinLoss", cell.JoinLoss);
        Measure("length", cell.Length);
        Measure("perimeter", cell.Perimeter);
        if (cell.Square is { } square)
        {
            Measure("biasSquare", square);
        }
        if (cell.Radius is { } radius)
        {
            Measure("cornerRadius", radius);
        }
    }

    private void Backing(BackingCell cell)
    {
        if (cell.Fabric is { } fabric)
        {
            Text("fabric", fabric);
        }
        Measure("width", cell.Width);
        Measure("height", cell.Height);
        Measure("overhang", cell.Overhang);
        Measure("fabricWidth", cell.FabricWidth);
        Count("panels", cell.Panels);
        Measure("panelLength", cell.PanelLength);
        Text(
            "seams",
            cell.Seams switch
            {
                Finishing.BackingSeams.Upright => "upright",
                Finishing.BackingSeams.Level => "level",
                _ => "none",
            }
        );
        Measure("joinLoss", cell.JoinLoss);
    }

    private void Batting(BattingCell cell)
    {
        Measure("width", cell.Width);
        Measure("height", cell.Height);
        Measure("overhang", cell.Overhang);
        if (cell.Package is { } package)
        {
            Text("package", package.Name);
            Measure("packageWidth", package.Width);
            Measure("packageHeight", package.Height);
        }
    }

    private void Uses(ImmutableArray<BlockUse> uses)
    {
        if (uses.IsEmpty)
        {
            return;
        }
        Array(
            "uses",
            uses,
            use =>
            {
                Text("block", use.Block);
                Text("coloring", use.Coloring);
                Text("letter", use.Letter);
            }
        );
    }

    private void Turned(Turn turn)
    {
        if (turn.Quarters != 0)
        {
            Count("turn", turn.Degrees);
        }
    }

    private void Text(string name, string value) => _json.WriteString(name, value);

    private void Texts(string name, ImmutableArray<string> values)
    {
        _json.WriteStartArray(name);
        foreach (string value in values)
        {
            _json.WriteStringValue(value);
        }
        _json.WriteEndArray();
    }

    private void Count(string name, long value) => _json.WriteNumber(name, value);

    private void Measure(string name, Length value) =>
        _json.WriteString(
            name,
            HouseText.IsMetric(_tables.Unit)
                ? LengthText.Centimetres(value)
                : LengthText.Inches(value)
        );

    private void Array<T>(string name, ImmutableArray<T> items, Action<T> write)
    {
        _json.WriteStartArray(name);
        foreach (T item in items)
        {
            _json.WriteStartObject();
            write(item);
            _json.WriteEndObject();
        }
        _json.WriteEndArray();
    }

    private void BySize<T>(string name, ImmutableArray<T?> cells, Action<T> write)
        where T : class
    {
        _json.WriteStartObject(name);
        for (int i = 0; i < cells.Length; i++)
        {
            if (cells[i] is { } cell)
            {
                _json.WriteStartObject(_tables.Sizes[i].Key);
                write(cell);
                _json.WriteEndObject();
            }
        }
        _json.WriteEndObject();
    }
}
