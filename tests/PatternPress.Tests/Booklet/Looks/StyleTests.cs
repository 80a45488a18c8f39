using PatternPress.Booklet;
using PatternPress.Booklet.Looks;
using PatternPress.Booklet.Sections;
using PatternPress.Booklet.Words;
using PatternPress.Tests.Booklet.Sections;
using PatternPress.Tests.Typesetting;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Pages;

namespace PatternPress.Tests.Booklet.Looks;

/// <summary>The styles that come with the program: files only, of which a house names one.</summary>
public sealed class StyleTests
{
    private static IEnumerable<string> Styles =>
        BookletTemplates
            .Files.Keys.Where(file => file.StartsWith("looks/", StringComparison.Ordinal))
            .Select(file => Path.GetFileNameWithoutExtension(file))
            .Order(StringComparer.Ordinal);

    private static Templates With(string looks) =>
        PatternPress.Booklet.Words.Templates.Read(
            BookletTemplates.Files.SetItem("looks.yaml", looks),
            "en"
        );

    [Test]
    public void There_are_two_styles_and_they_share_neither_face_nor_form()
    {
        Styles.ShouldBe(["almanac", "open"]);
        PageLooks open = With("style: open").Looks,
            almanac = With("style: almanac").Looks;
        almanac.Styles["body"].Style.Family.ShouldNotBe(open.Styles["body"].Style.Family);
        almanac.Forms.TableRules.ShouldNotBe(open.Forms.TableRules);
        almanac.Forms.Notes.ShouldNotBe(open.Forms.Notes);
        almanac.Forms.Cover.ShouldNotBe(open.Forms.Cover);
        // Whatever a section asks for is there in both.
        almanac.Styles.Keys.ShouldBe(open.Styles.Keys);
        almanac.Variants.Keys.ShouldBe(open.Variants.Keys);
    }

    [TestCaseSource(nameof(Styles))]
    public void A_pattern_is_built_in_every_style(string style)
    {
        Templates templates = With($"style: {style}");
        templates.Diagnostics.ShouldBeEmpty();
        var composer = new DocumentComposer(Manuscripts.Of("harbor-lights"), templates);
        ComposedDocument composed = composer.Compose(composer.Plans[0], PaperSize.A4);
        composed.Diagnostics.ShouldBeEmpty();
        TypesetDocument set = new Typesetter(TestFonts.Measurer).Typeset(composed.Document);
        set.Problems.Select(p => $"page {p.Page}: {p.Message}").ShouldBeEmpty();
        PageInspection
            .Inspect(set)
            .Select(finding => $"page {finding.Page}: {finding.Message}")
            .ShouldBeEmpty();
        string family = templates.Looks.Styles["body"].Style.Family;
        set.Pages.SelectMany(page => page.Items)
            .OfType<PageItem.Text>()
            .Count(text => text.Face.Family == family)
            .ShouldBeGreaterThan(1000);
        bool ground =
            set.Pages[0].Items[0] is PageItem.ArtifactBegin { Kind: ArtifactKind.Background };
        ground.ShouldBe(templates.Looks.Forms.Cover != Ground.None);
    }

    // WCAG 2.2, success criterion 1.4.3: 4.5 : 1 for text, whatever stands behind it.
    [TestCaseSource(nameof(Styles))]
    public void Text_reads_on_every_ground_of_every_style(string style)
    {
        PageLooks looks = With($"style: {style}").Looks;
        foreach (string id in Manuscripts.Own)
        {
            foreach (PageLooks variant in looks.Variants.Values.Append(looks))
            {
                Check(variant.ThemeFor(Manuscripts.Of(id).Pattern.Fabrics));
            }
            Check(looks.BlackTheme());
        }

        static void Check(Theme theme)
        {
            foreach (Ink ground in new[] { Ink.White, theme.Tint, theme.AccentTint })
            {
                foreach (Ink ink in new[] { theme.Text, theme.Muted, theme.Accent })
                {
                    ink.ContrastWith(ground).ShouldBeGreaterThanOrEqualTo(4.5);
                }
            }
            foreach (string name in theme.Styles.Names)
            {
                theme
                    .Styles.Find(name)!
                    .Ink.ContrastWith(Ink.White)
                    .ShouldBeGreaterThanOrEqualTo(4.5, name);
            }
        }
    }

    // Published figures: black on white 21, #767676 4.54 (W3C's limit for AA), #777777 4.478; the others by the formula.
    [TestCase("#000000", 21.0)]
    [TestCase("#767676", 4.54222)]
    [TestCase("#777777", 4.47809)]
    [TestCase("#595959", 7.00473)]
    [TestCase("#ff0000", 3.99848)]
    [TestCase("#0000ff", 8.59247)]
    public void Contrast_is_that_of_the_guidelines(string hex, double ratio) =>
        Ink.FromHex(hex).ContrastWith(Ink.White).ShouldBe(ratio, 0.00001);

    [Test]
    public void What_the_house_changes_counts_more_than_its_style()
    {
        PageLooks looks = With(
            "style: almanac\ncolors:\n  accent: \"#124578\"\nstyles:\n  cover-title: {size: 40}\nvariants:\n  large-print:\n    body-size: 20\n"
        ).Looks;
        looks.Accent.ShouldBe(Ink.FromHex("#124578"));
        looks.Styles["cover-title"].Style.Size.ShouldBe(40.Pt);
        looks.Styles["cover-title"].Style.Family.ShouldBe("Yrsa");
        looks.Variant("large-print").Styles["body"].Style.Size.ShouldBe(20.Pt);
        looks.Variant("large-print").Margins.Left.ShouldBe(0.75.Inch);
        looks.Variant("").ShouldBe(looks);
    }

    [Test]
    public void A_style_that_there_is_not_is_reported() =>
        With("style: baroque").Diagnostics.Select(d => d.Code).ShouldContain("PP0453");

    [Test]
    public void A_typeface_that_there_is_not_is_reported()
    {
        var composer = new DocumentComposer(
            Manuscripts.Of("harbor-lights"),
            With("style: open\nfamilies:\n  display: Copperplate\n")
        );
        new Typesetter(TestFonts.Measurer)
            .Typeset(
                composer
                    .Compose(composer.Plans.Single(p => p.Key == "cover"), PaperSize.A4)
                    .Document
            )
            .Problems.ShouldContain(p =>
                p.Kind == LayoutProblemKind.UnknownStyle && p.Message.Contains("'Copperplate'")
            );
    }

    // Smaller type keeps its share of running text, larger grows by less, none falls below 7 pt.
    [TestCase("caption", 8, 14.4)]
    [TestCase("body", 10, 18)]
    public void A_variant_grows_all_type_with_running_text(string name, double usual, double large)
    {
        PageLooks looks = With("style: open").Looks;
        looks.Styles[name].Style.Size.ShouldBe(usual.Pt);
        looks.Variant("large-print").Styles[name].Style.Size.ShouldBe(large.Pt);
        looks
            .Variant("half-page")
            .Styles.Values.Min(s => s.Style.Size)
            .ShouldBeGreaterThanOrEqualTo(7.Pt);
        looks
            .Variant("large-print")
            .Styles["heading2"]
            .Style.Size.ShouldBeInRange(looks.Styles["heading2"].Style.Size, 30.Pt);
    }
}
