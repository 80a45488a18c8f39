using CsCheck;
using PatternPress.Booklet.Figures.Drafting;
using PatternPress.Tests.Typesetting;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Fonts;

namespace PatternPress.Tests.Booklet.Figures.Drafting;

public sealed class LabelTests
{
    private static readonly string[] Words =
    [
        "A",
        "M",
        "W",
        "A1",
        "WW",
        "L12",
        "Qg",
        "12",
        "144",
        "12 strips",
        "panel 2",
        "quilt top",
        "Night Watch",
        "Saffron Trellis",
        "Harbor Wall",
        "wrong side up, 103 by 117 in",
        "× 8",
        "D2 D3 × 14",
    ];

    [Test]
    public void A_label_is_never_wider_in_print_than_thought(
        [Values("Lato", "Vollkorn")] string family,
        [Values] bool bold
    )
    {
        FontFace face = TestFonts.Library.Find(family, bold, false);
        foreach (string word in Words)
        {
            double printed = TestFonts.Measurer.Width(face, 100.Pt, word).Value;
            LabelSize.Width(word, 100).ShouldBeGreaterThanOrEqualTo(printed, word);
            // Nor is so much room kept that labels are lost for nothing.
            LabelSize.Width(word, 100).ShouldBeLessThan(printed * 1.75, word);
        }
        LabelSize.Capital.ShouldBeGreaterThanOrEqualTo(
            TextMeasurer.CapHeight(face, 100.Pt).Value / 100
        );
    }

    [Test]
    public void Every_letter_and_figure_is_measured_wide_enough(
        [Values("Lato", "Vollkorn")] string family,
        [Values] bool bold
    )
    {
        FontFace face = TestFonts.Library.Find(family, bold, false);
        for (char c = '!'; c <= '~'; c++)
        {
            if (char.IsLetterOrDigit(c))
            {
                double printed = TestFonts.Measurer.Width(face, 100.Pt, c.ToString()).Value;
                LabelSize
                    .Width(c.ToString(), 100)
                    .ShouldBeGreaterThanOrEqualTo(printed, c.ToString());
            }
        }
    }

    [Test]
    public void A_board_gives_the_first_free_place()
    {
        var board = new LabelBoard(1);
        board.Take(new Box(0, 0, 10, 10));
        Box[] candidates = [new(5, 5, 4, 4), new(10.5, 0, 4, 4), new(12, 0, 4, 4)];
        board.Place(candidates).ShouldBe(candidates[2]);
        board.Place(candidates).ShouldBeNull();
    }

    [Test]
    public void Nothing_placed_on_a_board_overlaps() =>
        Gen.Select(Gen.Double[0, 300], Gen.Double[0, 300], Gen.Double[1, 60], Gen.Double[1, 60])
            .Array[60]
            .Sample(
                boxes =>
                {
                    var board = new LabelBoard(1);
                    foreach ((double x, double y, double w, double h) in boxes)
                    {
                        _ = board.Place([new Box(x, y, w, h)]);
                    }
                    for (int i = 0; i < board.Taken.Count; i++)
                    {
                        for (int j = 0; j < i; j++)
                        {
                            board.Taken[i].Overlaps(board.Taken[j]).ShouldBeFalse();
                        }
                    }
                },
                iter: 100
            );

    [Test]
    public void A_line_keeps_labels_off_all_its_length()
    {
        var board = new LabelBoard(0);
        board.TakeLine(new(0, 0), new(100, 100), 2);
        board.IsFree(new Box(48, 48, 4, 4)).ShouldBeFalse();
        board.IsFree(new Box(60, 20, 10, 10)).ShouldBeTrue();
    }
}
