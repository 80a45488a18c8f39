using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using PatternPress.Pdf;
using PatternPress.Tests.Typesetting;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Pages;
using PatternPress.Typesetting.Styles;
using Shouldly;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Outline;

namespace PatternPress.Tests.Pdf;

public partial class PdfWriterTests
{
    static readonly Lazy<TypesetDocument> Sample = new(() =>
        new Typesetter(TestFonts.Measurer).Typeset(SampleDocument.Compose(PaperSize.Letter))
    );

    static readonly Lazy<byte[]> Written = new(() => PdfWriter.Write(Sample.Value));
    static readonly PdfOptions Plain = new() { Compressed = false };

    [Test]
    public void The_sample_has_no_problems_and_no_collisions()
    {
        Sample.Value.Problems.ShouldBeEmpty();
        PageInspection.Inspect(Sample.Value).ShouldBeEmpty();
    }

    [Test]
    public void The_tags_follow_the_standard()
    {
        TagTree.Check(Written.Value).Faults.ShouldBeEmpty();
        TagTree
            .Check(
                PdfWriter.Write(Sample.Value, Plain with { DraftMark = "DRAFT", Greyscale = true })
            )
            .Faults.ShouldBeEmpty();
    }

    [Test]
    public void Every_kind_of_element_is_there() =>
        TagTree
            .Check(Written.Value)
            .Elements.Select(element => element.Type)
            .Distinct()
            .Order(StringComparer.Ordinal)
            .ShouldBe([
                "BlockQuote",
                "Caption",
                "Document",
                "Figure",
                "H1",
                "H2",
                "H3",
                "L",
                "LBody",
                "LI",
                "Lbl",
                "Link",
                "P",
                "Reference",
                "TBody",
                "TD",
                "TH",
                "THead",
                "TOC",
                "TOCI",
                "TR",
                "Table",
            ]);

    [Test]
    public void A_table_over_two_pages_is_one_table() =>
        TagTree
            .Check(Written.Value)
            .Elements.Count(element => element.Type == "Table")
            .ShouldBe(
                Sample
                    .Value.Pages.SelectMany(page => page.Items.OfType<PageItem.TagBegin>())
                    .Select(begin => begin.Tag)
                    .Where(tag => tag.Role == TagRole.Table)
                    .Distinct()
                    .Count()
            );

    [Test]
    public void Words_can_be_read_back()
    {
        using var pdf = PdfDocument.Open(Written.Value);
        pdf.NumberOfPages.ShouldBe(Sample.Value.Pages.Length);
        var words = string.Concat(pdf.GetPages().Select(PdfWords.Of));
        words.ShouldContain("AVATAR, Type, difficult, office:");
        words.ShouldContain("A rotary cutter’s blade is sharp: close it whenever you lay it down.");
        words.ShouldContain("from these cut 124 squares 2 1/2 × 2 1/2 in.");
        words.ShouldContain("to 12 5/16 in, or to 3 11/32 in where");
        words.ShouldContain("\n19 1/4 yd\n");
    }

    [Test]
    public void The_checker_of_tags_finds_faults()
    {
        var small = new Typesetter(TestFonts.Measurer).Typeset(
            SampleDocument.Compose(PaperSize.A4, 1)
        );
        var text = Encoding.Latin1.GetString(PdfWriter.Write(small, Plain));
        Faults("/Scope", "/Skope").ShouldContain("a header cell has no scope");
        Faults("/Alt", "/Ald").ShouldContain("a figure has no words");
        Faults("/H3", "/H5").ShouldContain("heading 5 follows heading 2");
        Faults("/S/LBody", "/S/LBodx").ShouldContain("LI holds LBodx");
        Faults("/MCID 1 ", "/MCID 2 ").ShouldNotBeEmpty();
        Faults("/OBJR", "/OBJX").ShouldContain("a link has no annotation");
        Faults("/BBox", "/BBux").ShouldContain("a figure has no box");
        Faults("BT\n", "  \n").ShouldNotBeEmpty();
        Faults("/ListNumbering", "/ListNumberinx")
            .ShouldContain("a list does not say how it is numbered");
        Faults("/FontFile2", "/FontFilex")
            .ShouldContain(fault => fault.EndsWith("is not embedded", StringComparison.Ordinal));
        Faults("/ToUnicode", "/ToUnicodx")
            .ShouldContain(fault => fault.EndsWith("has no characters", StringComparison.Ordinal));
        Faults("/Outlines", "/Outlinex").ShouldContain("the file has headings and no bookmarks");
        Faults("/Dest[", "/Desx[").ShouldContain("a bookmark leads nowhere");
        Faults("/Dest[", "/Desx[")
            .ShouldContain(fault =>
                fault.EndsWith("a link leads nowhere", StringComparison.Ordinal)
            );
        Faults("/ColSpan 2", "/ColSpan 3")
            .ShouldContain(fault =>
                fault.StartsWith("a table has rows of", StringComparison.Ordinal)
            );
        Faults("/Artifact<</Type/Layout>>", "/Artifact<</Type/Layouts>>").ShouldNotBeEmpty();
        Faults("/Lang(en", "/Lanx(en").ShouldContain("the file names no language");
        Faults("dc:title", "dc:titlx").ShouldContain("the metadata have no title");

        IReadOnlyList<string> Faults(string old, string changed)
        {
            text.ShouldContain(old);
            return TagTree
                .Check(
                    Encoding.Latin1.GetBytes(text.Replace(old, changed, StringComparison.Ordinal))
                )
                .Faults;
        }
    }

    [Test]
    public void Bookmarks_follow_the_headings()
    {
        using var pdf = PdfDocument.Open(Written.Value);
        pdf.TryGetBookmarks(out var bookmarks).ShouldBeTrue();
        bookmarks
            .GetNodes()
            .OfType<DocumentBookmarkNode>()
            .Select(node => $"{node.Level} {node.Title} {node.PageNumber}")
            .ShouldBe(
                Sample
                    .Value.Anchors.Where(anchor => anchor.Level > 0)
                    .Select(anchor => $"{anchor.Level - 1} {anchor.Title} {anchor.Page}"),
                ignoreOrder: true
            );
    }

    [Test]
    public void Metadata_are_well_formed_and_claim_accessibility()
    {
        using var pdf = PdfDocument.Open(Written.Value);
        pdf.TryGetXmpMetadata(out var metadata).ShouldBeTrue();
        var xmp = metadata.GetXDocument()!;
        XNamespace ua = "http://www.aiim.org/pdfua/ns/id/";
        XNamespace dc = "http://purl.org/dc/elements/1.1/";
        xmp.Descendants(ua + "part").Single().Value.ShouldBe("1");
        xmp.Descendants(dc + "title").Single().Value.ShouldBe("Sampler of blocks & rules");
        xmp.Descendants(dc + "rights").Single().Value.ShouldBe("May be copied freely");
        pdf.Information.Title.ShouldBe("Sampler of blocks & rules");
        pdf.Information.Author.ShouldBe("Typesetter’s workshop");
        pdf.Information.CreationDate.ShouldStartWith("D:20261101000000");
        Encoding
            .Latin1.GetString(
                PdfWriter.Write(Sample.Value, Plain with { ClaimsAccessibility = false })
            )
            .ShouldNotContain("pdfuaid:part>");
    }

    [Test]
    public void The_same_document_gives_the_same_bytes()
    {
        var again = new Typesetter(
            new PatternPress.Typesetting.Fonts.TextMeasurer(TestFonts.Library)
        ).Typeset(SampleDocument.Compose(PaperSize.Letter));
        PdfWriter.Write(again).ShouldBe(Written.Value);
        PagesAsText.ToText(again).ShouldBe(PagesAsText.ToText(Sample.Value));
    }

    [Test]
    public void Several_files_may_be_written_at_once()
    {
        var papers = Enumerable
            .Range(0, 8)
            .Select(i => i % 2 == 0 ? PaperSize.Letter : PaperSize.A4)
            .ToList();
        var files = papers
            .AsParallel()
            .AsOrdered()
            .Select(paper =>
                PdfWriter.Write(
                    new Typesetter(TestFonts.Measurer).Typeset(SampleDocument.Compose(paper))
                )
            )
            .ToList();
        for (var i = 2; i < files.Count; i++)
        {
            files[i].ShouldBe(files[i - 2]);
        }

        files[0].ShouldBe(Written.Value);
    }

    [Test]
    public void Nothing_in_the_file_is_random_or_of_today()
    {
        var text = Encoding.Latin1.GetString(PdfWriter.Write(Sample.Value, Plain));
        var dates = DatePattern().Matches(text).Select(match => match.Value).Distinct();
        dates.ShouldBe(["D:20261101"]);
        text.ShouldNotContain("/NM");
        SubsetPattern()
            .Matches(text)
            .Select(match => match.Value)
            .Distinct()
            .ShouldBe(["AAAAAA+", "AAAAAB+", "AAAAAC+", "AAAAAD+"], ignoreOrder: true);
    }

    [Test]
    public void Compressed_streams_are_complete()
    {
        var streams = Streams(Written.Value).ToList();
        streams.Count.ShouldBeGreaterThan(10);
        foreach (var stream in streams)
        {
            using var zlib = new ZLibStream(new MemoryStream(stream), CompressionMode.Decompress);
            using var content = new MemoryStream();
            zlib.CopyTo(content);
            // RFC 1950: the last four bytes are the Adler-32 checksum of what was compressed.
            Adler32(content.ToArray())
                .ShouldBe(
                    System.Buffers.Binary.BinaryPrimitives.ReadUInt32BigEndian(
                        stream.AsSpan()[^4..]
                    )
                );
        }
    }

    [Test]
    public void Fonts_are_embedded_as_subsets()
    {
        using var pdf = PdfDocument.Open(Written.Value);
        var letters = pdf.GetPages().SelectMany(page => page.Letters).ToList();
        letters
            .Select(letter => letter.FontName)
            .Distinct()
            .ShouldAllBe(name => name!.Length > 7 && name[6] == '+');
        Written.Value.Length.ShouldBeLessThan(220_000);
    }

    [Test]
    public void Letters_stand_where_they_were_laid_out()
    {
        using var pdf = PdfDocument.Open(Written.Value);
        foreach (var page in Sample.Value.Pages)
        {
            var letters = pdf.GetPage(page.Number).Letters;
            foreach (
                var text in page
                    .Items.OfType<PageItem.Text>()
                    .Where(text => text.Degrees == 0 && !text.Characters.EndsWith(' '))
            )
            {
                var (x, y) = (text.X.Value, page.Paper.Height.Value - text.Baseline.Value);
                letters
                    .Any(letter =>
                        Math.Abs(letter.StartBaseLine.X - x) < 0.05
                        && Math.Abs(letter.StartBaseLine.Y - y) < 0.05
                    )
                    .ShouldBeTrue(text.Characters);
                // PdfPig's letters end at their own width, whatever the distance to the next.
                var (font, last) = (text.Face.Font, text.Shape.Glyphs[^1]);
                var units = text.Shape.Advance - last.Advance + font.AdvanceOf(last.Id);
                var end = x + (units * text.Size.Value / font.UnitsPerEm);
                letters
                    .Any(letter =>
                        Math.Abs(letter.EndBaseLine.X - end) < 0.25
                        && Math.Abs(letter.EndBaseLine.Y - y) < 0.05
                    )
                    .ShouldBeTrue($"end of {text.Characters}");
            }
        }
    }

    [Test]
    public void Grey_files_have_no_colour()
    {
        using var pdf = PdfDocument.Open(
            PdfWriter.Write(Sample.Value, new PdfOptions { Greyscale = true })
        );
        pdf.GetPages()
            .SelectMany(page => page.Operations)
            .Select(operation => operation.Operator)
            .ShouldNotContain("rg");
        using var coloured = PdfDocument.Open(Written.Value);
        coloured
            .GetPages()
            .SelectMany(page => page.Operations)
            .Select(operation => operation.Operator)
            .ShouldContain("rg");
    }

    [Test]
    public void The_draft_mark_is_seen_but_not_read()
    {
        using var pdf = PdfDocument.Open(
            PdfWriter.Write(Sample.Value, new PdfOptions { DraftMark = "DRAFT" })
        );
        using var without = PdfDocument.Open(Written.Value);
        foreach (var page in pdf.GetPages())
        {
            page.Text.ShouldBe(without.GetPage(page.Number).Text);
            page.Operations.Count.ShouldBeGreaterThan(
                without.GetPage(page.Number).Operations.Count
            );
        }
    }

    [Test]
    public void Figures_say_where_they_stand()
    {
        var body = new Figure(
            new DrawingBuilder()
                .Area(VectorPath.Rectangle(0, 0, 10, 10), Ink.Black)
                .ToDrawing(10, 10),
            "a square"
        );
        var document = new Typesetter(TestFonts.Measurer).Typeset(
            new Document(
                new DocumentInformation("x", new DateOnly(2026, 1, 1)),
                new StyleSheet(Points.Zero, []),
                [new PageSequence(new PageFrame(PaperSize.Letter, Insets.All(72.Pt)), body)]
            )
        );
        var text = Encoding.Latin1.GetString(PdfWriter.Write(document, Plain));
        BoxPattern()
            .Match(text)
            .Groups[1]
            .Value.Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .ShouldBe(["72", "710", "82", "720"]);
        text.ShouldContain("(a square)");
    }

    [Test]
    public void A_document_without_pages_or_words_is_written()
    {
        var document = new Typesetter(TestFonts.Measurer).Typeset(
            new Document(
                new DocumentInformation("x", new DateOnly(2026, 1, 1)),
                new StyleSheet(Points.Zero, []),
                [new PageSequence(new PageFrame(PaperSize.A4, Insets.None), new Stack())]
            )
        );
        var bytes = PdfWriter.Write(document, new PdfOptions { DraftMark = "DRAFT" });
        using var pdf = PdfDocument.Open(bytes);
        pdf.NumberOfPages.ShouldBe(1);
        TagTree.Check(bytes).Faults.ShouldBeEmpty();
    }

    [TestCase("\u0001\u0007\u007f")]
    [TestCase("\ud800 lone \udc00")]
    [TestCase("🧵 and 漢字 and עברית")]
    [TestCase("\uffff\ufffe\u2028\u200b\u00ad")]
    [TestCase("<>&\"'()\\\r\n\t%")]
    [TestCase("e\u0301 ﬁ ½⅞ 1⁄2")]
    [TestCase("")]
    public void Any_words_can_be_written(string words)
    {
        var body = new Stack(
            new Heading(1, words),
            new Text(words),
            new Figure(new DrawingBuilder().Label(words, new(5, 5)).ToDrawing(10, 10), words + "x"),
            new Table([TableColumn.Natural()], [new TableRow(new TableCell(words))])
            {
                Summary = words,
            }
        );
        var information = new DocumentInformation("x" + words, new DateOnly(2026, 1, 1))
        {
            Author = words,
            Keywords = [words, words],
        };
        var document = new Typesetter(TestFonts.Measurer).Typeset(
            new Document(
                information,
                SampleDocument.Styles,
                [new PageSequence(new PageFrame(PaperSize.A4, Insets.All(72.Pt)), body)]
            )
        );
        var bytes = PdfWriter.Write(document);
        TagTree.Check(bytes).Faults.ShouldBeEmpty();
        using var pdf = PdfDocument.Open(bytes);
        pdf.TryGetXmpMetadata(out var metadata).ShouldBeTrue();
        metadata.GetXDocument().ShouldNotBeNull();
        XDocument.Parse(PagesAsSvg.Write(document.Pages[0]));
    }

    [Test]
    public void A_word_of_ten_thousand_letters_is_set_and_reported()
    {
        var document = new Typesetter(TestFonts.Measurer).Typeset(
            new Document(
                new DocumentInformation("x", new DateOnly(2026, 1, 1)),
                SampleDocument.Styles,
                [
                    new PageSequence(
                        new PageFrame(PaperSize.A4, Insets.All(72.Pt)),
                        new Text(new string('m', 10_000))
                    ),
                ]
            )
        );
        document.Problems.Single().Kind.ShouldBe(LayoutProblemKind.TooWide);
        PdfWriter.Write(document).Length.ShouldBeGreaterThan(1000);
    }

    static IEnumerable<byte[]> Streams(byte[] file)
    {
        var text = Encoding.Latin1.GetString(file);
        foreach (Match match in StreamPattern().Matches(text))
        {
            var length = int.Parse(LengthPattern().Match(match.Value).Groups[1].ValueSpan);
            var start = match.Index + match.Length;
            yield return file[start..(start + length)];
        }
    }

    static uint Adler32(byte[] data)
    {
        var (a, b) = (1u, 0u);
        foreach (var one in data)
        {
            a = (a + one) % 65521;
            b = (b + a) % 65521;
        }

        return (b << 16) | a;
    }

    [GeneratedRegex(
        @"<<(?:(?!>>stream|endobj)[\x00-\xff])*?/FlateDecode(?:(?!endobj)[\x00-\xff])*?>>\s*stream\n"
    )]
    private static partial Regex StreamPattern();

    [GeneratedRegex(@"/Length (\d+)")]
    private static partial Regex LengthPattern();

    [GeneratedRegex(@"D:\d{8}")]
    private static partial Regex DatePattern();

    [GeneratedRegex(@"[A-Z]{6}\+")]
    private static partial Regex SubsetPattern();

    [GeneratedRegex(@"/BBox\s*\[([^\]]*)\]/?")]
    private static partial Regex BoxPattern();
}
