using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Techniques;

namespace PatternPress.Quilting.Cutting;

/// <summary>All rows of a pattern's cutting tables while they are gathered.</summary>
internal sealed class CutDrafts(Pattern pattern, ImmutableArray<Quilt> quilts)
{
    private readonly Dictionary<(string, FabricUse, CutPurpose), CutDraft> _byPurpose = [];
    private readonly List<CutDraft> _all = [];
    private readonly Dictionary<string, Fabric> _fabrics = pattern.Fabrics.ToDictionary(f => f.Key);

    public IReadOnlyList<CutDraft> All => _all;

    /// <summary>Of fabric by the yard, or of that which panels of the whole width are cut from.</summary>
    public Length UsableWidth(string fabric, int size) =>
        (_fabrics.TryGetValue(fabric, out Fabric? known) ? known.UsableWidth : null)
        ?? quilts[size].House.UsableWidth;

    /// <summary>The panels a fabric is bought in; null for fabric by the yard.</summary>
    public PanelStock? Panel(string fabric, int size) =>
        _fabrics.GetValueOrDefault(fabric)?.Panel is { } kind
            ? PanelStock.Of(
                kind,
                UsableWidth(fabric, size),
                IsDirectional(fabric),
                quilts[size].House
            )
            : null;

    /// <summary>What a strip across the fabric gives once its ends are squared, or one along the longer side of a panel.
    /// </summary>
    public Length StripLength(string fabric, int size) =>
        Panel(fabric, size)?.StripLength
        ?? quilts[size].House.StripLength(UsableWidth(fabric, size));

    public bool IsDirectional(string fabric) =>
        _fabrics.TryGetValue(fabric, out Fabric? known) && known.Directional;

    public CutDraft? Find(string fabric, CutPurpose purpose, FabricUse use = FabricUse.Top) =>
        _byPurpose.GetValueOrDefault((fabric, use, purpose));

    /// <summary>Adds pieces for one size; they are of the same size as any that are there already.</summary>
    public CutDraft Add(
        string fabric,
        FabricUse use,
        CutPurpose purpose,
        int size,
        CutDraftCell cell,
        PieceCut after = PieceCut.None,
        bool wholeStrip = false
    )
    {
        if (!_byPurpose.TryGetValue((fabric, use, purpose), out CutDraft? draft))
        {
            bool turnable = !wholeStrip && !IsDirectional(fabric);
            draft = new CutDraft(fabric, use, purpose, after, wholeStrip, turnable, quilts.Length);
            _byPurpose.Add((fabric, use, purpose), draft);
            _all.Add(draft);
        }
        draft.BySize[size] = draft.BySize[size] is { } before
            ? before with
            {
                Count = before.Count + cell.Count,
            }
            : cell;
        return draft;
    }

    /// <summary>A piece of a finished size with a seam on every edge, up to the ruler.</summary>
    public CutDraftCell Sewn(int size, Length width, Length height, long count)
    {
        House house = quilts[size].House;
        Length exactWidth = house.Unfinished(width),
            exactHeight = house.Unfinished(height);
        return new CutDraftCell(
            house.Ruler.Up(exactWidth),
            house.Ruler.Up(exactHeight),
            (exactWidth, exactHeight),
            count
        );
    }

    /// <summary>Strips across the whole width.</summary>
    public CutDraft AddWholeStrips(
        string fabric,
        FabricUse use,
        CutPurpose purpose,
        int size,
        Length height,
        Length exactHeight,
        long count,
        PieceCut after = PieceCut.None
    )
    {
        Length width = StripLength(fabric, size);
        var cell = new CutDraftCell(width, height, (width, exactHeight), count);
        return Add(fabric, use, purpose, size, cell, after, wholeStrip: true);
    }

    /// <summary>
    /// Names the rows: the fabric and a number, in the order in which a person cuts: tallest strips first, whole
    /// strips and long pieces before short ones. Binding comes last.
    /// </summary>
    public void Number()
    {
        foreach (IGrouping<string, CutDraft> fabric in _all.GroupBy(draft => draft.Fabric))
        {
            // "A1"; a dash keeps fabric "A" number 12 apart from fabric "A1" number 2.
            string stem = char.IsDigit(fabric.Key[^1]) ? fabric.Key + "-" : fabric.Key;
            int number = 0;
            foreach (
                CutDraft draft in fabric.Sorted(
                    (a, b) =>
                    {
                        int order = (int)a.Use - (int)b.Use;
                        order = order != 0 ? order : StripHeight(b).CompareTo(StripHeight(a));
                        order = order != 0 ? order : b.WholeStrip.CompareTo(a.WholeStrip);
                        return order != 0 ? order : PieceLength(b).CompareTo(PieceLength(a));
                    }
                )
            )
            {
                draft.Number = ++number;
                draft.Id = stem + number;
            }
        }
    }

    // Measured in the last size that cuts it, usually the largest.
    private static CutDraftCell Last(CutDraft draft) =>
        draft.BySize.Last(cell => cell is not null)!;

    private static Length StripHeight(CutDraft draft)
    {
        CutDraftCell cell = Last(draft);
        return draft.Turnable ? Length.Min(cell.Width, cell.Height) : cell.Height;
    }

    private static Length PieceLength(CutDraft draft)
    {
        CutDraftCell cell = Last(draft);
        return draft.Turnable ? Length.Max(cell.Width, cell.Height) : cell.Width;
    }
}
