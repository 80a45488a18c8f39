using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Pages;
using PatternPress.Typesetting.Styles;
using Shouldly;

namespace PatternPress.Tests.Typesetting.Pages;

public class PageInspectionTests
{
    static IEnumerable<PageFindingKind> Findings(Block body) =>
        PageInspection
            .Inspect(
                new Typesetter(TestFonts.Measurer).Typeset(
                    new Document(
                        new DocumentInformation("x", new DateOnly(2026, 1, 1)),
                        new StyleSheet(Points.Zero, []),
                        [
                            new PageSequence(
                                new PageFrame(new PaperSize(200.Pt, 200.Pt), Insets.All(10.Pt)),
                                body
                            ),
                        ]
                    )
                )
            )
            .Select(finding => finding.Kind);

    static Figure Labels(params (string Words, double X, double Y, double Degrees)[] labels)
    {
        var builder = new DrawingBuilder();
        foreach (var (words, x, y, degrees) in labels)
        {
            builder.Label(words, new(x, y), new LabelStyle { Degrees = degrees });
        }

        return new Figure(builder.ToDrawing(100, 100), "labels");
    }

    [Test]
    public void Clean_pages_have_no_findings() =>
        Findings(
                new Stack(
                    new Text("cut 12 5/16 in and 3 1/2 in"),
                    Labels(("one", 20, 20, 0), ("two", 20, 30, 0), ("1 3/8", 70, 70, 90))
                )
            )
            .ShouldBeEmpty();

    [Test]
    public void Labels_on_one_another_are_found() =>
        Findings(Labels(("one", 50, 50, 0), ("two", 55, 52, 0)))
            .ShouldBe([PageFindingKind.WordsOverlap]);

    [Test]
    public void A_turned_label_takes_its_turned_place()
    {
        Findings(Labels(("a long label", 50, 50, 0), ("b", 50, 62, 0))).ShouldBeEmpty();
        Findings(Labels(("a long label", 50, 50, 90), ("b", 50, 62, 0)))
            .ShouldBe([PageFindingKind.WordsOverlap]);
    }

    [Test]
    public void Words_that_leave_their_figure_are_found() =>
        Findings(Labels(("one and two", 16, 50, 0))).ShouldContain(PageFindingKind.OutsidePlace);

    [Test]
    public void Words_that_leave_the_page_are_found() =>
        Findings(new Text("Wonderfulnessofthewonderfulnessofallthewonders"))
            .ShouldBe([PageFindingKind.OutsidePage]);

    [Test]
    public void Words_that_leave_their_cell_are_found() =>
        Findings(
                new Table(
                    [TableColumn.Fixed(30.Pt), TableColumn.Share()],
                    [
                        new TableRow(
                            new TableCell(new Text("Wonderful")),
                            new TableCell(new Text("x"))
                        ),
                    ]
                )
            )
            .ShouldContain(PageFindingKind.OutsidePlace);

    [Test]
    public void Capitals_without_descenders_may_stand_close() =>
        Findings(Labels(("ONE", 50, 50, 0), ("TWO", 50, 57, 0))).ShouldBeEmpty();
}
