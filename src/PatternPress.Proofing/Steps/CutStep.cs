using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Tables;

namespace PatternPress.Proofing.Steps;

/// <summary>
/// Cuts every fabric: no piece leaves its strip, no strip the fabric; each row gets as many pieces as it says and as
/// are sewn.
/// </summary>
internal sealed class CutStep
{
    private readonly Workbench _bench;
    private readonly CuttingTable _table;
    private string _named;

    // Pieces cut for each group of rows that are cut together, and the group of each row.
    private readonly Dictionary<string, long> _cut = [];
    private readonly Dictionary<string, ImmutableArray<string>> _groups = [];

    private CutStep(Workbench bench, CuttingTable table)
    {
        _bench = bench;
        _table = table;
        _named = TableIndex.Named(table);
    }

    public static void Do(Workbench bench)
    {
        foreach (CuttingTable table in bench.Tables.Cutting)
        {
            new CutStep(bench, table).Cut();
        }
    }

    private Notes Notes => _bench.Notes;

    /// <summary>Cuts the same pieces from panels, as the pattern promises that it can be done.</summary>
    public static void FromPanels(
        Workbench bench,
        CuttingTable table,
        StripList list,
        Panel panel
    ) =>
        new CutStep(bench, table) { _named = $"{table.Fabric} from {panel.Name}" }.Cut(list, panel);

    private void Cut() =>
        Cut(_table.BySize[_bench.Size], _bench.Drawn.Quilt.Pattern.Fabric(_table.Fabric)?.Panel);

    private void Cut(StripList? list, Panel? panel)
    {
        bool any = _table.Rows.Any(row => row.BySize[_bench.Size] is not null);
        if (!Notes.Ok(any == list is not null))
        {
            Wrong(
                "",
                "strips",
                list is null ? "none" : "some",
                any ? "there are pieces to cut" : "there is nothing to cut"
            );
        }
        if (list is not null)
        {
            if (list.Panels is { } sheet)
            {
                new PanelStep(_bench, _table, list, sheet, panel).Do();
            }
            else
            {
                Width(list);
            }
            Strips(list);
        }
        foreach (CutRow row in _table.Rows)
        {
            if (row.BySize[_bench.Size] is { } cell)
            {
                Row(row, cell, list);
            }
        }
    }

    /// <summary>A strip is as long as the ruler shows of what is left when its ends are squared.</summary>
    private void Width(StripList list)
    {
        House house = _bench.House;
        Length squared =
            list.UsableWidth - (list.UsableWidth * house.Shrinkage) - house.EndSquaring;
        if (
            !Notes.Ok(
                list.StripLength <= squared
                    && list.StripLength + house.Ruler.Step > squared
                    && house.Ruler.Shows(list.StripLength)
            )
        )
        {
            Add(
                list.StripLength > squared ? MistakeKind.Short : MistakeKind.Wrong,
                "",
                "length of a strip",
                Notes.Told(list.StripLength),
                $"its ends squared it has {Notes.Told(squared)}"
            );
        }
    }

    private void Strips(StripList list)
    {
        Length total = Length.Zero;
        for (int i = 0; i < list.Strips.Length; i++)
        {
            StripRow strip = list.Strips[i];
            string row = $"strips {i + 1}";
            Length room = list.StripLength;
            bool up = false;
            if (!Notes.Ok(strip.Panel is null == list.Panels is null))
            {
                Wrong(
                    row,
                    "cut from",
                    strip.Panel is null ? "the length of fabric" : "a panel",
                    list.Panels is null ? "the fabric is no panel" : "the fabric is in panels"
                );
            }
            if (
                strip.Panel is { } share
                && list.Panels is { } sheet
                && share.Layout >= 0
                && share.Layout < sheet.Layouts.Length
            )
            {
                up = sheet.Layouts[share.Layout].Up;
                room = up ? sheet.Height : sheet.Width;
            }
            if (strip.Beside is { } at)
            {
                room = Beside(list, i, at);
            }
            else
            {
                total += strip.Height * strip.Count;
            }
            if (!Notes.Ok(strip.Count > 0 && strip.Height.Sign > 0 && !strip.Pieces.IsEmpty))
            {
                Wrong(
                    row,
                    "strips",
                    $"{strip.Count} of {Notes.Told(strip.Height)}",
                    "nothing can be cut from them"
                );
            }
            Length used = Length.Zero,
                tallest = Length.Zero;
            foreach (StripPieces pieces in strip.Pieces)
            {
                used += pieces.Length * pieces.PerStrip;
                tallest = Length.Max(tallest, pieces.Height);
                Pieces(row, strip, pieces, up);
            }
            if (!Notes.Ok(used <= room))
            {
                Add(
                    MistakeKind.Short,
                    row,
                    "length of a strip",
                    Notes.Told(room),
                    $"the pieces take {Notes.Told(used)}"
                );
            }
            Notes.Same(
                ProofStep.Cut,
                _named,
                row,
                "left at the end",
                strip.End,
                room - used,
                "the pieces leave"
            );
            if (!Notes.Ok(tallest == strip.Height))
            {
                Add(
                    tallest > strip.Height ? MistakeKind.Short : MistakeKind.Excess,
                    row,
                    "height of the strips",
                    Notes.Told(strip.Height),
                    $"the pieces are {Notes.Told(tallest)} high"
                );
            }
        }
        Notes.Same(
            ProofStep.Cut,
            _named,
            "",
            "length of all strips",
            list.Total,
            total,
            "together they take"
        );
    }

    /// <summary>Strips beside long pieces: across what those leave, and together no taller than they are long.</summary>
    /// <returns>The length of such a strip.</returns>
    private Length Beside(StripList list, int i, int at)
    {
        string row = $"strips {i + 1}";
        if (!Notes.Ok(at >= 0 && at < i && list.Strips[at] is { Beside: null, Count: 1 }))
        {
            Wrong(row, "beside", $"strips {at + 1}", "there is nothing beside those");
            return Length.Zero;
        }
        StripRow section = list.Strips[at];
        Length taken = Length.Zero;
        foreach (StripRow other in list.Strips)
        {
            if (other.Beside == at)
            {
                taken += other.Height * other.Count;
            }
        }
        if (!Notes.Ok(taken <= section.Height))
        {
            Add(
                MistakeKind.Short,
                row,
                "beside",
                $"strips {at + 1}, {Notes.Told(section.Height)} long",
                $"the strips beside them take {Notes.Told(taken)}"
            );
        }
        return section.End;
    }

    /// <param name="up">Whether the strip runs along the fabric, so that a piece lies crosswise in it unless it is turned.</param>
    private void Pieces(string strip, StripRow of, StripPieces pieces, bool up)
    {
        if (
            !Notes.Ok(
                pieces.PerStrip > 0
                    && pieces.Length.Sign > 0
                    && pieces.Height.Sign > 0
                    && !pieces.Cuts.IsEmpty
            )
        )
        {
            Wrong(strip, "pieces", $"{pieces.PerStrip}", "nothing is cut");
        }
        foreach (string id in pieces.Cuts)
        {
            if (
                !Notes.Ok(
                    _bench.Index.Cuts.TryGetValue(id, out (CuttingTable Table, CutRow Row) found)
                        && ReferenceEquals(found.Table, _table)
                ) || !Notes.Ok(found.Row.BySize[_bench.Size] is not null)
            )
            {
                Wrong(strip, "pieces", id, "this fabric has no such piece in this size");
                continue;
            }
            CutCell cell = found.Row.BySize[_bench.Size]!;
            bool turnable = !_bench.Index.IsDirectional(_table.Fabric),
                alongIt =
                    (!up || turnable)
                    && pieces.Length == cell.Width
                    && pieces.Height == cell.Height,
                acrossIt =
                    !found.Row.WholeStrip
                    && (up || turnable)
                    && pieces.Length == cell.Height
                    && pieces.Height == cell.Width;
            if (!Notes.Ok(alongIt || acrossIt))
            {
                Wrong(
                    strip,
                    $"size of {id}",
                    Notes.Told(pieces.Length, pieces.Height),
                    $"the piece measures {Notes.Told(cell.Width, cell.Height)}"
                );
            }
            if (
                !_groups.TryAdd(id, pieces.Cuts)
                && !Notes.Ok(_groups[id].AsSpan().SequenceEqual(pieces.Cuts.AsSpan()))
            )
            {
                Wrong(
                    strip,
                    "pieces",
                    string.Join("/", pieces.Cuts),
                    $"{id} is cut together with {string.Join("/", _groups[id])}"
                );
            }
        }
        string group = string.Join("/", pieces.Cuts);
        _cut[group] = _cut.GetValueOrDefault(group) + (of.Count * pieces.PerStrip);
    }

    private void Row(CutRow row, CutCell cell, StripList? list)
    {
        if (row.WholeStrip && list is not null)
        {
            Notes.Same(
                ProofStep.Cut,
                _named,
                row.Id,
                "length",
                cell.Width,
                list.StripLength,
                "a strip gives"
            );
        }
        long used = _bench.Used.GetValueOrDefault(row.Id);
        Notes.Enough(
            ProofStep.Cut,
            _named,
            row.Id,
            "pieces",
            cell.Count,
            used,
            "what is sewn takes"
        );
        if (list is null)
        {
            return;
        }
        if (!Notes.Ok(_groups.TryGetValue(row.Id, out ImmutableArray<string> group)))
        {
            Add(
                MistakeKind.Short,
                row.Id,
                "pieces in the strips",
                "none",
                $"{cell.Count} are to be cut"
            );
            return;
        }
        // Rows that are cut together are counted together, under the first of them.
        if (group[0] != row.Id)
        {
            return;
        }
        long needed = group.Sum(id =>
            _bench.Index.Cuts.TryGetValue(id, out (CuttingTable, CutRow Row) other)
                ? other.Row.BySize[_bench.Size]?.Count ?? 0
                : 0
        );
        string name = string.Join("/", group);
        Notes.Enough(
            ProofStep.Cut,
            _named,
            name,
            "pieces in the strips",
            _cut.GetValueOrDefault(name),
            needed,
            "the rows say"
        );
    }

    private void Add(MistakeKind kind, string row, string what, string printed, string expected) =>
        Notes.Add(kind, ProofStep.Cut, _named, row, what, printed, expected);

    private void Wrong(string row, string what, string printed, string expected) =>
        Add(MistakeKind.Wrong, row, what, printed, expected);
}
