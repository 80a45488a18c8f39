using System.Collections.Immutable;
using PatternPress.Quilting.Cutting.Planning.Search;

namespace PatternPress.Quilting.Cutting.Planning;

/// <summary>
/// Strips that each hold pieces of one kind only: the plan that is easiest to follow, worked out kind by kind. It takes more
/// fabric than others may, but often no more than has to be bought anyway.
/// </summary>
public static class StripsApart
{
    /// <summary>All pieces of a kind lie the same way: along the strip unless they are longer than it.</summary>
    /// <param name="problem">Without faults and without remainders.</param>
    public static ImmutableArray<Strip> Flat(CutProblem problem) =>
        Of(
            problem,
            (flat, upright, count) => flat is { } lie ? lie.For(count) : upright!.For(count)
        );

    /// <summary>Some pieces of a kind may lie across the strip where that takes less.</summary>
    /// <param name="problem">Without faults and without remainders.</param>
    public static ImmutableArray<Strip> Least(CutProblem problem) =>
        Of(
            problem,
            (flat, upright, count) =>
                flat is null ? upright!.For(count)
                : upright is null ? flat.For(count)
                : Mixed(flat, upright, count)
        );

    private static ImmutableArray<Strip> Of(
        CutProblem problem,
        Func<Lie?, Lie?, long, ImmutableArray<Strip>> plan
    ) =>
        [
            .. problem
                .Pieces.Where(piece => piece.Count > 0)
                .SelectMany(piece =>
                {
                    bool level = piece.Width >= piece.Height || !piece.Turnable;
                    return plan(
                        Lie.Of(problem, piece, turned: !level),
                        piece.Turnable ? Lie.Of(problem, piece, turned: level) : null,
                        piece.Count
                    );
                })
                .OrderByDescending(strip => strip.Height),
        ];

    /// <summary>The least height together over all numbers of strips of either kind; of equal ones the least mixed.</summary>
    private static ImmutableArray<Strip> Mixed(Lie flat, Lie upright, long count)
    {
        // Of the lie that takes more for a piece there are fewer strips than the other holds pieces: so many strips of it
        // could be exchanged for as many of the other as it holds pieces, which are no higher together.
        (Lie dense, Lie loose) =
            WideSum.Product(flat.Height, upright.PerStrip)
            > WideSum.Product(upright.Height, flat.PerStrip)
                ? (upright, flat)
                : (flat, upright);
        long best = 0,
            least = dense.Height * dense.StripsFor(count);
        for (long strips = 1; strips <= dense.PerStrip; strips++)
        {
            long rest = Math.Max(0, count - (strips * loose.PerStrip)),
                height = (strips * loose.Height) + (dense.Height * dense.StripsFor(rest));
            if (height < least)
            {
                (best, least) = (strips, height);
            }
        }
        long apart = Math.Min(count, best * loose.PerStrip);
        return [.. dense.For(count - apart), .. loose.For(apart)];
    }

    /// <summary>A kind of piece as it lies in its strips.</summary>
    private sealed record Lie(CutPiece Piece, bool Turned, long Width, long Height, long PerStrip)
    {
        /// <summary>Null where the piece is longer than the strip.</summary>
        public static Lie? Of(CutProblem problem, CutPiece piece, bool turned)
        {
            (long width, long height) = turned
                ? (piece.Height, piece.Width)
                : (piece.Width, piece.Height);
            return width > problem.Width
                ? null
                : new(piece, turned, width, height, problem.Width / width);
        }

        public long StripsFor(long count) => (count + PerStrip - 1) / PerStrip;

        /// <summary>Strips cut alike where the pieces come out even; else full ones and one with the rest.</summary>
        public ImmutableArray<Strip> For(long count)
        {
            long strips = StripsFor(count);
            if (strips == 0)
            {
                return [];
            }
            if (count % strips == 0)
            {
                return [Holding(strips, count / strips)];
            }
            long full = count / PerStrip;
            return [Holding(full, PerStrip), Holding(1, count - (full * PerStrip))];
        }

        private Strip Holding(long strips, long pieces) =>
            new(Height, strips, [new StripSegment(Piece.Id, pieces, Turned, Width, Height)]);
    }
}
