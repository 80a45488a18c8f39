using PatternPress.Booklet.Figures;
using PatternPress.Quilting.Finishing;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Techniques;
using PatternPress.Tests.Quilting.Techniques;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Tests.Booklet.Figures;

/// <summary>Figures that show how something is done: steps of a unit, strips, borders, layers, binding.</summary>
public sealed class MakingFigureTests
{
    private static readonly Quilt Quilt = SampleQuilts.Stars(3, 4);
    private static readonly Palette Colored = SampleFigures.PaletteOf(Quilt, FigureStyle.Colored);

    private static List<string> WordsOf(Picture picture) =>
        [.. picture.Drawing.Marks.OfType<Mark.Label>().Select(FigurePage.Words)];

    private static IEnumerable<TestCaseData> Units() =>
        SampleFigures.Units.Select(u =>
            new TestCaseData(u.Technique, u.Unit, u.Width, u.Height).SetArgDisplayNames(u.Technique)
        );

    [TestCaseSource(nameof(Units))]
    public void All_steps_of_a_unit_fit_at_one_scale(
        string technique,
        string unit,
        string width,
        string height
    )
    {
        Recipe recipe = Recipes.Of(technique, Written.Form(unit, width, height));
        var measures = SampleFigures.MeasuresOf(recipe);
        var room = FigureRoom.Of(280, 110);
        Points scale = UnitSketch.ScaleFor(
            recipe.Steps.Select(s => s.Sketch),
            measures,
            Colored,
            room
        );
        scale.Value.ShouldBeGreaterThan(3);
        foreach (Step step in recipe.Steps)
        {
            Picture picture = UnitSketch.Draw(
                step.Sketch,
                ["B", "A", "C", "D"],
                measures,
                Colored,
                room,
                scale
            );
            picture.Drawing.NaturalWidth.ShouldBeLessThanOrEqualTo(room.Width + 0.02.Pt);
            picture.Drawing.NaturalHeight.ShouldBeLessThanOrEqualTo(room.Height + 0.02.Pt);
            // Every shape is drawn, at the scale.
            var drawn = picture
                .Drawing.Marks.OfType<Mark.Outline>()
                .Where(o => o.Stroke?.Width == FigureStyle.Colored.Edge && o.Fill is not null)
                .Select(o => o.Path.Bounds())
                .ToList();
            var shapes = step.Sketch.Frames.SelectMany(f => f.Shapes).ToList();
            drawn.Count.ShouldBe(shapes.Count);
            for (int i = 0; i < shapes.Count; i++)
            {
                (drawn[i].Right - drawn[i].Left).ShouldBe(
                    shapes[i].Shape.Bounds.Width.Inches.ToDouble() * scale.Value,
                    0.03
                );
            }
        }
    }

    [TestCaseSource(nameof(Units))]
    public void Every_measure_asked_for_is_printed(
        string technique,
        string unit,
        string width,
        string height
    )
    {
        Recipe recipe = Recipes.Of(technique, Written.Form(unit, width, height));
        foreach (Step step in recipe.Steps)
        {
            Picture picture = UnitSketch.Draw(
                step.Sketch,
                ["B", "A", "C", "D"],
                SampleFigures.MeasuresOf(recipe),
                Colored,
                FigureRoom.Of(280, 110)
            );
            List<string> words = WordsOf(picture);
            foreach (SketchLine line in step.Sketch.Frames.SelectMany(f => f.Lines))
            {
                if (line.Kind == SketchLineKind.Dimension)
                {
                    words.ShouldContain(SampleFigures.MeasuresOf(recipe)(line.Measure!));
                }
            }
            foreach (SketchFrame frame in step.Sketch.Frames)
            {
                if (frame.Count > 1)
                {
                    words.ShouldContain($"× {frame.Count}");
                }
            }
        }
    }

    [Test]
    public void Marked_sewn_and_cut_lines_have_dashes_of_their_own()
    {
        Recipe recipe = Recipes.Of(
            "half-square-two-at-a-time",
            Written.Form("half-square upper-left, ray on sky", "3")
        );
        Picture sew = Draw("sew"),
            cut = Draw("cut");
        Dashes(sew).Count.ShouldBe(2);
        Dashes(cut).Count.ShouldBe(2);
        Dashes(sew).Intersect(Dashes(cut)).Count().ShouldBe(1);

        Picture Draw(string step) =>
            UnitSketch.Draw(
                recipe.Steps.First(s => s.Name == step).Sketch,
                ["B", "A"],
                _ => null,
                Colored,
                FigureRoom.Of(200, 100)
            );

        static HashSet<string> Dashes(Picture picture) =>
            [
                .. picture
                    .Drawing.Marks.OfType<Mark.Outline>()
                    .Where(o => o.Stroke is { Dashes.IsDefaultOrEmpty: false })
                    .Select(o => string.Join(" ", o.Stroke!.Dashes)),
            ];
    }

    [Test]
    public void The_words_of_a_step_name_pieces_sides_and_lines()
    {
        Recipe recipe = Recipes.Of(
            "half-square-two-at-a-time",
            Written.Form("half-square upper-left, ray on sky", "3")
        );
        UnitSketch
            .Draw(
                recipe.Steps[1].Sketch,
                ["B", "A"],
                SampleFigures.MeasuresOf(recipe),
                Colored,
                FigureRoom.Of(200, 100)
            )
            .AltText.ShouldBe(
                "A square of Amber, a square of Ink, wrong side up, one marked line and two seams to sew."
            );
    }

    [Test]
    public void Borders_are_numbered_in_order_and_carry_no_lengths_of_one_size()
    {
        Picture picture = BorderSequence.Draw(Quilt, Colored, FigureRoom.Of(330, 380));
        picture.AltText.ShouldBe(
            "The borders of the throw quilt pulled away from it and numbered in the order they are sewn on. "
                + "1: border 1, left and right. "
                + "2: border 1, top and bottom. "
                + "3: border 2, left and right. "
                + "4: border 2, top and bottom with a corner square at each end."
        );
        List<string> words = WordsOf(picture);
        foreach (string number in new[] { "1", "2", "3", "4" })
        {
            words.Count(w => w == number).ShouldBe(2);
        }
        words.ShouldAllBe(w => w.Length == 1);
    }

    [Test]
    public void Top_and_bottom_come_first_where_the_border_says_so() =>
        BorderSequence
            .Draw(
                SampleQuilts.Scraps(9, 8),
                SampleFigures.PaletteOf(SampleQuilts.Scraps(9, 8), FigureStyle.Colored),
                FigureRoom.Of(300, 300)
            )
            .AltText.ShouldContain("1: border 1, top and bottom. 2: border 1, left and right.");

    [Test]
    public void Strips_are_to_scale_and_every_piece_is_named()
    {
        Picture picture = CuttingStrips.Draw(
            Colored["D"],
            SampleFigures.Strips,
            Quilt.House,
            Colored,
            FigureRoom.Of(504, 400)
        );
        List<string> words = WordsOf(picture);
        words.Count(w => w == "D2 D3").ShouldBe(7);
        words.Count(w => w == "D4").ShouldBe(3);
        words.ShouldContain("12 strips");
        words.ShouldContain("1 strip");
        words.ShouldContain("3 7/8 in");
        words.ShouldContain("40 in");
        picture.AltText.ShouldContain(
            "12 strips 3 7/8 in wide: 7 × D2 or D3, 3 7/8 in long and 3 × D4, 2 in long; 6 7/8 in is left over."
        );
        // Whole strips have the shape of 40 in by 8 1/2 in.
        var whole = picture
            .Drawing.Marks.OfType<Mark.Outline>()
            .First(o => o.Stroke is not null && o.Path.Points.Length == 4)
            .Path.Bounds();
        ((whole.Right - whole.Left) / (whole.Bottom - whole.Top)).ShouldBe(40 / 8.5, 0.01);
    }

    [Test]
    public void Many_strips_grow_beyond_their_room_rather_than_too_short_to_be_read()
    {
        var few = SampleFigures.Strips;
        Picture picture = CuttingStrips.Draw(
            Colored["D"],
            few with
            {
                Strips = [.. few.Strips, .. few.Strips, .. few.Strips],
            },
            Quilt.House,
            Colored,
            FigureRoom.Of(240, 160)
        );
        var whole = picture
            .Drawing.Marks.OfType<Mark.Outline>()
            .First(o => o.Stroke is not null && o.Path.Points.Length == 4)
            .Path.Bounds();
        (whole.Right - whole.Left).ShouldBeGreaterThan(100);
        picture.Drawing.Height.ShouldBeLessThan(400);
    }

    [TestCase(2, BackingSeams.Upright, "It is sewn from 2 panels whose seam runs down the quilt.")]
    [TestCase(3, BackingSeams.Level, "It is sewn from 3 panels whose seams run across the quilt.")]
    [TestCase(1, BackingSeams.NoneDown, "It is one panel.")]
    public void A_backing_shows_its_panels(long panels, BackingSeams seams, string told)
    {
        Picture picture = BackingLayout.Draw(
            Quilt,
            SampleFigures.Backing(panels, seams),
            Colored,
            FigureRoom.Of(260, 260)
        );
        picture.AltText.ShouldContain(told);
        List<string> words = WordsOf(picture);
        words.Count(w => w.StartsWith("panel", StringComparison.Ordinal)).ShouldBe((int)panels);
        words.ShouldContain("quilt top");
        // The sample's single panel is narrower than what it is trimmed to: nothing reaches beyond there.
        if (panels > 1)
        {
            words.ShouldContain("4 in");
        }
    }

    [Test]
    public void Three_layers_are_named_from_the_bottom_up()
    {
        Picture picture = LayeringPlan.Draw(
            Quilt,
            SampleFigures.Backing(2, BackingSeams.Upright),
            SampleFigures.Batting,
            Colored,
            FigureRoom.Of(340, 240)
        );
        WordsOf(picture)
            .ShouldBe([
                "Backing",
                "wrong side up, 70 by 84 in",
                "Batting",
                "70 by 84 in",
                "Quilt top",
                "right side up, 53 1/2 by 67 in",
            ]);
    }

    [Test]
    public void A_binding_corner_shows_where_to_stop()
    {
        Picture picture = BindingCorner.Draw(
            Colored["D"],
            House.Default,
            CornerTurn.Stop,
            Colored,
            FigureRoom.Of(120, 120)
        );
        WordsOf(picture).ShouldBe(["1/4 in"]);
    }
}
