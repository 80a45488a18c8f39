using System.Collections.Immutable;
using PatternPress.ReadBack.Reading;
using PatternPress.Typesetting;

namespace PatternPress.ReadBack.Checks;

/// <summary>Looks whether words stand inside the margins and do not overlap.</summary>
internal static class PlaceCheck
{
    // Letters lean and swash a little beyond their place; bullets and numbers hang.
    private static readonly Points Hair = new(150);
    private static readonly Points Lean = new(900);
    private static readonly Points Swash = new(2_000);

    /// <summary>What printers cannot print on: footers, which stand in the margin, keep out of it.</summary>
    private static readonly Points Edge = new(12_000);

    /// <param name="margins">The least of the document.</param>
    public static IEnumerable<Misprint> Check(ReadPage page, Insets margins)
    {
        var body = new PageRect(
            margins.Left - Swash,
            margins.Top - Swash,
            page.Width - margins.Across + (Swash * 2),
            page.Height - margins.Down + (Swash * 2)
        );
        var sheet = new PageRect(Edge, Edge, page.Width - (Edge * 2), page.Height - (Edge * 2));
        var words = new List<(ReadWord Word, bool Label, int Order)>();
        foreach (ReadPiece piece in page.Pieces)
        {
            PageRect place = piece.Artifact ? sheet : body;
            foreach (ReadWord word in piece.Boxes)
            {
                words.Add((word, piece.Tag == "Figure", words.Count));
                if (!place.Contains(word.Ink))
                {
                    // A figure at the edge of the text may reach into the margin with a label, not beyond the sheet.
                    yield return new Misprint(
                        piece.Tag == "Figure" && sheet.Contains(word.Ink)
                            ? MisprintKind.OutsidePlace
                            : MisprintKind.OutsideMargins,
                        page.Number,
                        $"\"{word.Words}\" stands {word.Ink.X} to {word.Ink.Right} pt from the left and {word.Ink.Y} to {word.Ink.Bottom} pt from the top, outside {(piece.Artifact ? "the printable sheet" : "the margins")}"
                    );
                }
            }
        }
        foreach (Misprint overlap in Overlaps(page, words))
        {
            yield return overlap;
        }
    }

    private static IEnumerable<Misprint> Overlaps(
        ReadPage page,
        List<(ReadWord Word, bool Label, int Order)> words
    )
    {
        // Sorted from top to bottom, only words that begin above the lower edge of one can meet it.
        words.Sort(
            (a, b) =>
                (a.Word.Ink.Y, a.Word.Ink.X, a.Order).CompareTo(
                    (b.Word.Ink.Y, b.Word.Ink.X, b.Order)
                )
        );
        for (int i = 0; i < words.Count; i++)
        {
            ReadWord one = words[i].Word;
            for (int j = i + 1; j < words.Count && words[j].Word.Ink.Y < one.Ink.Bottom; j++)
            {
                ReadWord other = words[j].Word;
                PageRect shared = one.Ink.Shared(other.Ink);
                // On one line an italic letter may lean over the next.
                Points least = one.Baseline == other.Baseline ? Lean : Hair;
                if (shared.Width > least && shared.Height > Hair)
                {
                    yield return new Misprint(
                        words[i].Label && words[j].Label
                            ? MisprintKind.LabelsOverlap
                            : MisprintKind.Overlap,
                        page.Number,
                        $"\"{one.Words}\" and \"{other.Words}\" overlap by {shared.Width} × {shared.Height} pt"
                    );
                }
            }
        }
    }
}
