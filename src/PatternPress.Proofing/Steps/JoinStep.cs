using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Tables;

namespace PatternPress.Proofing.Steps;

/// <summary>Joins strips end to end and sees whether what is cut from them is long enough.</summary>
internal static class JoinStep
{
    /// <param name="needed">All that is cut from the joined strip, end to end.</param>
    /// <param name="width">Cut width that the table which uses the strips gives.</param>
    public static void Do(
        Workbench bench,
        string table,
        string row,
        string fabric,
        JoinedRow joined,
        Length width,
        Length needed
    )
    {
        Notes notes = bench.Notes;
        bench.Use(joined.Cut, joined.Strips);
        if (bench.Take(ProofStep.Join, table, row, joined.Cut, fabric) is { } cut)
        {
            Same("strip width", width, cut.Height, $"{joined.Cut} is cut");
            Same("strip length", joined.StripLength, cut.Width, "the fabric is wide");
            WholeStrip(bench, table, row, joined.Cut);
        }
        if (!notes.Ok(joined.Joins == bench.House.Joins))
        {
            notes.Wrong(
                ProofStep.Join,
                table,
                row,
                "joins",
                Word(joined.Joins),
                $"the house joins {Word(bench.House.Joins)}"
            );
        }
        // Straight, each end gives a seam. On the diagonal the ends cross at a right angle and each gives half a width.
        Length loss = joined.Joins == JoinStyle.Diagonal ? width : bench.Seam * 2;
        Same("length that a join takes", joined.JoinLoss, loss, "it is");
        Long(
            bench,
            table,
            row,
            joined.Strips,
            joined.StripLength,
            loss,
            joined.Length,
            needed,
            needed
        );

        void Same(string what, Length printed, Length expected, string why) =>
            notes.Same(ProofStep.Join, table, row, what, printed, expected, why);
    }

    /// <summary>Strips joined: as long as printed, long enough, and no strip more than it takes.</summary>
    /// <param name="least">Less than this is short.</param>
    /// <param name="wanted">What the strips are counted for.</param>
    public static void Long(
        Workbench bench,
        string table,
        string row,
        long strips,
        Length strip,
        Length loss,
        Length printed,
        Length least,
        Length wanted
    )
    {
        Notes notes = bench.Notes;
        Length joined = (strip * strips) - (loss * (strips - 1));
        notes.Same(
            ProofStep.Join,
            table,
            row,
            "length of the joined strip",
            printed,
            joined,
            $"{strips} strips joined measure"
        );
        if (!notes.Ok(joined >= least))
        {
            notes.Add(
                MistakeKind.Short,
                ProofStep.Join,
                table,
                row,
                "strips to join",
                $"{strips}",
                $"they measure {notes.Told(joined)} and {notes.Told(least)} are needed"
            );
        }
        else if (!notes.Ok(strips <= 1 || joined - strip + loss < wanted))
        {
            notes.Add(
                MistakeKind.Excess,
                ProofStep.Join,
                table,
                row,
                "strips to join",
                $"{strips}",
                $"one less is long enough for {notes.Told(wanted)}"
            );
        }
        else if (!notes.Ok(joined >= wanted))
        {
            notes.Wrong(
                ProofStep.Join,
                table,
                row,
                "strips to join",
                $"{strips}",
                $"they measure {notes.Told(joined)} and the house wants {notes.Told(wanted)}"
            );
        }
    }

    public static void WholeStrip(Workbench bench, string table, string row, string cut)
    {
        if (
            !bench.Notes.Ok(bench.Index.Cuts[cut].Row is { WholeStrip: true, After: PieceCut.None })
        )
        {
            bench.Notes.Wrong(
                ProofStep.Join,
                table,
                row,
                "strips",
                cut,
                $"the cutting table does not have {cut} as whole strips"
            );
        }
    }

    private static string Word(JoinStyle joins) =>
        joins == JoinStyle.Diagonal ? "diagonally" : "straight";
}
