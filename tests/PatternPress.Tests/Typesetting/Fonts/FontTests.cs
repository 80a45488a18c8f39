using PatternPress.Typesetting;
using PatternPress.Typesetting.Fonts;
using Shouldly;

namespace PatternPress.Tests.Typesetting.Fonts;

public class FontTests
{
    [Test]
    public void The_bundled_faces_have_what_patterns_need()
    {
        const string needed = "½¼¾×″′→√°–—“”‘’•·…±÷≤≥©é ";
        foreach (var face in TestFonts.Library.Faces)
        {
            needed.Where(letter => face.Font.GlyphOf(letter) == 0).ShouldBeEmpty(face.ToString());
            // Other fractions are set around a slash where a face has no character for them: 3/8, 5/16.
            TestFonts
                .Measurer.Shape(face, "3\u20448 5\u204416")
                .Glyphs.ShouldAllBe(glyph => glyph.Id != 0);
            face.Font.EmbeddingRights.ShouldBe(0, face.ToString());
            face.Font.ItalicAngle.ShouldBe(face.Italic ? face.Font.ItalicAngle : 0);
            (face.Font.Weight >= 600).ShouldBe(face.Bold);
        }
    }

    [Test]
    public void Pairs_are_kerned()
    {
        var face = TestFonts.Library.Find("Lato", false, false);
        var font = face.Font;
        var apart = font.AdvanceOf(font.GlyphOf('A')) + font.AdvanceOf(font.GlyphOf('V'));
        TestFonts.Measurer.Shape(face, "AV").Advance.ShouldBeLessThan(apart);
    }

    [Test]
    public void Ligatures_know_the_characters_they_stand_for()
    {
        var shape = TestFonts.Measurer.Shape(
            TestFonts.Library.Find("Vollkorn", false, false),
            "office"
        );
        shape.Glyphs.Length.ShouldBe(4);
        Enumerable.Range(0, 4).Select(shape.CharactersOf).ShouldBe(["o", "ffi", "c", "e"]);
    }

    [Test]
    public void Tabular_figures_are_equally_wide()
    {
        var face = TestFonts.Library.Find("Vollkorn", false, false);
        TestFonts
            .Measurer.Shape(face, "0123456789", Figures.Tabular)
            .Glyphs.Select(glyph => glyph.Advance)
            .Distinct()
            .Count()
            .ShouldBe(1);
        TestFonts
            .Measurer.Shape(face, "0123456789")
            .Glyphs.Select(glyph => glyph.Advance)
            .Distinct()
            .Count()
            .ShouldBeGreaterThan(1);
    }

    [Test]
    public void Measuring_is_the_same_on_many_threads()
    {
        var measurer = new TextMeasurer(TestFonts.Library);
        var face = TestFonts.Library.Find("Lato", true, false);
        var widths = Enumerable
            .Range(0, 64)
            .AsParallel()
            .Select(i => measurer.Width(face, 10.Pt, $"word {i % 8} of many"))
            .ToList();
        widths.Distinct().Count().ShouldBeLessThanOrEqualTo(8);
        widths.ShouldAllBe(width => width > Points.Zero);
    }

    [Test]
    public void The_nearest_face_stands_in_for_a_missing_one()
    {
        FontFace Face(string family, bool bold, bool italic) => new(family, bold, italic, () => []);
        var library = new FontLibrary(
            Face("One", false, false),
            Face("One", true, false),
            Face("Two", false, false)
        );
        library.Find("One", true, true).ToString().ShouldBe("One Bold");
        library.Find("Two", true, true).ToString().ShouldBe("Two");
        library.Find("Three", true, false).ToString().ShouldBe("One Bold");
    }

    [TestCase("OTTO")]
    [TestCase("ttcf")]
    [TestCase("")]
    [TestCase("\0\u0001\0\0\0\u0002abc")]
    public void What_is_no_TrueType_font_is_refused(string start)
    {
        var bytes = start
            .Select(letter => (byte)letter)
            .Concat(new byte[start.Length == 0 ? 0 : 4])
            .ToArray();
        Should.Throw<InvalidDataException>(() => TrueTypeFont.Read(bytes));
    }

    [Test]
    public void Every_cut_of_a_font_file_is_refused_or_read_without_another_fault()
    {
        var whole = TestFonts.Library.Faces[0].Font.Data;
        for (var length = 0; length < whole.Length; length += 9973)
        {
            try
            {
                TrueTypeFont.Read(whole[..length]);
            }
            catch (InvalidDataException) { }
        }
    }

    [Test]
    public void Outlines_reach_as_far_as_the_font_says()
    {
        var font = TestFonts.Library.Find("Lato", false, false).Font;
        foreach (var letter in "AgO½é→")
        {
            var glyph = font.GlyphOf(letter);
            var (left, bottom, right, top) = font.BoundsOf(glyph)!.Value;
            // Control points may lie outside the curve, never the other way round; a composite's box is exact too.
            var (l, b, r, t) = GlyphOutlines.Of(font, glyph).Bounds();
            l.ShouldBe(left, 40);
            r.ShouldBe(right, 40);
            b.ShouldBe(bottom, 40);
            t.ShouldBe(top, 40);
        }
    }
}
