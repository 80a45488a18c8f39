using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Techniques;

namespace PatternPress.Quilting.Cutting;

/// <summary>One row of a cutting table while it is gathered: one purpose and fabric, in all sizes.</summary>
internal sealed class CutDraft(
    string fabric,
    FabricUse use,
    CutPurpose purpose,
    PieceCut after,
    bool wholeStrip,
    bool turnable,
    int sizes
)
{
    public string Fabric { get; } = fabric;

    public FabricUse Use { get; } = use;

    public CutPurpose Purpose { get; } = purpose;

    public PieceCut After { get; } = after;

    public bool WholeStrip { get; } = wholeStrip;

    public bool Turnable { get; } = turnable;

    public CutDraftCell?[] BySize { get; } = new CutDraftCell?[sizes];

    /// <summary>Its name in print, given when all rows are known.</summary>
    public string Id { get; set; } = "";

    /// <summary>The number in it.</summary>
    public int Number { get; set; }

    public Cut? CutOf(int size) =>
        BySize[size] is { Count: > 0 } cell
            ? new Cut(
                Id,
                Fabric,
                Purpose,
                cell.Width,
                cell.Height,
                cell.Exactly,
                cell.Count,
                After,
                WholeStrip,
                Turnable
            )
            : null;
}

internal sealed record CutDraftCell(
    Length Width,
    Length Height,
    (Length Width, Length Height) Exactly,
    long Count
);
