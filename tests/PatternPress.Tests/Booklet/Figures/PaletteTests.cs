using PatternPress.Booklet.Figures;
using PatternPress.Quilting.Colors;
using PatternPress.Quilting.Resolving;
using PatternPress.Typesetting;

namespace PatternPress.Tests.Booklet.Figures;

public sealed class PaletteTests
{
    private static readonly Quilt Quilt = SampleQuilts.Scraps(9, 8);

    [Test]
    public void Letters_read_on_every_fabric()
    {
        foreach (FabricLook look in Palette.Of(Quilt.Pattern, [Quilt], FigureStyle.Colored).Looks)
        {
            // WCAG 2.2, success criterion 1.4.3: 4.5 to 1.
            look.LetterInk.ContrastWith(look.Color)
                .ShouldBeGreaterThanOrEqualTo(Contrast.Text, look.Key);
        }
    }

    [Test]
    public void Hatches_show_on_every_fabric()
    {
        foreach (FabricLook look in Palette.Of(Quilt.Pattern, [Quilt], FigureStyle.Colored).Looks)
        {
            // WCAG 2.2, success criterion 1.4.11: 3 to 1 for what is needed to understand a graphic.
            look.Hatch.Ink.ContrastWith(look.Color).ShouldBeGreaterThanOrEqualTo(3, look.Key);
        }
    }

    [Test]
    public void Dark_fabrics_have_light_letters()
    {
        Quilt stars = SampleQuilts.Stars(2, 2);
        Palette palette = Palette.Of(stars.Pattern, [stars], FigureStyle.Colored);
        palette["A"].LetterInk.ShouldBe(Ink.White);
        palette["C"].LetterInk.ShouldBe(Ink.Black);
    }

    [Test]
    public void Other_pens_keep_the_hatches()
    {
        Palette colored = Palette.Of(Quilt.Pattern, [Quilt], FigureStyle.Colored);
        Palette black = colored.With(FigureStyle.BlackOnly, Quilt.Pattern);
        black.Looks.Select(l => l.Hatch.Hatch).ShouldBe(colored.Looks.Select(l => l.Hatch.Hatch));
        black.Looks.ShouldAllBe(l =>
            l.Color == Ink.White && l.Hatch.Ink == Ink.Black && l.Print == null
        );
    }

    [Test]
    public void A_key_without_fabric_is_drawn_white() =>
        Palette.Of(Quilt.Pattern, [Quilt], FigureStyle.Colored)["?"].Color.ShouldBe(Ink.White);

    [TestCase(null, false)]
    [TestCase("solid", false)]
    [TestCase("dot", true)]
    [TestCase("stripe", true)]
    [TestCase("check", true)]
    [TestCase("ring", true)]
    [TestCase("blender", true)]
    [TestCase("seahorses", true)]
    public void Prints_have_a_texture_and_solids_none(string? word, bool textured) =>
        (PrintTexture.Of(word) is not null).ShouldBe(textured);

    [Test]
    public void A_texture_is_left_out_where_it_would_be_mush()
    {
        PrintTexture dots = PrintTexture.Of("dot")!;
        dots.On(new Ink(200, 60, 60), 1).ShouldBeEmpty();
        dots.On(new Ink(200, 60, 60), 6).ShouldNotBeEmpty();
    }

    [Test]
    public void A_texture_stays_tone_on_tone()
    {
        foreach (string word in new[] { "dot", "stripe", "check", "ring", "blender" })
        {
            foreach (
                Ink color in new[]
                {
                    new Ink(20, 30, 60),
                    new Ink(240, 230, 210),
                    new Ink(160, 70, 60),
                }
            )
            {
                foreach (var fill in PrintTexture.Of(word)!.On(color, 6))
                {
                    // Enough to be seen, too little to be taken for another fabric.
                    fill.Ink.ContrastWith(color).ShouldBeInRange(1, 3.2, $"{word} on {color}");
                }
            }
        }
    }
}
