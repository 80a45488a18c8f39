using System.Text;
using CsCheck;
using PatternPress.Booklet;
using PatternPress.Booklet.Sections;
using PatternPress.Booklet.Words;
using PatternPress.Cli.Commands;
using PatternPress.Pdf;
using PatternPress.Quilting.Compiling;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Tables;
using PatternPress.ReadBack;
using PatternPress.Source.Diagnostics;
using PatternPress.Source.Syntax;
using PatternPress.Tests.Booklet;
using PatternPress.Tests.Booklet.Sections;
using PatternPress.Tests.Proofing;
using PatternPress.Tests.Quilting.Cutting;
using PatternPress.Tests.Typesetting;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Pages;

namespace PatternPress.Tests.ReadBack;

/// <summary>Written files are read again: whole ones agree, and every fault put into one is told.</summary>
public sealed class FileReaderTests
{
    private static IEnumerable<TestCaseData> OwnDocuments() =>
        from id in Manuscripts.Own
        from plan in BookletTemplates.Templates.Documents
        where
            !plan.Printing.SaddleStitched
            && (!plan.OnRequest || id == "harbor-lights")
            && plan.IsNeeded(Manuscripts.Of(id).Tables)
        from paper in id == "harbor-lights" ? new[] { "letter", "a4" } : ["letter"]
        select new TestCaseData(id, plan.Key, paper);

    [TestCaseSource(nameof(OwnDocuments))]
    public void Every_document_of_the_repository_reads_as_composed(
        string id,
        string plan,
        string paper
    )
    {
        var composer = new DocumentComposer(Manuscripts.Of(id), BookletTemplates.Templates);
        DocumentPlan of = composer.Plans.Single(p => p.Key == plan);
        ComposedDocument composed = composer.Compose(
            of,
            of.Printing.PageOf(paper == "a4" ? PaperSize.A4 : PaperSize.Letter)
        );
        TypesetDocument typeset = new Typesetter(TestFonts.Library).Typeset(composed.Document);
        ReadBackReport report = FileReader.Compare(
            PdfWriter.Write(typeset),
            composed.Document,
            typeset
        );
        report
            .Misprints.Select(misprint => $"{misprint.Kind} page {misprint.Page}: {misprint.Text}")
            .ShouldBeEmpty();
        report.Compared.ShouldBeGreaterThan(10);
        // No number on any page is one that the tables do not hold for its size.
        ReadBackFindings
            .Of(
                report,
                typeset,
                KnownNumbers.Of(Manuscripts.Of(id), BookletTemplates.Templates),
                "file",
                Manuscripts.Of(id)
            )
            .Select(finding => $"{finding.Code} {finding.Primary.Text}: {finding.Text}")
            .ShouldBeEmpty();
        TestContext.Out.WriteLine($"{report.Compared} pieces, {report.Words.Length} found");
    }

    // Whatever a designer draws: nothing right is called wrong.
    [TestCase(6)]
    public void Documents_of_random_patterns_read_as_composed(int patterns) =>
        RandomPatterns.Any.Sample(
            yaml =>
            {
                Compilation compilation = Compiler.Compile(
                    "random",
                    SyntaxTree.Read("random.quilt.yaml", yaml),
                    null
                );
                if (compilation.Tables is not { } tables)
                {
                    return;
                }
                var manuscript = new Manuscript(
                    compilation.Pattern!,
                    compilation.Quilts,
                    tables,
                    compilation.Tree
                );
                ComposedDocument composed = Compose(manuscript, "booklet");
                TypesetDocument typeset = Typeset(composed.Document);
                ReadBackFindings
                    .Of(
                        FileReader.Compare(PdfWriter.Write(typeset), composed.Document, typeset),
                        typeset,
                        KnownNumbers.Of(manuscript, BookletTemplates.Templates),
                        "file",
                        manuscript
                    )
                    .Where(finding => finding.Severity == Severity.Error)
                    .Select(finding => $"{finding.Code} {finding.Primary.Text}: {finding.Text}")
                    .ShouldBeEmpty(yaml);
            },
            iter: patterns,
            seed: "0000KXf1rYb1",
            threads: 1
        );

    // Requirements of corrupted tables, written and read as if they were right: each changed cell is told.
    [Test]
    public void Every_corrupted_cell_of_the_requirements_is_told()
    {
        Manuscript right = Manuscripts.Of("harbor-lights");
        ComposedDocument expected = Compose(right);
        string words = PlainText.Of(expected.Document.Sequences.Select(s => s.Body));
        int told = 0;
        foreach (
            Corruption corruption in Corruptions
                .Of(right.Tables)
                .Where(c =>
                    c.Place.StartsWith("Requirements", StringComparison.Ordinal)
                    && c.Kind
                        is CorruptionKind.Yardage
                            or CorruptionKind.Measure
                            or CorruptionKind.Letter
                            or CorruptionKind.Swapped
                )
                .Where((_, i) => i % 2 == 0)
        )
        {
            ComposedDocument wrong = Compose(right with { Tables = corruption.Tables() });
            if (PlainText.Of(wrong.Document.Sequences.Select(s => s.Body)) == words)
            {
                continue;
            }
            TypesetDocument typeset = Typeset(wrong.Document);
            ReadBackReport report = FileReader.Compare(
                PdfWriter.Write(typeset),
                expected.Document,
                typeset
            );
            report.Misprints.ShouldNotBeEmpty($"{corruption.Place}: {corruption.Change}");
            report.Misprints.ShouldAllBe(m => m.Kind == MisprintKind.Words && m.Page > 0);
            told++;
        }
        TestContext.Out.WriteLine($"{told} corrupted requirements, all told");
        told.ShouldBeGreaterThan(20);
    }

    [Test]
    public void A_wrong_cell_is_told_with_what_stands_in_its_place()
    {
        Document right = Table("1 3/8 yd"),
            wrong = Table("1 5/8 yd");
        TypesetDocument typeset = Typeset(wrong);
        Misprint misprint = FileReader
            .Compare(PdfWriter.Write(typeset), right, typeset)
            .Misprints.ShouldHaveSingleItem();
        misprint.Page.ShouldBe(1);
        misprint.Text.ShouldBe(
            "the table cell \"1 3/8 yd\" below \"Throw\" should be here; found is \"15/8YD\""
        );
    }

    [Test]
    public void Columns_that_go_on_over_the_page_are_found()
    {
        string Words(string word) =>
            string.Join(" ", Enumerable.Range(1, 900).Select(i => word + i));
        Document document = Of(
            new Columns(
                Column.Share(new Text(Words("left"))),
                Column.Share(new Text(Words("right")))
            )
        );
        TypesetDocument typeset = Typeset(document);
        typeset.Pages.Length.ShouldBeGreaterThan(1);
        FileReader
            .Compare(PdfWriter.Write(typeset), document, typeset)
            .Misprints.Select(m => m.Text)
            .ShouldBeEmpty();
    }

    [Test]
    public void Words_moved_out_of_the_margins_or_over_others_are_told()
    {
        Document document = Of(new Stack(new Text("first words"), new Text("second words")));
        TypesetDocument typeset = Typeset(document);
        Page page = typeset.Pages[0];
        PageItem.Text[] texts = [.. page.Items.OfType<PageItem.Text>()];
        Points lineBetween = texts[^1].Baseline - texts[0].Baseline;

        Kinds(text => text with { X = text.X - 60.Pt }).ShouldContain(MisprintKind.OutsideMargins);
        Kinds(text =>
                text == texts[^1] ? text with { Baseline = text.Baseline - lineBetween } : text
            )
            .ShouldContain(MisprintKind.Overlap);
        Kinds(text => text).ShouldBeEmpty();

        IEnumerable<MisprintKind> Kinds(Func<PageItem.Text, PageItem.Text> move)
        {
            Page moved = page with
            {
                Items =
                [
                    .. page.Items.Select(item => item is PageItem.Text text ? move(text) : item),
                ],
            };
            return FileReader
                .Compare(PdfWriter.Write(typeset with { Pages = [moved] }), document, typeset)
                .Misprints.Select(m => m.Kind);
        }
    }

    [Test]
    public void A_font_that_is_not_in_the_file_is_told()
    {
        Document document = Of(new Text("words"));
        TypesetDocument typeset = Typeset(document);
        string file = Encoding.Latin1.GetString(
            PdfWriter.Write(typeset, new PdfOptions { Compressed = false })
        );
        file.ShouldContain("/FontFile2");
        FileReader
            .Compare(
                Encoding.Latin1.GetBytes(file.Replace("/FontFile2", "/FontFileX")),
                document,
                typeset
            )
            .Misprints.Select(m => m.Kind)
            .ShouldContain(MisprintKind.FontNotEmbedded);
    }

    [Test]
    public void A_missing_page_and_a_broken_file_are_told()
    {
        Document document = Of(new Stack(new Text("one"), new PageBreak(), new Text("two")));
        TypesetDocument typeset = Typeset(document);
        byte[] first = PdfWriter.Write(typeset with { Pages = typeset.Pages[..1] });
        FileReader
            .Compare(first, document, typeset)
            .Misprints.Select(m => m.Text)
            .ShouldBe(
                [
                    "the file has 1 pages where 2 were set",
                    "\"two\" should be here; found is nothing",
                ],
                ignoreOrder: true
            );
        FileReader
            .Compare(first[..(first.Length / 2)], document, typeset)
            .Misprints.Select(m => m.Kind)
            .ShouldContain(MisprintKind.Unreadable);
    }

    // A number below the name of a size must be one of that size's.
    [Test]
    public void A_number_of_another_size_is_not_known()
    {
        Manuscript manuscript = Manuscripts.Of("harbor-lights");
        KnownNumbers known = KnownNumbers.Of(manuscript, BookletTemplates.Templates);
        SizeColumn crib = manuscript.Tables.Sizes[0],
            queen = manuscript.Tables.Sizes[^1];
        string width = LengthText.Inches(queen.Width);
        known.Unknown($"{width} in", queen.Name).ShouldBeEmpty();
        known.Unknown($"{width} in", null).ShouldBeEmpty();
        known.Unknown($"{width} in", crib.Name).ShouldBe([width]);
        known.Unknown("cut 7919 strips of A4", null).ShouldBe(["7919"]);
    }

    private static ComposedDocument Compose(Manuscript manuscript, string plan = "requirements")
    {
        var composer = new DocumentComposer(manuscript, BookletTemplates.Templates);
        return composer.Compose(composer.Plans.Single(p => p.Key == plan), PaperSize.Letter);
    }

    private static TypesetDocument Typeset(Document document) =>
        new Typesetter(TestFonts.Library).Typeset(document);

    private static Document Table(string yards) =>
        Of(
            new Table(
                [TableColumn.Natural(), TableColumn.Natural()],
                [
                    new TableRow(new TableCell("Ink"), new TableCell(yards)),
                    new TableRow(new TableCell("Amber"), new TableCell("3/8 yd")),
                ]
            )
            {
                Header = [new TableRow(new TableCell("Fabric"), new TableCell("Throw"))],
            }
        );

    private static Document Of(Block body) =>
        new(
            new DocumentInformation("Sample", new DateOnly(2026, 11, 1)),
            BookletTemplates.Templates.Looks.ThemeFor([]).Styles,
            [new PageSequence(new PageFrame(PaperSize.Letter, Insets.All(0.75.Inch)), body)]
        );
}
