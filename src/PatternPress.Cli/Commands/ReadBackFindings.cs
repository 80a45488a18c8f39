using PatternPress.Booklet;
using PatternPress.Booklet.Words;
using PatternPress.ReadBack;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;
using PatternPress.Typesetting;

namespace PatternPress.Cli.Commands;

/// <summary>Turns what reading the written files has shown into findings. Any of them keeps a pattern from being written.</summary>
internal static class ReadBackFindings
{
    private const int Shown = 80;

    /// <param name="name">Of the file.</param>
    public static IEnumerable<Diagnostic> Of(
        ReadBackReport report,
        TypesetDocument typeset,
        KnownNumbers known,
        string name,
        Manuscript manuscript
    )
    {
        string file = manuscript.Pattern.File;
        // What the typesetter could not place has been told already, with what to do about it.
        var told = typeset.Problems.Select(problem => problem.Page).ToHashSet();
        foreach (Misprint misprint in report.Misprints)
        {
            bool place =
                misprint.Kind
                is MisprintKind.Overlap
                    or MisprintKind.LabelsOverlap
                    or MisprintKind.OutsideMargins
                    or MisprintKind.OutsidePlace;
            if (place && told.Contains(misprint.Page))
            {
                continue;
            }
            yield return Found(
                place ? "PP0904" : "PP0902",
                place
                    ? "words on a page are out of place"
                    : "a written page does not say what it should",
                misprint.Page,
                misprint.Text,
                place
                    ? "shorten the words; if they are none of yours, please report it with the file"
                    : "this is a fault of the program, not of your pattern: please report it with the file",
                // A label that leans out of its figure is read all the same, and says what the text says.
                misprint.Kind is MisprintKind.OutsidePlace
                    ? Severity.Warning
                    : Severity.Error
            );
        }
        foreach (PrintedWords words in report.Words)
        {
            // The contents quote headings and pages.
            if (words.Kind is WordsKind.Contents or WordsKind.ListLabel)
            {
                continue;
            }
            string? size = words.Heads is [var head] && known.IsSize(head) ? head : null;
            foreach (string number in known.Unknown(words.Words, size))
            {
                string context =
                    words.Words.Length <= Shown ? words.Words : words.Words[..Shown] + "…";
                yield return Found(
                    "PP0903",
                    "a printed number is in none of the tables",
                    words.Page,
                    $"{number} in \"{context}\"" + (size is null ? "" : $" for the size {size}"),
                    "this is a fault of the program, not of your pattern: please report it with the file",
                    // In running text a house may tell numbers of its own by ways that nobody here knows.
                    words.Kind
                        is WordsKind.Paragraph
                            or WordsKind.Heading
                        ? Severity.Warning
                        : Severity.Error
                );
            }
        }

        Diagnostic Found(
            string code,
            string title,
            int page,
            string text,
            string hint,
            Severity severity
        ) =>
            new(
                code,
                severity,
                title,
                new Label(new Span(file, 1, 1, 1, 1), page > 0 ? $"{name}, page {page}" : name),
                [],
                text,
                hint,
                []
            );
    }
}
