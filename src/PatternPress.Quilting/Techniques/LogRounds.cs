using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Sketching;

namespace PatternPress.Quilting.Techniques;

/// <summary>
/// What the ways of sewing logs around a center have in common. A log is cut as wide as it finishes + 2s and as long as
/// the side it is sewn to + 2s; with trimming both are cut larger, and what is sewn is trimmed after every log and brought
/// to size after every round.
/// </summary>
internal static class LogRounds
{
    public static Recipe Recipe(Technique technique, UnitForm form, House house, bool trimmed)
    {
        var sequence = LogSequence.Of(form);
        var pictures = new LogPictures(form, house);
        var measures = new List<(string, Length)>();
        for (int round = 1; round <= sequence.Rounds; round++)
        {
            Rect size = pictures.Size(round);
            // What can be read off a ruler; the last round gives the unit itself.
            bool last = round == sequence.Rounds;
            measures.Add((LogPictures.WidthAfter(round), last ? size.Width : Read(size.Width)));
            measures.Add((LogPictures.HeightAfter(round), last ? size.Height : Read(size.Height)));
        }
        return Batch.Of(
            technique,
            form,
            house,
            Pieces(form, house, trimmed),
            1,
            trim: trimmed,
            measures: [.. measures],
            steps: [.. Steps(sequence, pictures, house, trimmed)]
        );

        Length Read(Length length) => house.Ruler.Up(length);
    }

    public static ImmutableArray<RecipePiece> Pieces(UnitForm form, House house, bool trimmed)
    {
        var sequence = LogSequence.Of(form);
        Rect center = form.Patches[0].Shape.Bounds;
        CutSize centerWidth = Size(center.Width, house, trimmed),
            centerHeight = Size(center.Height, house, trimmed);
        var pieces = ImmutableArray.CreateBuilder<RecipePiece>();
        pieces.Add(CutSize.Rectangle("center", 0, 1, centerWidth, centerHeight));
        for (int i = 0; i < sequence.Logs.Length; i++)
        {
            Log log = sequence.Logs[i];
            Rect place = form.Patches[i + 1].Shape.Bounds;
            Length along = log.Side is LogSide.Left or LogSide.Right ? place.Height : place.Width;
            RecipePiece piece = CutSize.Rectangle(
                sequence.NameOf(i),
                log.Role,
                1,
                Size(along, house, trimmed),
                Size(log.Width, house, trimmed)
            );
            RecipePiece? before = pieces.Count > 0 ? pieces[^1] : null;
            if (before is not null && before.Name == piece.Name && before.Role == piece.Role)
            {
                pieces[^1] = before with { Count = before.Count + 1 };
            }
            else
            {
                pieces.Add(piece);
            }
        }
        return pieces.ToImmutable();
    }

    /// <summary>Sewn as they are cut, logs that no mark of the ruler gives would add up.</summary>
    public static string? Refusal(UnitForm form, House house)
    {
        var sequence = LogSequence.Of(form);
        Rect center = form.Patches[0].Shape.Bounds;
        foreach (bool across in (ReadOnlySpan<bool>)[true, false])
        {
            Length larger = Over(across ? center.Width : center.Height);
            Log? worst = null;
            foreach (Log log in sequence.Logs)
            {
                if (log.Side is LogSide.Left or LogSide.Right == across)
                {
                    Length over = Over(log.Width);
                    larger += over;
                    worst = over.Sign > 0 ? log : worst;
                }
            }
            if (larger > CutSize.Hair)
            {
                return worst is null
                    ? $"its center of {Told.Decimal(across ? center.Width : center.Height)}, finished, is not near a mark of the ruler"
                    : $"its logs of {Told.Decimal(worst.Width)}, finished, lie between the ruler's marks: cut to the next one, all together would make the unit {Told.Decimal(larger)} too large";
            }
        }
        return null;

        Length Over(Length finished)
        {
            CutSize size = CutSize.Close(house.Unfinished(finished), house);
            return size.Cut - size.Exactly;
        }
    }

    private static CutSize Size(Length finished, House house, bool trimmed)
    {
        Length exactly = house.Unfinished(finished);
        return trimmed
            ? new CutSize(exactly, house.Ruler.Up(exactly + house.Oversize))
            : CutSize.Close(exactly, house);
    }

    private static IEnumerable<Step> Steps(
        LogSequence sequence,
        LogPictures pictures,
        House house,
        bool trimmed
    )
    {
        yield return new Step("order", pictures.Order);
        bool pairs =
            sequence.PerRound == 4
            && (int)sequence.Logs[0].Side % 2 == (int)sequence.Logs[1].Side % 2;
        if (pairs)
        {
            yield return new Step("first-pair", () => new Sketch([.. pictures.Add(1, 2)]));
            yield return new Step(
                "second-pair",
                () =>
                    new Sketch([
                        pictures.Add(3, 2).First(),
                        pictures.Measured(pictures.Sewn(3, 2), 1).Done(FrameLink.Then),
                    ])
            );
        }
        else
        {
            yield return new Step("first", () => new Sketch([.. pictures.Add(1, 1)]));
            bool half = sequence.PerRound == 2;
            yield return new Step(
                "second",
                () =>
                    half
                        ? new Sketch([
                            pictures.Add(2, 1).First(),
                            pictures.Measured(pictures.Sewn(2, 1), 1).Done(FrameLink.Then),
                        ])
                        : new Sketch([.. pictures.Add(2, 1)])
            );
            if (!half)
            {
                yield return new Step(
                    "round",
                    () =>
                        new Sketch([
                            pictures.Sewn(3, 1).Done(),
                            pictures.Measured(pictures.Sewn(4, 1), 1).Done(FrameLink.Then),
                        ])
                );
            }
        }
        if (sequence.Rounds > 1)
        {
            yield return new Step("more-rounds", () => pictures.AfterRound(2));
        }
        yield return new Step(
            "measure",
            () => pictures.Finish(trimmed, trimmed ? house.Oversize : Length.Zero)
        );
    }
}
