using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Cutting;

/// <summary>
/// Strips of one width that may be longer than the fabric is wide. Those that fit are cut in one piece; the others
/// are cut from strips joined end to end, unless they are wanted in one length, along the fabric.
/// </summary>
internal sealed class LongStrips(
    CutDrafts drafts,
    House house,
    int size,
    string fabric,
    bool inOneLength = false
)
{
    private readonly List<JoinedPiece> _pieces = [];
    private CutDraftCell? _strip;

    /// <summary>Adds pieces, or says that they must be cut from a joined strip.</summary>
    /// <param name="place">Finished size as it lies in the quilt.</param>
    public bool TryCut(CutPurpose purpose, (Length Width, Length Height) place, long count)
    {
        CutDraftCell cell = drafts.Sewn(size, place.Width, place.Height, count);
        (Length length, Length width) = Lie(cell);
        Length usable = drafts.StripLength(fabric, size);
        if (!inOneLength && length > usable && width < usable && Loss(width) < usable)
        {
            return false;
        }
        // A piece too wide both ways is left to the plan to refuse.
        drafts.Add(fabric, FabricUse.Top, purpose, size, cell);
        return true;
    }

    /// <summary>Takes pieces to be cut from the joined strip.</summary>
    public void Join(BorderPart? part, (Length Width, Length Height) place, long count)
    {
        CutDraftCell cell = drafts.Sewn(size, place.Width, place.Height, count);
        (Length length, Length _) = Lie(cell);
        _pieces.Add(new JoinedPiece(part, length, count));
        _strip ??=
            length == cell.Width
                ? cell
                : cell with
                {
                    Width = cell.Height,
                    Height = cell.Width,
                    Exactly = (cell.Exactly.Height, cell.Exactly.Width),
                };
    }

    /// <summary>The strips to join, if any piece needs them.</summary>
    public JoinedDraft? Finish(CutPurpose purpose)
    {
        if (_strip is null)
        {
            return null;
        }
        Length total = _pieces.Aggregate(Length.Zero, (sum, p) => sum + (p.Length * p.Count));
        Length usable = drafts.StripLength(fabric, size);
        Length loss = Loss(_strip.Height);
        long strips = StripJoin.StripsFor(total, usable, loss)!.Value;
        CutDraft draft = drafts.AddWholeStrips(
            fabric,
            FabricUse.Top,
            purpose,
            size,
            _strip.Height,
            _strip.Exactly.Height,
            strips
        );
        return new JoinedDraft(
            draft,
            _strip.Height,
            strips,
            house.Joins,
            loss,
            usable,
            [.. _pieces]
        );
    }

    private Length Loss(Length width) => StripJoin.Loss(house.Joins, width, house.Seam);

    // The long side lies along the strip, unless the print has an up.
    private (Length Length, Length Width) Lie(CutDraftCell cell) =>
        drafts.IsDirectional(fabric)
            ? (cell.Width, cell.Height)
            : (Length.Max(cell.Width, cell.Height), Length.Min(cell.Width, cell.Height));
}

/// <summary>Strips to be joined, before ids are known.</summary>
internal sealed record JoinedDraft(
    CutDraft Draft,
    Length Width,
    long Strips,
    JoinStyle Joins,
    Length Loss,
    Length StripLength,
    System.Collections.Immutable.ImmutableArray<JoinedPiece> Pieces
);
