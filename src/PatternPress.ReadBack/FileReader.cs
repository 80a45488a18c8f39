using System.Collections.Immutable;
using PatternPress.ReadBack.Checks;
using PatternPress.ReadBack.Expecting;
using PatternPress.ReadBack.Reading;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Pages;

namespace PatternPress.ReadBack;

/// <summary>
/// Reads a written PDF again, with another library than the one that wrote it, and compares it with the document that it
/// should hold.
/// </summary>
public static class FileReader
{
    /// <param name="file">The PDF.</param>
    /// <param name="document">What was to be written; not the pages set of it, which might be wrong themselves.</param>
    /// <param name="set">The pages set of it: how many there must be, and whether words leave their cell, box or figure.</param>
    public static ReadBackReport Compare(byte[] file, Document document, TypesetDocument set)
    {
        ImmutableArray<ReadPage> read;
        try
        {
            read = PdfReading.Read(file);
        }
        // The library has no exception of its own for files that it cannot read.
        catch (Exception problem) when (problem is not OutOfMemoryException)
        {
            return new ReadBackReport(
                [
                    new Misprint(
                        MisprintKind.Unreadable,
                        0,
                        $"the file cannot be read: {problem.Message}"
                    ),
                ],
                [],
                0
            );
        }
        var misprints = new List<Misprint>();
        int pages = set.Pages.Length;
        if (read.Length != pages)
        {
            misprints.Add(
                new Misprint(
                    MisprintKind.Unreadable,
                    0,
                    $"the file has {read.Length} pages where {pages} were set"
                )
            );
        }
        ImmutableArray<Expected> expected = ExpectedWords.Of(document);
        var words = new WordCheck(expected, read);
        words.Compare();
        misprints.AddRange(words.Misprints);
        misprints.AddRange(
            PageInspection
                .Inspect(set)
                .Where(finding => finding.Kind == PageFindingKind.OutsidePlace)
                .Select(finding => new Misprint(
                    MisprintKind.OutsidePlace,
                    finding.Page,
                    finding.Message
                ))
        );
        Insets margins = LeastMargins(document);
        foreach (ReadPage page in read)
        {
            misprints.AddRange(PlaceCheck.Check(page, margins));
            if (page.Unmarked > 0)
            {
                misprints.Add(
                    new Misprint(
                        MisprintKind.Words,
                        page.Number,
                        $"{page.Unmarked} letters belong to nothing that is read"
                    )
                );
            }
            misprints.AddRange(
                page.FontsOutside.Select(font => new Misprint(
                    MisprintKind.FontNotEmbedded,
                    page.Number,
                    $"the font {font} is not in the file"
                ))
            );
        }
        return new ReadBackReport(
            [.. misprints.OrderBy(misprint => misprint.Page)],
            [
                .. words.Found,
                .. read.SelectMany(page =>
                    page.Pieces.Where(piece => !piece.Artifact && piece.Tag == "Figure")
                        .SelectMany(piece => piece.Boxes)
                        .Select(word => new PrintedWords(
                            WordsKind.Figure,
                            page.Number,
                            word.Words,
                            []
                        ))
                ),
            ],
            expected.Length
        );
    }

    private static Insets LeastMargins(Document document)
    {
        Insets? least = null;
        foreach (PageSequence sequence in document.Sequences)
        {
            Insets own = sequence.Frame.Margins;
            least = least is { } so
                ? new Insets(
                    Points.Min(so.Left, own.Left),
                    Points.Min(so.Top, own.Top),
                    Points.Min(so.Right, own.Right),
                    Points.Min(so.Bottom, own.Bottom)
                )
                : own;
        }
        return least ?? Insets.None;
    }
}
