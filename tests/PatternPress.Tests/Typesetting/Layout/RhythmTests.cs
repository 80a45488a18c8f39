using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Pages;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Tests.Typesetting.Layout;

public sealed class RhythmTests
{
    private static readonly TextStyle Running = new()
    {
        Size = 10.Pt,
        Leading = 14.Pt,
        SpaceAfter = 5.Pt,
    };

    private static StyleSheet Styles(Points rhythm) =>
        new(
            rhythm,
            new Dictionary<string, TextStyle>
            {
                ["body"] = Running,
                ["heading1"] = Running with
                {
                    Size = 17.Pt,
                    Leading = 21.Pt,
                    SpaceBefore = 18.Pt,
                    KeepWithNext = true,
                },
                ["small"] = Running with { Size = 8.Pt, Leading = 11.Pt },
            }
        );

    private static List<(int Page, string Words, Points Baseline)> Lines(
        Points rhythm,
        params double[] densities
    )
    {
        Drawing square = new DrawingBuilder()
            .Area(VectorPath.Rectangle(0, 0, 30, 33.3), Ink.Black)
            .ToDrawing(30, 33.3);
        var blocks = new List<Block>();
        for (int i = 0; i < 12; i++)
        {
            blocks.Add(new Text("Running text that is long enough to take two lines or three."));
            blocks.Add(new Heading(1, "Heading"));
            blocks.Add(new Text("After heading"));
            blocks.Add(new Figure(square, "A square."));
            blocks.Add(new Text("Beside a caption", "small"));
            blocks.Add(new Box(new Text("Boxed")));
        }
        var frame = new PageFrame(
            new PaperSize(240.Pt, 300.Pt),
            new Insets(20.Pt, 31.Pt, 20.Pt, 20.Pt)
        );
        var document = new Document(
            new DocumentInformation("Rhythm", new DateOnly(2026, 11, 1)),
            Styles(rhythm),
            [new PageSequence(frame, new Stack(blocks)) { Densities = [.. densities] }]
        );
        return
        [
            .. new Typesetter(TestFonts.Measurer)
                .Typeset(document)
                .Pages.SelectMany(page =>
                    page.Items.OfType<PageItem.Text>()
                        .Where(text =>
                            text.Size == 10.Pt
                            && !text.Characters.StartsWith("Boxed", StringComparison.Ordinal)
                        )
                        .Select(text => (page.Number, text.Characters, text.Baseline))
                ),
        ];
    }

    [TestCase(7)]
    [TestCase(14)]
    public void Running_text_of_all_pages_stands_on_one_grid(double rhythm)
    {
        var lines = Lines(rhythm.Pt, 1);
        lines.Select(line => line.Page).Distinct().Count().ShouldBeGreaterThan(3);
        Points first = lines[0].Baseline;
        long step = (long)(rhythm * 1000);
        lines.ShouldAllBe(line => (line.Baseline - first).Thousandths % step == 0);
    }

    [Test]
    public void Without_a_rhythm_it_does_not()
    {
        var lines = Lines(Points.Zero, 1);
        lines.ShouldContain(line => (line.Baseline - lines[0].Baseline).Thousandths % 7_000 != 0);
    }

    [Test]
    public void A_chapter_set_closer_gives_it_up()
    {
        var lines = Lines(14.Pt, 0.5);
        lines.ShouldContain(line => (line.Baseline - lines[0].Baseline).Thousandths % 14_000 != 0);
    }
}
