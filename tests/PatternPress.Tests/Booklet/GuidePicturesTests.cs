using System.Text.RegularExpressions;
using PatternPress.Booklet;
using PatternPress.Booklet.Figures;
using PatternPress.Quilting.Resolving;
using PatternPress.Source.Diagnostics;
using PatternPress.Tests.Booklet.Sections;
using PatternPress.Tests.Typesetting;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Pages;

namespace PatternPress.Tests.Booklet;

/// <summary>
/// The pictures of the language guide are drawn by the program itself. A file in tests/cases/guide says in its first lines which
/// of them it gives: "# picture NAME: block COLORING" or "# picture NAME: quilt SIZE". Accepting writes them anew.
/// </summary>
public sealed partial class GuidePicturesTests
{
    private static readonly string Cases = Path.Combine(Repository.Root, "tests", "cases", "guide");

    private static readonly Points BlockSide = 64.Pt;
    private static readonly Points QuiltSide = 132.Pt;

    private static IEnumerable<string> Files() =>
        Directory
            .EnumerateFiles(Cases, "*.quilt.yaml")
            .Select(file => Path.GetFileName(file)!)
            .Order(StringComparer.Ordinal);

    private static IEnumerable<(string Name, string Kind, string Of)> Pictures(string file) =>
        File.ReadLines(Path.Combine(Cases, file))
            .TakeWhile(line => line.StartsWith('#'))
            .Select(line => Wanted().Match(line))
            .Where(match => match.Success)
            .Select(match => (match.Groups[1].Value, match.Groups[2].Value, match.Groups[3].Value));

    [TestCaseSource(nameof(Files))]
    public void Each_picture_is_what_the_program_draws(string file)
    {
        Manuscript manuscript = Manuscripts.Compile(
            file.Replace(".quilt.yaml", ""),
            File.ReadAllText(Path.Combine(Cases, file))
        );
        Pictures(file).ShouldNotBeEmpty();
        var palette = Palette.Of(manuscript.Pattern, manuscript.Quilts, FigureStyle.Colored);
        foreach ((string name, string kind, string of) in Pictures(file))
        {
            Picture picture =
                kind == "block"
                    ? BlockPicture.Draw(
                        manuscript
                            .Quilts.SelectMany(q => q.BlockCounts())
                            .First(b => b.Block.Key == of)
                            .Block,
                        manuscript.Pattern,
                        palette,
                        new FigureRoom(BlockSide, BlockSide),
                        BlockMarking.None
                    )
                    : QuiltPicture.Draw(
                        manuscript.Quilts.Single(q => q.Size.Key == of),
                        palette,
                        new FigureRoom(QuiltSide, QuiltSide)
                    );
            Golden.ShouldMatch(
                Path.Combine(Repository.Patterns, "pictures", $"{name}.svg"),
                PagesAsSvg.Write(
                    picture.Drawing,
                    TestFonts.Measurer,
                    SampleDocument.Styles,
                    picture.AltText
                )
            );
        }
    }

    [Test]
    public void The_guide_shows_every_picture_and_no_other()
    {
        string guide = File.ReadAllText(Path.Combine(Repository.Patterns, "README.md"));
        List<string> shown = [.. Shown().Matches(guide).Select(m => m.Groups[1].Value)];
        List<string> drawn = [.. Files().SelectMany(Pictures).Select(p => p.Name)];
        drawn.ShouldBeUnique();
        shown.Distinct().ShouldBe(drawn, ignoreOrder: true);
        Directory
            .EnumerateFiles(Path.Combine(Repository.Patterns, "pictures"), "*.svg")
            .Select(Path.GetFileNameWithoutExtension)
            .ShouldBe(drawn, ignoreOrder: true);
    }

    [GeneratedRegex("^# picture ([a-z0-9-]+): (block|quilt) (\\S+)$")]
    private static partial Regex Wanted();

    [GeneratedRegex("!\\[[^\\]]+\\]\\(pictures/([a-z0-9-]+)\\.svg\\)")]
    private static partial Regex Shown();
}
