using System.Collections.Immutable;
using PatternPress.Booklet.Figures;
using PatternPress.Quilting.Resolving;
using PatternPress.Tests.Booklet.Sections;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Tests.Booklet.Figures;

/// <summary>Prints and pictures of cloth as they lie in drawings.</summary>
public sealed class ClothFigureTests
{
    private static readonly string Source = File.ReadAllText(
            Path.Combine(Repository.Root, "tests", "cases", "rules", "base.quilt.yaml")
        )
        .Replace("color: \"#15233b\"", "image: {file: swatches/ink.png, width: 3}")
        .Replace(
            "color: \"#f2a71b\"",
            "directional: yes, image: {file: swatches/amber.jpg, width: 4}"
        )
        .Replace("color: \"#d1495b\"", "color: \"#d1495b\", print: stripe, directional: yes");

    private static readonly Quilt Quilt = Manuscripts.Compile("cloth", Source).Quilts[0];
    private static readonly Palette Palette = Palette.Of(
        Quilt.Pattern,
        [Quilt],
        FigureStyle.Colored
    );

    private static ImmutableArray<Mark.Outline> Outlines(Picture picture) =>
        [.. FigurePage.Marks(picture.Drawing.Marks).OfType<Mark.Outline>()];

    [Test]
    public void A_quilt_is_covered_with_its_cloth_at_the_drawings_scale()
    {
        Picture picture = QuiltPicture.Draw(Quilt, Palette, FigureRoom.Of(300, 400));
        ImmutableArray<Mark.Outline> cloths =
        [
            .. Outlines(picture).Where(o => o.Image is not null),
        ];
        // 48 in of blocks, two borders of 3 in and the binding, which doubles as the measure of the scale.
        double inch = picture.Drawing.Width / (48 + 6 + (2 * 0.375));
        foreach (Mark.Outline cloth in cloths)
        {
            (double width, double height) =
                cloth.Image!.Image.Name == "swatches/ink.png" ? (3.0, 3.0) : (4.0, 2.0);
            cloth.Image.Width.ShouldBe(width * inch, 0.01 * width * inch);
            cloth.Image.Height.ShouldBe(height * inch, 0.01 * height * inch);
        }
        // Ink has no up: one path. Amber has: the rays of a star point four ways.
        cloths.Count(c => c.Image!.Image.Name == "swatches/ink.png").ShouldBe(1);
        cloths
            .Where(c => c.Image!.Image.Name == "swatches/amber.jpg")
            .Select(c => Degrees(c.Image!.Tile))
            .ShouldBe([0, 90, 180, 270]);
    }

    [Test]
    public void A_piece_carries_its_print_the_way_its_unit_is_turned()
    {
        ColoredBlock star = Quilt.Places[0].Block;
        foreach (var same in new FigurePatches(star).Where(p => p.Fabric == "B"))
        {
            // The goose at the top points up and is cut upright; the others are the same goose turned.
            int expected = same.Side switch
            {
                "top" => 0,
                "right" => 90,
                "bottom" => 180,
                _ => 270,
            };
            same.Degrees.ShouldBe(expected, same.Side);
        }
    }

    [Test]
    public void Stripes_turn_with_their_pieces_and_stay_where_the_print_has_no_up()
    {
        ColoredBlock other = Quilt.Places.First(p => p.Block.Key == "S2").Block;
        Picture picture = BlockPicture.Draw(
            other,
            Quilt.Pattern,
            Palette,
            FigureRoom.Of(100, 100),
            BlockMarking.None
        );
        Stripes(picture).ShouldBe([90]);
        Picture whole = QuiltPicture.Draw(Quilt, Palette, FigureRoom.Of(300, 400));
        // The heart of each star and the border are cut upright.
        Stripes(whole).ShouldBe([90]);
        Palette["D"].PrintDegrees(new(1)).ShouldBe(90);
        Palette["A"].PrintDegrees(new(1)).ShouldBe(0);
        PrintTexture
            .Of("stripe")!
            .On(new Ink(200, 60, 60), 6, 90)
            .SelectMany(f => f.Hatch.Layers)
            .OfType<HatchLayer.Lines>()
            .Select(l => l.Degrees)
            .Distinct()
            .ShouldBe([180]);
    }

    [Test]
    public void A_swatch_shows_the_cloth_on_its_left_half_and_the_hatch_on_its_right()
    {
        Picture swatch = FabricSwatch.Draw(
            Palette["A"],
            FigureStyle.Colored,
            FigureRoom.Of(34, 12)
        );
        Mark.Outline cloth = Outlines(swatch).Single(o => o.Image is not null);
        cloth.Path.Bounds().Right.ShouldBe(17, 0.3);
        Outlines(swatch).Single(o => o.Hatch is not null).Path.Bounds().Left.ShouldBe(17, 0.3);
    }

    [Test]
    public void Charts_and_black_only_pages_have_no_images()
    {
        Outlines(PlacementChart.Draw(Quilt, Palette, FigureRoom.Of(300, 400)))
            .Where(o => o.Image is not null)
            // Only the swatches of its legend.
            .ShouldAllBe(o => o.Path.Bounds().Right - o.Path.Bounds().Left < 20);
        Palette black = Palette.With(FigureStyle.BlackOnly, Quilt.Pattern);
        Outlines(QuiltPicture.Draw(Quilt, black, FigureRoom.Of(300, 400)))
            .ShouldAllBe(o => o.Image == null);
        Palette again = black.With(FigureStyle.Colored, Quilt.Pattern);
        again["A"].Cloth.ShouldNotBeNull();
    }

    private static List<double> Stripes(Picture picture) =>
        [
            .. Outlines(picture)
                .Where(o => o.Hatch?.Hatch.Name == "print")
                .SelectMany(o => o.Hatch!.Hatch.Layers)
                .OfType<HatchLayer.Lines>()
                .Select(l => l.Degrees)
                .Distinct()
                .Order(),
        ];

    private static int Degrees(Transform tile) =>
        ((int)Math.Round(Math.Atan2(tile.B, tile.A) * 180 / Math.PI) + 360) % 360;

    /// <summary>A block's patches with the side they lie at and how their print lies.</summary>
    private sealed class FigurePatches(ColoredBlock block)
        : List<(string Fabric, string Side, int Degrees)>(
            new BlockPlace(0, 0, block, default, new(default, default, block.Width, block.Height))
                .Patches()
                .Where(p => p.Shape.Corners.Length == 3)
                .Select(p =>
                {
                    double x = p.Shape.Corners.Average(c => c.X.Inches.ToDouble()),
                        y = p.Shape.Corners.Average(c => c.Y.Inches.ToDouble()),
                        half = block.Width.Inches.ToDouble() / 2;
                    string side =
                        Math.Abs(x - half) < Math.Abs(y - half) ? (y < half ? "top" : "bottom")
                        : x < half ? "left"
                        : "right";
                    return (p.Fabric, side, p.PrintTurn.Degrees);
                })
        );
}
