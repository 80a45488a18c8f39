using PatternPress.Pdf;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Imposition;
using PatternPress.Typesetting.Pages;
using UglyToad.PdfPig;

namespace PatternPress.Tests.Typesetting.Imposition;

public sealed class SaddleStitchTests
{
    // The order that anyone finds who folds two sheets, lays one in the other and numbers the pages: common practice, no
    // source.
    [Test]
    public void Eight_pages_take_two_sheets_in_the_order_of_a_folded_dummy() =>
        SaddleStitch.Order(8).ShouldBe([(8, 1), (2, 7), (6, 3), (4, 5)]);

    [TestCase(1, 1)]
    [TestCase(4, 1)]
    [TestCase(5, 2)]
    [TestCase(33, 9)]
    public void Pages_are_filled_up_to_a_multiple_of_four(int pages, int sheets)
    {
        SaddleStitch.SheetsFor(pages).ShouldBe(sheets);
        (int Left, int Right)[] order = [.. SaddleStitch.Order(pages)];
        order.Length.ShouldBe(sheets * 2);
        order
            .SelectMany(side => new[] { side.Left, side.Right })
            .Order()
            .ShouldBe(Enumerable.Range(1, sheets * 4));
        // The two pages behind one another on a leaf follow one another; facing pages face across the fold.
        for (int sheet = 0; sheet < sheets; sheet++)
        {
            order[(2 * sheet) + 1].Left.ShouldBe(order[2 * sheet].Right + 1);
            order[2 * sheet].Left.ShouldBe(order[(2 * sheet) + 1].Right + 1);
            order.ShouldAllBe(side => side.Left + side.Right == (sheets * 4) + 1);
        }
    }

    [Test]
    public void Inner_sheets_move_towards_the_fold_by_the_paper_of_those_around_them()
    {
        SaddleStitch.Creep(0, 0.1.Mm).ShouldBe(Points.Zero);
        SaddleStitch.Creep(8, 0.1.Mm).ShouldBe(0.1.Mm * 8);

        TypesetDocument pages = Sample(PaperSize.Letter.Half());
        var flat = SaddleStitch.Impose(pages, PaperSize.Letter, Points.Zero);
        var crept = SaddleStitch.Impose(pages, PaperSize.Letter, 1.Pt);
        for (int side = 0; side < flat.Pages.Length; side++)
        {
            Points creep = 1.Pt * (side / 2);
            foreach (
                (PageItem.Text before, PageItem.Text after) in Texts(flat.Pages[side])
                    .Zip(Texts(crept.Pages[side]))
            )
            {
                bool left = before.X < PaperSize.Letter.Height / 2;
                (after.X - before.X).ShouldBe(left ? creep : -creep);
            }
        }
    }

    [TestCase(612, 792)]
    [TestCase(595.276, 841.89)]
    public void Every_page_stands_whole_on_its_half_of_a_sheet(double width, double height)
    {
        var sheet = new PaperSize(width.Pt, height.Pt);
        TypesetDocument pages = Sample(sheet.Half());
        var imposed = SaddleStitch.Impose(pages, sheet, 0.1.Mm);
        imposed.Pages.ShouldAllBe(page => page.Paper == sheet.Turned());
        var order = SaddleStitch.Order(pages.Pages.Length);
        for (int side = 0; side < imposed.Pages.Length; side++)
        {
            string[] words = [.. Texts(imposed.Pages[side]).Select(text => text.Characters)];
            words.ShouldBe([.. WordsOf(order[side].Left), .. WordsOf(order[side].Right)]);
            foreach (PageItem.Text text in Texts(imposed.Pages[side]))
            {
                bool left = text.X < sheet.Height / 2;
                (text.X + text.Width).ShouldBeInRange(
                    left ? Points.Zero : sheet.Height / 2,
                    left ? sheet.Height / 2 : sheet.Height
                );
            }
        }

        IEnumerable<string> WordsOf(int number) =>
            number > pages.Pages.Length
                ? []
                : Texts(pages.Pages[number - 1]).Select(text => text.Characters);
    }

    [Test]
    public void The_file_claims_no_accessibility_and_holds_the_same_words()
    {
        TypesetDocument pages = Sample(PaperSize.A5);
        var imposed = SaddleStitch.Impose(pages, PaperSize.A4, 0.1.Mm);
        byte[] file = PdfWriter.Write(
            imposed,
            new PdfOptions { Compressed = false, Tagged = false }
        );
        string text = System.Text.Encoding.Latin1.GetString(file);
        text.ShouldNotContain("pdfuaid:part");
        text.ShouldNotContain("StructTreeRoot");
        text.ShouldNotContain("/MarkInfo");
        text.ShouldNotContain("/Outlines");
        using var pdf = PdfDocument.Open(file);
        pdf.NumberOfPages.ShouldBe(SaddleStitch.SheetsFor(pages.Pages.Length) * 2);
        using var plain = PdfDocument.Open(PdfWriter.Write(pages));
        Letters(pdf).ShouldBe(Letters(plain));

        static string Letters(PdfDocument file) =>
            string.Concat(
                file.GetPages()
                    .SelectMany(page => page.Letters)
                    .Select(letter => letter.Value)
                    .Order(StringComparer.Ordinal)
            );
    }

    private static TypesetDocument Sample(PaperSize paper) =>
        new Typesetter(TestFonts.Measurer).Typeset(SampleDocument.Compose(paper));

    private static IEnumerable<PageItem.Text> Texts(Page page) => Texts(page.Items);

    private static IEnumerable<PageItem.Text> Texts(IEnumerable<PageItem> items) =>
        items.SelectMany(item =>
            item switch
            {
                PageItem.Text text => [text],
                PageItem.Clip clip => Texts(clip.Items),
                _ => [],
            }
        );
}
