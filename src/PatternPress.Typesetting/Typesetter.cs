using System.Collections.Immutable;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Fonts;
using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Pages;

namespace PatternPress.Typesetting;

/// <summary>Turns a document into pages of positioned items. Safe to use from several threads at once.</summary>
/// <example>
/// <code>
/// var fonts = new FontLibrary(
///     new FontFace("Lato", bold: false, italic: false, () => File.ReadAllBytes("templates/fonts/Lato-Regular.ttf")),
///     new FontFace("Lato", bold: true, italic: false, () => File.ReadAllBytes("templates/fonts/Lato-Bold.ttf")));
/// var styles = new StyleSheet(14.Pt, new Dictionary&lt;string, TextStyle&gt;
/// {
///     ["body"] = new() { Size = 10.Pt, Leading = 14.Pt, SpaceAfter = 7.Pt },
///     ["heading1"] = new() { Size = 18.Pt, Leading = 28.Pt, Bold = true, KeepWithNext = true },
///     ["table"] = new() { Size = 9.Pt, Leading = 12.Pt, TabularFigures = true },
/// });
/// var frame = new PageFrame(PaperSize.Letter, Insets.All(0.75.Inch))
/// {
///     Footer = new Text([new Run("page "), PageField.Page, new Run(" of "), PageField.PageCount]),
/// };
/// var body = new Stack(
///     new Heading(1, "What to buy") { Name = "buy" },
///     new Text("Cut 2 1/2 in strips; see the table."),
///     new Table(
///         [TableColumn.Share(), TableColumn.Natural(CellAlignment.Number)],
///         [new TableRow(new TableCell("Ink") { IsHeader = true }, new TableCell("1 3/8 yd"))])
///     {
///         Header = [new TableRow(new TableCell("Item"), new TableCell("Amount"))],
///     },
///     new Figure(drawing, "Two squares with a diagonal line") { MaxWidth = 200.Pt, MinWidth = 120.Pt });
/// var document = new Document(new DocumentInformation("Sample", new DateOnly(2026, 11, 1)), styles, [new PageSequence(frame, body)]);
/// var set = new Typesetter(fonts).Typeset(document);   // set.Pages, set.Anchors, set.Problems
/// byte[] pdf = PdfWriter.Write(set);
/// </code>
/// </example>
public sealed class Typesetter
{
    /// <summary>After so many passes page numbers either stand or never will.</summary>
    const int MostPasses = 4;

    readonly TextMeasurer measurer;

    /// <summary>A typesetter that knows these fonts only.</summary>
    public Typesetter(FontLibrary fonts)
        : this(new TextMeasurer(fonts)) { }

    /// <summary>A typesetter that shares its measured words with others.</summary>
    public Typesetter(TextMeasurer measurer) => this.measurer = measurer;

    /// <summary>
    /// Lays out a document. Page numbers are reserved at first and filled in by further passes, at most four. Never fails:
    /// what does not fit is placed anyway and listed among the problems.
    /// </summary>
    public TypesetDocument Typeset(Document document)
    {
        var anchors = AnchorsOf(document);
        int? pageCount = null;
        LayoutContext? context = null;
        for (var pass = 1; ; pass++)
        {
            context = new LayoutContext(measurer, document.Styles, pageCount, anchors, context);
            var pages = Paginator.Paginate(context, document);
            var settled =
                pageCount == pages.Count && PlacedAnchors(pages, anchors).SequenceEqual(anchors);
            anchors = PlacedAnchors(pages, anchors);
            pageCount = pages.Count;
            if (!settled && pass < MostPasses && Paginator.UsesPageNumbers(document))
            {
                continue;
            }

            if (!settled && pass == MostPasses)
            {
                context.Report(
                    LayoutProblemKind.UnsettledPageNumbers,
                    $"page numbers still changed after {MostPasses} passes; some of them may be wrong"
                );
            }

            ReportRepeated(context, anchors);
            return Finish(document, pages, anchors, context);
        }
    }

    TypesetDocument Finish(
        Document document,
        List<BodyPage> pages,
        IReadOnlyList<PlacedAnchor> anchors,
        LayoutContext context
    )
    {
        // Headers and footers, whose numbers are all known now, and the problems of the last pass.
        var last = new LayoutContext(measurer, document.Styles, pages.Count, anchors, context);
        var finished = pages.Select(page => PageFinisher.Finish(last, page)).ToImmutableArray();
        return new TypesetDocument(
            document.Information,
            finished,
            [.. anchors],
            [
                .. context
                    .Problems.Concat(last.Problems)
                    .DistinctBy(problem => (problem.Kind, problem.Message)),
            ]
        );
    }

    // All anchors in the order of the document, before anything is laid out.
    static List<PlacedAnchor> AnchorsOf(Document document)
    {
        var anchors = new List<PlacedAnchor>();
        foreach (var sequence in document.Sequences)
        {
            Collect(sequence.Body);
        }

        return anchors;

        void Collect(Block block)
        {
            if (block is Anchor anchor)
            {
                anchors.Add(
                    new(anchor.Name, anchor.Level, anchor.Title, 0, Points.Zero, Points.Zero)
                );
            }

            foreach (var child in block.Children)
            {
                Collect(child);
            }
        }
    }

    // The anchors as they stand on the pages; those that stand nowhere (in an artifact, say) keep page 0.
    static List<PlacedAnchor> PlacedAnchors(List<BodyPage> pages, IReadOnlyList<PlacedAnchor> known)
    {
        var placed = pages.SelectMany(page => page.Anchors).ToList();
        return placed.Count == known.Count ? placed : [.. Matched(placed, known)];
    }

    static IEnumerable<PlacedAnchor> Matched(
        List<PlacedAnchor> placed,
        IReadOnlyList<PlacedAnchor> known
    )
    {
        var next = 0;
        foreach (var anchor in known)
        {
            var found = placed.FindIndex(
                next,
                one =>
                    one.Name == anchor.Name
                    && one.Level == anchor.Level
                    && one.Title == anchor.Title
            );
            if (found >= 0)
            {
                next = found + 1;
                yield return placed[found];
            }
            else
            {
                yield return anchor;
            }
        }
    }

    static void ReportRepeated(LayoutContext context, IReadOnlyList<PlacedAnchor> anchors)
    {
        foreach (
            var group in anchors
                .Where(anchor => anchor.Name.Length > 0)
                .GroupBy(anchor => anchor.Name)
        )
        {
            if (group.Count() > 1)
            {
                context.Report(
                    LayoutProblemKind.RepeatedAnchor,
                    $"{group.Count()} places bear the name '{group.Key}' (pages {string.Join(", ", group.Select(one => one.Page))}); links lead to the first"
                );
            }
        }
    }
}
