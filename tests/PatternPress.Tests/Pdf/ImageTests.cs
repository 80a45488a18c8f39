using System.Collections.Immutable;
using System.Text;
using PatternPress.Pdf;
using PatternPress.Tests.Imaging;
using PatternPress.Tests.Typesetting;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Pages;
using PatternPress.Typesetting.Styles;
using UglyToad.PdfPig;

namespace PatternPress.Tests.Pdf;

/// <summary>Images in a file.</summary>
public sealed class ImageTests
{
    private static readonly RasterImage Png = ImageOf(
        "rings",
        SampleImages.Png(60, 30, SampleImages.Rings)
    );

    private static readonly RasterImage Jpeg = ImageOf(
        "flat",
        SampleImages.Jpeg(48, 48, SampleImages.Rings)
    );

    private static RasterImage ImageOf(string name, byte[] file)
    {
        PatternPress.Imaging.StandardImage image = SampleImages.Read(file);
        return new(name, image.Width, image.Height, image.Pixels, image.MediaType, image.Encoded);
    }

    private static TypesetDocument Typeset(params (RasterImage Image, double Degrees)[] areas)
    {
        var drawing = new DrawingBuilder();
        for (int i = 0; i < areas.Length; i++)
        {
            (RasterImage image, double degrees) = areas[i];
            double x = 10 + (i * 60);
            drawing.Area(
                VectorPath.Rectangle(x, 10, 50, 80),
                Ink.FromHex("#aa5533"),
                image: new ImageFill(
                    image,
                    Transform
                        .Scale(20, 20.0 * image.Height / image.Width)
                        .Then(Transform.Turn(degrees))
                        .Then(Transform.Move(x, 10))
                )
            );
            // What follows is drawn in ink again.
            drawing.Area(VectorPath.Rectangle(x, 92, 50, 4), Ink.FromHex("#aa5533"));
        }
        return new Typesetter(TestFonts.Measurer).Typeset(
            new Document(
                new DocumentInformation("Images", new DateOnly(2026, 11, 1)),
                SampleDocument.Styles,
                [
                    new(
                        new PageFrame(PaperSize.Letter, Insets.All(72.Pt)),
                        new Stack(
                            new Heading(1, "Images"),
                            new Figure(drawing.ToDrawing(260, 110), "Some cloth.")
                        )
                    ),
                ]
            )
        );
    }

    private static string Plain(TypesetDocument document, bool grey = false) =>
        Encoding.Latin1.GetString(
            PdfWriter.Write(document, new PdfOptions { Compressed = false, Greyscale = grey })
        );

    [Test]
    public void An_image_is_in_the_file_once_however_often_it_is_used()
    {
        string text = Plain(Typeset((Png, 0), (Jpeg, 0), (Png, 90), (Png, 0)));
        Count(text, "/Subtype/Image").ShouldBe(2);
        // Three of the rings' tiles begin at other places or are turned.
        Count(text, "/PatternType 1").ShouldBe(4);
        Count(text, "/DCTDecode").ShouldBe(1);
        text.ShouldContain("/Pattern cs /P0 scn");
        // After an image the ink is set anew, though it is the same as before.
        Count(text, ".667 .333 .2 rg").ShouldBe(4);
    }

    [Test]
    public void Its_colors_are_said_to_be_those_of_the_standard()
    {
        string text = Plain(Typeset((Png, 0)));
        text.ShouldContain("/DefaultRGB");
        text.ShouldContain("/ICCBased");
        text.ShouldContain("acsp");
        Plain(Typeset()).ShouldNotContain("/ICCBased");
    }

    [Test]
    public void A_grey_file_has_grey_images()
    {
        string text = Plain(Typeset((Png, 0), (Jpeg, 0)), grey: true);
        Count(text, "/DeviceGray").ShouldBe(2);
        text.ShouldNotContain("/DCTDecode");
    }

    [Test]
    public void The_same_pages_give_the_same_bytes_and_tags_stay_sound()
    {
        TypesetDocument document = Typeset((Png, 0), (Jpeg, 30));
        byte[] first = PdfWriter.Write(document);
        PdfWriter.Write(document).ShouldBe(first);
        TagTree.Check(first).Faults.ShouldBeEmpty();
        using PdfDocument read = PdfDocument.Open(first);
        read.NumberOfPages.ShouldBe(1);
    }

    // The tile's matrix by hand: 20 pt wide and 10 pt high, its upper left corner at (x, y) from the sheet's upper left.
    [Test]
    public void A_tile_lies_where_the_page_says()
    {
        TypesetDocument document = Typeset((Png, 0));
        ImageFill fill = Fills(document.Pages[0].Items).Single();
        (fill.Width, fill.Height).ShouldBe((20, 10));
        string text = Plain(document);
        string x = $"{fill.Tile.E:0.###}",
            y = $"{792 - fill.Tile.F - 10:0.###}";
        text[text.IndexOf("/Matrix", StringComparison.Ordinal)..]
            .ShouldStartWith($"/Matrix[1 0 0 1 {x} {y}]");
        PagesAsText.ToText(document).ShouldContain("image rings 20 x 10");
        PagesAsSvg.Write(document.Pages[0]).ShouldContain("href=\"data:image/png;base64,");
    }

    [Test]
    public void A_tile_moves_with_its_page_onto_a_sheet()
    {
        TypesetDocument document = Typeset((Png, 90));
        TypesetDocument sheet = PatternPress.Typesetting.Imposition.PressSheet.Place(
            document,
            9.Pt,
            cropMarks: true
        );
        Transform before = Fills(document.Pages[0].Items).Single().Tile,
            after = Fills(sheet.Pages[0].Items).Single().Tile;
        double around = sheet.Pages[0].Trim!.Value.X.Value;
        after.ShouldBe(before with { E = before.E + around, F = before.F + around });
    }

    private static IEnumerable<ImageFill> Fills(ImmutableArray<PageItem> items) =>
        items.OfType<PageItem.Path>().Select(p => p.Image).OfType<ImageFill>();

    private static int Count(string text, string part) => text.Split(part).Length - 1;
}
