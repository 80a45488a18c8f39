using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Tables;

namespace PatternPress.Proofing.Steps;

/// <summary>
/// Lays the strips of a fabric on the panels it is bought in: each gives what the pattern's panels give, no strips are together
/// higher than their panel, and the strips of all panels are the strips that are cut.
/// </summary>
/// <param name="bought">What the pattern says; null for fabric by the yard.</param>
internal sealed class PanelStep(
    Workbench bench,
    CuttingTable table,
    StripList list,
    PanelSheet sheet,
    Panel? bought
)
{
    private readonly string _named = TableIndex.Named(table);

    private Notes Notes => bench.Notes;

    public void Do()
    {
        Sizes();
        for (int i = 0; i < sheet.Layouts.Length; i++)
        {
            Layout(i);
        }
        Length total = Length.Zero;
        for (int i = 0; i < list.Strips.Length; i++)
        {
            StripRow strip = list.Strips[i];
            total += strip.Height * strip.Count;
            if (strip.Panel is not { } share)
            {
                continue;
            }
            string row = $"strips {i + 1}";
            if (!Notes.Ok(share.Layout >= 0 && share.Layout < sheet.Layouts.Length))
            {
                Add(
                    MistakeKind.Wrong,
                    row,
                    "panel",
                    $"{share.Layout + 1}",
                    $"there are {sheet.Layouts.Length} ways to cut one"
                );
                continue;
            }
            Notes.Same(
                ProofStep.Cut,
                _named,
                row,
                "strips",
                strip.Count,
                sheet.Layouts[share.Layout].Count * share.Strips,
                "the panels give"
            );
        }
    }

    /// <summary>What a panel gives once it is washed, on the ruler's marks; a strip of the fabric's whole width loses its ends as
    /// well.</summary>
    private void Sizes()
    {
        House house = bench.House;
        Fabric? fabric = bench.Drawn.Quilt.Pattern.Fabric(table.Fabric);
        if (!Notes.Ok(fabric is not null && bought is not null))
        {
            Add(MistakeKind.Wrong, "", "cut from", sheet.Kind, "it is bought by the yard");
            return;
        }
        Panel panel = bought!;
        Notes.Same(
            ProofStep.Cut,
            _named,
            "",
            "cut from",
            sheet.Kind,
            panel.Name,
            "the pattern says"
        );
        Length across = panel.Width ?? fabric!.UsableWidth ?? house.UsableWidth;
        Given("width of a panel", sheet.Width, across, panel.Width is null);
        Given("height of a panel", sheet.Height, panel.Height, false);
        // A strip that is not cut up runs along the longer side, across the fabric where the print has an up.
        Length strip =
            fabric!.Directional || sheet.Width > sheet.Height ? sheet.Width : sheet.Height;
        Notes.Same(
            ProofStep.Cut,
            _named,
            "",
            "length of a strip",
            list.StripLength,
            strip,
            "a panel gives"
        );

        void Given(string what, Length printed, Length bought, bool squared)
        {
            Length left = bought - (bought * house.Shrinkage);
            if (squared)
            {
                left -= house.EndSquaring;
            }
            if (
                !Notes.Ok(
                    printed <= left
                        && printed + house.Ruler.Step > left
                        && house.Ruler.Shows(printed)
                )
            )
            {
                Add(
                    printed > left ? MistakeKind.Short : MistakeKind.Wrong,
                    "",
                    what,
                    Notes.Told(printed),
                    $"it has {Notes.Told(left)}"
                );
            }
        }
    }

    private void Layout(int index)
    {
        PanelRow layout = sheet.Layouts[index];
        string row = $"panel {index + 1}";
        Length taken = Length.Zero;
        long strips = 0;
        foreach (StripRow strip in list.Strips)
        {
            if (strip.Panel is { } share && share.Layout == index)
            {
                taken += strip.Height * share.Strips;
                strips += share.Strips;
            }
        }
        if (!Notes.Ok(layout.Count > 0 && strips > 0))
        {
            Add(
                MistakeKind.Wrong,
                row,
                "panels",
                $"{layout.Count}",
                "nothing can be cut from them"
            );
        }
        Length given = layout.Up ? sheet.Width : sheet.Height;
        if (!Notes.Ok(taken <= given))
        {
            Add(
                MistakeKind.Short,
                row,
                layout.Up ? "width" : "height",
                Notes.Told(given),
                $"its strips take {Notes.Told(taken)}"
            );
        }
        Notes.Same(
            ProofStep.Cut,
            _named,
            row,
            "left",
            layout.Left,
            given - taken,
            "its strips leave"
        );
        Earlier(index, layout, given - taken);
        // Of a square whose print has no up, one way is like the other.
        if (
            !Notes.Ok(
                !layout.Up || sheet.Width != sheet.Height || bench.Index.IsDirectional(table.Fabric)
            )
        )
        {
            Add(
                MistakeKind.Excess,
                row,
                "strips run",
                "along the fabric",
                "across it they give the same"
            );
        }
    }

    /// <summary>No strip of a later panel goes into what is left of an earlier one, so that what is left over is in one piece.
    /// </summary>
    private void Earlier(int index, PanelRow layout, Length free)
    {
        for (int i = 0; i < list.Strips.Length; i++)
        {
            StripRow strip = list.Strips[i];
            bool later =
                strip.Panel is { } share
                && share.Layout > index
                && share.Layout < sheet.Layouts.Length
                && sheet.Layouts[share.Layout].Count == layout.Count
                && sheet.Layouts[share.Layout].Up == layout.Up;
            if (later && !Notes.Ok(strip.Height > free))
            {
                Add(
                    MistakeKind.Excess,
                    $"strips {i + 1}",
                    "panel",
                    $"{strip.Panel!.Layout + 1}",
                    $"panel {index + 1} has room for them"
                );
            }
        }
    }

    private void Add(MistakeKind kind, string row, string what, string printed, string expected) =>
        Notes.Add(kind, ProofStep.Cut, _named, row, what, printed, expected);
}
