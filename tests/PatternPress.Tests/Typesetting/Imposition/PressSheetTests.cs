using PatternPress.Pdf;
using PatternPress.Tests.Pdf;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Imposition;
using PatternPress.Typesetting.Pages;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Tokens;

namespace PatternPress.Tests.Typesetting.Imposition;

public sealed class PressSheetTests
{
    private static readonly Points Bleed = 0.125.Inch;

    private static TypesetDocument Sheets(bool marks = true) =>
        PressSheet.Place(
            new Typesetter(TestFonts.Measurer).Typeset(SampleDocument.Compose(PaperSize.Letter)),
            Bleed,
            marks
        );

    [Test]
    public void The_page_is_the_trim_and_the_bleed_reaches_past_it()
    {
        foreach (Page page in Sheets().Pages)
        {
            PageRect trim = page.Trim!.Value,
                bleed = page.Bleed!.Value;
            (trim.Width, trim.Height).ShouldBe((PaperSize.Letter.Width, PaperSize.Letter.Height));
            (trim.X - bleed.X, bleed.Right - trim.Right).ShouldBe((Bleed, Bleed));
            (trim.Y - bleed.Y, bleed.Bottom - trim.Bottom).ShouldBe((Bleed, Bleed));
            new PageRect(Points.Zero, Points.Zero, page.Paper.Width, page.Paper.Height)
                .Contains(bleed)
                .ShouldBeTrue();
        }
    }

    [Test]
    public void Marks_point_at_the_corners_of_the_trim_from_outside_the_bleed()
    {
        Page page = Sheets().Pages[0];
        PageRect trim = page.Trim!.Value,
            bleed = page.Bleed!.Value;
        int from = page.Items.ToList().FindIndex(IsMarks);
        PageItem.Path[] marks =
        [
            .. page
                .Items.Skip(from + 1)
                .TakeWhile(i => i is not PageItem.ArtifactEnd)
                .Cast<PageItem.Path>(),
        ];
        marks.Length.ShouldBe(8);
        foreach (PageItem.Path mark in marks)
        {
            (double left, double top, double right, double bottom) = mark.Outline.Bounds();
            bool upright = left == right;
            (upright ? left : top).ShouldBeOneOf(
                upright ? [trim.X.Value, trim.Right.Value] : [trim.Y.Value, trim.Bottom.Value]
            );
            bool clear =
                right <= bleed.X.Value
                || left >= bleed.Right.Value
                || bottom <= bleed.Y.Value
                || top >= bleed.Bottom.Value;
            clear.ShouldBeTrue();
            mark.Stroke!.Width.ShouldBeGreaterThanOrEqualTo(0.35.Pt);
        }

        static bool IsMarks(PageItem item) =>
            item is PageItem.ArtifactBegin { Kind: ArtifactKind.PrinterMarks };
    }

    // ISO 32000-1, 14.11.2: BleedBox and TrimBox are entries of the page, in its own coordinates.
    [Test]
    public void The_file_has_both_boxes_and_is_tagged_all_the_same()
    {
        byte[] file = PdfWriter.Write(Sheets());
        TagTree.Check(file).Faults.ShouldBeEmpty();
        using var pdf = PdfDocument.Open(file);
        UglyToad.PdfPig.Content.Page page = pdf.GetPage(1);
        double[] trim = Box("TrimBox"),
            bleed = Box("BleedBox");
        (trim[2] - trim[0], trim[3] - trim[1]).ShouldBe((612, 792));
        (bleed[0], bleed[1]).ShouldBe((trim[0] - 9, trim[1] - 9));
        (bleed[2], bleed[3]).ShouldBe((trim[2] + 9, trim[3] + 9));

        double[] Box(string name) =>
            [
                .. ((ArrayToken)page.Dictionary.Data[name])
                    .Data.OfType<NumericToken>()
                    .Select(n => n.Double),
            ];
    }

    [Test]
    public void A_ground_reaches_the_edge_of_the_bleed()
    {
        double width = 612 + (2 * Bleed.Value),
            height = 792 + (2 * Bleed.Value);
        var frame = new PageFrame(PaperSize.Letter, Insets.All(0.75.Inch))
        {
            Bleed = Bleed,
            Background = new DrawingBuilder()
                .Area(VectorPath.Rectangle(0, 0, width, height), Ink.Grey(0.9))
                .ToDrawing(width, height),
        };
        var document = new Document(
            new DocumentInformation("Cover", new DateOnly(2026, 11, 1)),
            SampleDocument.Styles,
            [new PageSequence(frame, new Text("Cover"))]
        );
        Page page = PressSheet
            .Place(new Typesetter(TestFonts.Measurer).Typeset(document), Bleed, true)
            .Pages[0];
        (double left, double top, double right, double bottom) = page
            .Items.OfType<PageItem.Path>()
            .First(path => path.Fill is not null)
            .Outline.Bounds();
        PageRect bleed = page.Bleed!.Value;
        (left, top, right, bottom).ShouldBe(
            (bleed.X.Value, bleed.Y.Value, bleed.Right.Value, bleed.Bottom.Value)
        );
    }

    [Test]
    public void Without_marks_the_sheet_ends_with_the_bleed()
    {
        Page page = Sheets(marks: false).Pages[0];
        page.Paper.Width.ShouldBe(PaperSize.Letter.Width + (Bleed * 2));
        page.Items.OfType<PageItem.ArtifactBegin>()
            .ShouldNotContain(begin => begin.Kind == ArtifactKind.PrinterMarks);
    }
}
