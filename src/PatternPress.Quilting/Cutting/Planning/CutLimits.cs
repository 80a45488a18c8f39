using System.Collections.Immutable;

namespace PatternPress.Quilting.Cutting.Planning;

/// <summary>What the planner accepts. The limits keep every sum and every proof inside 64 and 128 bits, and the work of
/// one look at all strips bounded; they are far beyond any quilt.</summary>
public static class CutLimits
{
    /// <summary>Largest width or height, grid units: 10 km at an eighth of a millimetre.</summary>
    public const long Size = 100_000_000;

    /// <summary>Most pieces of one kind. Even if each of the most kinds took a strip of the largest height for itself, the
    /// strips' sum would stay within 64 bits.</summary>
    public const long Count = 10_000_000;

    /// <summary>Most kinds of pieces in one list.</summary>
    public const int Kinds = 250;

    /// <summary>Every fault of a list to be cut from panels; empty if it can be planned.</summary>
    public static ImmutableArray<CutFault> Check(PanelProblem problem)
    {
        var faults = ImmutableArray.CreateBuilder<CutFault>();
        var least = Math.Min(problem.Width, problem.Height);
        if (least <= 0)
        {
            faults.Add(new(CutFaultReason.StockNotPositive, null, least, 0));
            return faults.ToImmutable();
        }
        var larger = Math.Max(problem.Width, problem.Height);
        // Whether a piece fits depends on which way the strips run, so it is looked at below and not here.
        faults.AddRange(
            Check(
                    new CutProblem(
                        larger,
                        [.. problem.Pieces.Select(piece => piece with { Turnable = true })]
                    )
                )
                .Where(fault => fault.Reason != CutFaultReason.LargerThanStock)
        );
        foreach (var piece in problem.Pieces)
        {
            if (
                Math.Min(piece.Width, piece.Height) > 0
                && Math.Max(piece.Width, piece.Height) <= Size
                && !problem.Lies(piece, up: false).Any()
                && !problem.Lies(piece, up: true).Any()
            )
                faults.Add(
                    new(
                        CutFaultReason.LargerThanStock,
                        piece.Id,
                        Math.Max(piece.Width, piece.Height),
                        larger
                    )
                );
        }
        return faults.ToImmutable();
    }

    /// <summary>Every fault of the list, in the order of its pieces; empty if it can be planned.</summary>
    public static ImmutableArray<CutFault> Check(CutProblem problem)
    {
        var faults = ImmutableArray.CreateBuilder<CutFault>();
        if (problem.Width <= 0)
            faults.Add(new(CutFaultReason.StockNotPositive, null, problem.Width, 0));
        if (problem.Width > Size)
            faults.Add(new(CutFaultReason.SizeBeyondLimit, null, problem.Width, Size));
        if (problem.Pieces.Length > Kinds)
            faults.Add(new(CutFaultReason.TooManyKinds, null, problem.Pieces.Length, Kinds));

        foreach (var remainder in problem.Remainders)
        {
            if (remainder.Width < 0 || remainder.Length < 0)
                faults.Add(
                    new(
                        CutFaultReason.StockNotPositive,
                        null,
                        Math.Min(remainder.Width, remainder.Length),
                        0
                    )
                );
            if (Math.Max(remainder.Width, remainder.Length) > Size)
                faults.Add(
                    new(
                        CutFaultReason.SizeBeyondLimit,
                        null,
                        Math.Max(remainder.Width, remainder.Length),
                        Size
                    )
                );
        }

        var seen = new HashSet<int>();
        foreach (var piece in problem.Pieces)
        {
            void Add(CutFaultReason reason, long value, long limit) =>
                faults.Add(new(reason, piece.Id, value, limit));

            var shorter = Math.Min(piece.Width, piece.Height);
            var longer = Math.Max(piece.Width, piece.Height);
            if (!seen.Add(piece.Id))
                Add(CutFaultReason.IdRepeated, piece.Id, 1);
            if (piece.Count < 0)
                Add(CutFaultReason.CountNegative, piece.Count, 0);
            if (piece.Count > Count)
                Add(CutFaultReason.CountBeyondLimit, piece.Count, Count);
            if (shorter <= 0)
                Add(CutFaultReason.SizeNotPositive, shorter, 0);
            else if (longer > Size)
                Add(CutFaultReason.SizeBeyondLimit, longer, Size);
            else if (problem.Width > 0 && (piece.Turnable ? shorter : piece.Width) > problem.Width)
                Add(
                    CutFaultReason.LargerThanStock,
                    piece.Turnable ? shorter : piece.Width,
                    problem.Width
                );
        }
        return faults.ToImmutable();
    }
}
