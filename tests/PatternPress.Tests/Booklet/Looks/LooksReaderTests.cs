using PatternPress.Booklet.Looks;
using PatternPress.Quilting.Model;
using PatternPress.Source;
using PatternPress.Source.Syntax;
using PatternPress.Typesetting;

namespace PatternPress.Tests.Booklet.Looks;

public sealed class LooksReaderTests
{
    [Test]
    public void Our_own_looks_are_read_without_a_finding() =>
        BookletTemplates.Templates.Diagnostics.ShouldBeEmpty();

    [Test]
    public void A_style_takes_from_the_body_what_it_leaves_out()
    {
        PageLooks looks = Read(
            "styles:\n  body: {size: 11, leading: 15, after: 6}\n  table: {size: 9}\n",
            out int faults
        );
        faults.ShouldBe(0);
        looks.Styles["table"].Style.Leading.ShouldBe(15.Pt);
        looks.Styles["table"].Style.Size.ShouldBe(9.Pt);
    }

    [TestCase("margins: {left: 9 in}")]
    [TestCase("margins: {left: wide}")]
    [TestCase("colors: {text: red}")]
    [TestCase("styles:\n  body: {size: huge}")]
    [TestCase("styles:\n  body: {size: 1e9}")]
    [TestCase("styles:\n  body: {align: middle}")]
    [TestCase("styles:\n  body: {colour: text}")]
    [TestCase("pages: 3")]
    public void What_cannot_be_used_is_reported_and_keeps_its_default(string yaml)
    {
        PageLooks looks = Read(yaml, out int faults);
        faults.ShouldBe(1);
        looks.Margins.Left.ShouldBe(0.9.Inch);
        looks.Styles["body"].Style.Size.ShouldBe(10.Pt);
    }

    [TestCase("#15233b", "#f2a71b", "#d1495b", "#f6ead2")]
    [TestCase("#fbe3d6", "#f3d36b", "#fdf1c7")]
    [TestCase("#00ff00")]
    [TestCase("#0000ff")]
    [TestCase("#777777", "#eeeeee")]
    public void The_accent_reads_on_white(params string[] colors)
    {
        // WCAG 2.2, success criterion 1.4.3: at least 4.5 : 1 for text.
        Theme theme = BookletTemplates.Templates.Looks.ThemeFor(colors.Select(Fabric));
        theme.Accent.ContrastWith(Ink.White).ShouldBeGreaterThanOrEqualTo(4.5);
        theme.Text.ContrastWith(Ink.White).ShouldBeGreaterThanOrEqualTo(7);
        theme.Muted.ContrastWith(theme.Tint).ShouldBeGreaterThanOrEqualTo(4.5);
        theme.Accent.ContrastWith(theme.Tint).ShouldBeGreaterThanOrEqualTo(3);
    }

    [Test]
    public void Grey_fabrics_give_no_accent() =>
        AccentColor.From([Fabric("#777777"), Fabric("#111111")]).ShouldBeNull();

    private static Fabric Fabric(string color)
    {
        Color.TryParse(color, out Color read).ShouldBeTrue();
        return new Fabric("A", "A", read, null, null, null, false, null, null, 0, Span.None);
    }

    private static PageLooks Read(string yaml, out int faults)
    {
        PageLooks looks = LooksReader.Read(SyntaxTree.Read("looks.yaml", yaml), out var found);
        faults = found.Length;
        return looks;
    }
}
