using PatternPress.Booklet;
using PatternPress.Booklet.Figures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Tests.Booklet.Sections;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Tests.Booklet.Figures;

/// <summary>Blocks whole, in outline and pulled apart.</summary>
public sealed class BlockFigureTests
{
    private static readonly Quilt Quilt = SampleQuilts.Stars(3, 4);
    private static readonly Palette Colored = SampleFigures.PaletteOf(Quilt, FigureStyle.Colored);

    [Test]
    public void A_star_is_sewn_in_three_rows()
    {
        SewingOrder order = SewingOrder.Of(SampleQuilts.Star(12));
        order.ShouldBeOfType<SewingOrder.Group>().Level.ShouldBeTrue();
        order
            .Rows()
            .Select(row => string.Join(" ", row.Units()))
            .ShouldBe(["0 1 2", "3 4 5", "6 7 8"]);
    }

    [Test]
    public void Units_without_a_straight_seam_go_round_each_other() =>
        SewingOrder
            .Of(SampleQuilts.Whirl(9))
            .ShouldBeOfType<SewingOrder.Around>()
            // The eye, then from the upper bar to the right, as each bar ends flush with the eye on its far side.
            .Units()
            .ShouldBe([3, 0, 1, 4, 2]);

    [Test]
    public void A_pinwheel_is_two_rows_of_two() =>
        SewingOrder
            .Of(SampleQuilts.Pinwheel(6))
            .Rows()
            .Select(row => string.Join(" ", row.Units()))
            .ShouldBe(["0 1", "2 3"]);

    [Test]
    public void Every_unit_of_an_exploded_block_is_drawn_at_its_size_and_apart_from_the_others(
        [Values("star", "pinwheel", "whirl")] string name
    )
    {
        Block block = name switch
        {
            "star" => SampleQuilts.Star(12),
            "pinwheel" => SampleQuilts.Pinwheel(6),
            _ => SampleQuilts.Whirl(9),
        };
        ColoredBlock colored = SampleQuilts.Colored(
            "X",
            block,
            0,
            [.. block.Design.Parts.Select((p, i) => (p.Value, Quilt.Pattern.Fabrics[i].Key))]
        );
        Picture picture = BlockExploded.Draw(
            colored,
            [],
            PressingStyle.Nested,
            Quilt.Pattern,
            Colored,
            FigureRoom.Of(240, 240)
        );
        // Each unit ends with its own upright edge.
        var edges = picture
            .Drawing.Marks.OfType<Mark.Outline>()
            .Where(o =>
                o.Fill == null
                && o.Hatch == null
                && o.Stroke?.Width == FigureStyle.Colored.Edge
                && o.Path.Points.Length == 4
            )
            .Select(o => o.Path.Bounds())
            .ToList();
        edges.Count.ShouldBe(block.Units.Length);
        double scale = Math.Sqrt(
            edges.Sum(e => (e.Right - e.Left) * (e.Bottom - e.Top))
                / (block.Width * block.Height).SquareInches.ToDouble()
        );
        for (int i = 0; i < edges.Count; i++)
        {
            Sizes()
                .ShouldContain(size =>
                    Math.Abs(size.Width - (edges[i].Right - edges[i].Left)) < 0.05
                    && Math.Abs(size.Height - (edges[i].Bottom - edges[i].Top)) < 0.05
                );
            for (int j = 0; j < i; j++)
            {
                double across = Math.Max(
                        edges[i].Left - edges[j].Right,
                        edges[j].Left - edges[i].Right
                    ),
                    down = Math.Max(edges[i].Top - edges[j].Bottom, edges[j].Top - edges[i].Bottom);
                Math.Max(across, down).ShouldBeGreaterThan(4, $"{i} and {j}");
            }
        }

        IEnumerable<(double Width, double Height)> Sizes() =>
            block.Units.Select(u =>
                (u.Place.Width.Inches.ToDouble() * scale, u.Place.Height.Inches.ToDouble() * scale)
            );
    }

    [Test]
    public void The_words_give_the_order_of_sewing_and_pressing()
    {
        ColoredBlock star = Quilt.Places[0].Block;
        string[] labels = ["", "1", "", "1", "", "1", "", "1", ""];
        BlockExploded
            .Draw(
                star,
                labels,
                PressingStyle.Nested,
                Quilt.Pattern,
                Colored,
                FigureRoom.Of(200, 200)
            )
            .AltText.ShouldBe(
                "Block L1 pulled apart: Star block with sky in Ink, ray in Amber and core in Foam. "
                    + "Row 1: square unit of Ink, unit 1 of Amber and Ink and square unit of Ink, seams pressed to the left. "
                    + "Row 2: unit 1 of Amber and Ink, square unit of Foam and unit 1 of Amber and Ink, seams pressed to the right. "
                    + "Row 3: square unit of Ink, unit 1 of Amber and Ink and square unit of Ink, seams pressed to the left. "
                    + "Then the rows are joined, seams pressed down."
            );
    }

    [Test]
    public void A_block_in_outline_carries_the_letters_of_its_map()
    {
        Picture picture = BlockOutline.Draw(
            SampleQuilts.Star(12),
            [],
            Colored,
            FigureRoom.Of(120, 120)
        );
        string.Concat(picture.Drawing.Marks.OfType<Mark.Label>().Select(FigurePage.Words))
            .ShouldBe("sGsECWsFs");
        picture
            .Drawing.Marks.OfType<Mark.Outline>()
            .ShouldAllBe(o => o.Fill == null || o.Fill == Ink.White);
    }

    [Test]
    public void A_small_figure_is_as_it_was_approved()
    {
        Picture block = BlockPicture.Draw(
            SampleQuilts.Colored("P", SampleQuilts.Pinwheel(6), 0, ("vane", "D"), ("air", "C")),
            Quilt.Pattern,
            Colored,
            FigureRoom.Of(60, 60)
        );
        Golden.ShouldMatch(Case("pinwheel-block.txt"), FigurePage.Text(block));
    }

    [Test]
    public void A_swatch_is_as_it_was_approved() =>
        Golden.ShouldMatch(
            Case("swatch.txt"),
            FigurePage.Text(FabricSwatch.Draw(Colored["B"], Colored.Style, FigureRoom.Of(34, 13)))
        );

    private static string Case(string name) =>
        Path.Combine(Repository.Root, "tests", "cases", "figures", name);

    [Test]
    public void A_part_thinner_than_any_level_still_has_its_name()
    {
        Manuscript manuscript = Manuscripts.Compile(
            "thin",
            """
            pattern: {title: T, edition: 1.0.0, date: 2026-01-01, designer: D}
            fabrics:
              A: {name: Ink, color: "#15233b"}
              B: {name: Amber, color: "#f2a71b"}
              C: {name: Rose, color: "#d1495b"}
            blocks:
              band:
                size: 18
                map: |
                  Z
                  r
                  r
                units: {Z: "seminole 6 segments of 1/4, a b on c", r: rectangle b}
            colorings:
              L: band a=A b=B c=C
            quilt:
              fill: L
            sizes:
              one: {blocks: 2 x 2}
            """
        );
        ColoredBlock block = manuscript.Quilts[0].BlockCounts().First().Block;
        Picture picture = BlockParts.Draw(
            block,
            manuscript.Pattern,
            Palette.Of(manuscript.Pattern, manuscript.Quilts, FigureStyle.Colored),
            new FigureRoom(200.Pt, 160.Pt)
        );
        picture.Drawing.Marks.ShouldNotBeEmpty();
    }
}
