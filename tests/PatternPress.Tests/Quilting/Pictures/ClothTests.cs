using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Pictures;
using PatternPress.Source.Diagnostics;
using PatternPress.Tests.Booklet.Sections;
using PatternPress.Tests.Quilting.Rules;

namespace PatternPress.Tests.Quilting.Pictures;

/// <summary>Fabrics shown by a picture.</summary>
public sealed class ClothTests
{
    private static string With(string fabric) =>
        File.ReadAllText(
                Path.Combine(Repository.Root, "tests", "cases", "rules", "base.quilt.yaml")
            )
            .Replace("A: {name: Ink, color: \"#15233b\"}", fabric, StringComparison.Ordinal);

    private static Fabric Ink(string fabric) =>
        Manuscripts.Compile("cloth", With(fabric)).Pattern.Fabrics[0];

    private static IReadOnlyList<Diagnostic> Found(string fabric) =>
        Proofreading.Of("cloth.quilt.yaml", With(fabric), out _);

    [Test]
    public void The_width_of_the_cloth_gives_its_height()
    {
        Cloth cloth = Ink("A: {name: Ink, image: {file: swatches/amber.jpg, width: 10 cm}}").Cloth!;
        cloth.Width.ShouldBe(Length.FromCentimetres(new Exact(10)));
        cloth.Height.ShouldBe(Length.FromCentimetres(new Exact(5)));
        cloth.File.ShouldBe("swatches/amber.jpg");
    }

    [Test]
    public void A_file_alone_is_four_inches_wide() =>
        Ink("A: {name: Ink, image: swatches/ink.png}")
            .Cloth!.Width.ShouldBe(Length.FromInches(4, 0, 1));

    [Test]
    public void The_color_is_the_mean_of_the_light_unless_one_is_given()
    {
        Ink("A: {name: Ink, color: \"#15233b\", image: swatches/ink.png}")
            .Color.ToString()
            .ShouldBe("#15233b");
        // Half black, half white: half the light, which sRGB (IEC 61966-2-1) writes as 188.
        var halves = new FabricPicture(2, 1, [0, 0, 0, 255, 255, 255], "image/png", []);
        MeanColor.Of(halves).ShouldBe(new Color(188, 188, 188));
        Color mean = Ink("A: {name: Ink, image: swatches/ink.png}").Color;
        mean.Red.ShouldBeGreaterThan((byte)30);
        mean.Red.ShouldBeLessThan((byte)240);
    }

    [Test]
    public void A_fabric_needs_a_color_or_an_image()
    {
        Diagnostic found = Found("A: {name: Ink}").ShouldHaveSingleItem();
        found.Code.ShouldBe("PP0131");
        found.Title.ShouldBe("fabric A has no `color`");
    }

    [TestCase("../ink.png", "it leads out of the pattern's folder")]
    [TestCase("swatches/../../ink.png", "it leads out of the pattern's folder")]
    [TestCase("/etc/ink.png", "it does not begin at the pattern's folder")]
    [TestCase("~/ink.png", "it does not begin at the pattern's folder")]
    [TestCase("C:/ink.png", "it names a drive")]
    [TestCase("https://example.com/ink.png", "it is an address on the web")]
    [TestCase(@"swatches\ink.png", "it is written with backslashes")]
    [TestCase("swatches//ink.png", "a name is missing between two slashes or at the end")]
    public void A_path_never_leaves_the_folder(string path, string problem)
    {
        Diagnostic found = Found($"A: {{name: Ink, color: \"#15233b\", image: '{path}'}}")
            .ShouldHaveSingleItem();
        found.Code.ShouldBe("PP0425");
        found.Title.ShouldBe($"\"{path}\" cannot be the path of an image: {problem}");
        (found.Primary.Span.StartLine, found.Primary.Span.File).ShouldBe((12, "cloth.quilt.yaml"));
    }

    [Test]
    public void A_mistyped_name_is_answered_with_the_nearest()
    {
        Diagnostic found = Found("A: {name: Ink, image: swatches/inc.png}").ShouldHaveSingleItem();
        (found.Code, found.Hint).ShouldBe(("PP0424", "did you mean `swatches/ink.png`?"));
    }

    [TestCase("swatches/cut-off.png", "it ends before its last pixel")]
    [TestCase(
        "swatches/poster.png",
        "it has 30,000 × 30,000 pixels; 40 million in all and 20,000 a side are the most"
    )]
    public void What_is_wrong_with_an_image_is_said(string path, string what)
    {
        Diagnostic found = Found($"A: {{name: Ink, image: {path}}}").ShouldHaveSingleItem();
        found.Code.ShouldBe("PP0426");
        found.Title.ShouldBe($"the image \"{path}\" cannot be used: {what}");
    }

    [TestCase("0")]
    [TestCase("-4 in")]
    [TestCase("wide")]
    public void A_width_that_is_none_is_reported_once(string width) =>
        Found($"A: {{name: Ink, image: {{file: swatches/ink.png, width: {width}}}}}")
            .Select(d => d.Code)
            .ShouldHaveSingleItem()
            .ShouldBeOneOf("PP0215", "PP0216");
}
