using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Union;
using PatternPress.Booklet.Figures;
using PatternPress.Booklet.Figures.Drafting;
using PatternPress.Quilting.Resolving;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;
using NtsPolygon = NetTopologySuite.Geometries.Polygon;

namespace PatternPress.Tests.Booklet.Figures;

/// <summary>Pictures, charts and outlines of whole quilts: every patch is there, in its fabric and its size.</summary>
public sealed class QuiltFigureTests
{
    private static readonly (string Name, Quilt Quilt)[] Quilts =
    [
        ("stars", SampleQuilts.Stars(3, 4)),
        ("pinwheels", SampleQuilts.Pinwheels(5, 4)),
        ("scraps", SampleQuilts.Scraps(9, 8)),
    ];

    private static IEnumerable<TestCaseData> Cases() =>
        Quilts.Select(q => new TestCaseData(q.Quilt).SetArgDisplayNames(q.Name));

    [TestCaseSource(nameof(Cases))]
    public void The_picture_gives_every_fabric_its_area(Quilt quilt)
    {
        Palette palette = SampleFigures.PaletteOf(quilt, FigureStyle.Colored);
        Picture picture = QuiltPicture.Draw(quilt, palette, FigureRoom.Of(400, 400));
        double quiltArea = quilt.Width.Inches.ToDouble() * quilt.Height.Inches.ToDouble();
        var expected = quilt
            .Patches()
            .GroupBy(p => palette[p.Fabric].Color)
            .ToDictionary(g => g.Key, g => g.Sum(p => p.Shape.Area.SquareInches.ToDouble()));
        // The first fill is the binding, whose visible part is its rim.
        var fills = FigurePage
            .Marks(picture.Drawing.Marks)
            .OfType<Mark.Outline>()
            .Where(o => o.Fill is not null)
            .Skip(quilt.Size.Quilt.Binding is null ? 0 : 1)
            .ToList();
        double drawn = fills.Sum(f => AreaOf(f.Path));
        fills.Count.ShouldBe(expected.Count);
        foreach (Mark.Outline fill in fills)
        {
            double share = AreaOf(fill.Path) / drawn;
            share.ShouldBe(expected[fill.Fill!.Value] / quiltArea, 0.002);
        }
    }

    [TestCaseSource(nameof(Cases))]
    public void The_picture_is_small(Quilt quilt)
    {
        Palette palette = SampleFigures.PaletteOf(quilt, FigureStyle.Colored);
        Picture picture = QuiltPicture.Draw(quilt, palette, FigureRoom.Of(480, 560));
        int points = FigurePage
            .Marks(picture.Drawing.Marks)
            .OfType<Mark.Outline>()
            .Where(o => o.Fill is not null)
            .Sum(o => o.Path.Points.Length);
        // Joined patches have fewer corners than the patches by themselves.
        points.ShouldBeLessThanOrEqualTo(quilt.Patches().Sum(p => p.Shape.Corners.Length) + 4);
        picture.Drawing.Marks.Length.ShouldBeLessThan((4 * quilt.Pattern.Fabrics.Length) + 6);
    }

    [TestCaseSource(nameof(Cases))]
    public void The_coloring_page_draws_every_seam_once_and_fills_nothing(Quilt quilt)
    {
        Palette palette = SampleFigures.PaletteOf(quilt, FigureStyle.Colored);
        Picture picture = ColoringPage.Draw(quilt, palette, FigureRoom.Of(500, 640));
        var outlines = picture.Drawing.Marks.OfType<Mark.Outline>().ToList();
        outlines.ShouldAllBe(o => o.Fill == null && o.Hatch == null);
        picture.Drawing.Marks.OfType<Mark.Label>().ShouldBeEmpty();

        VectorPath seams = outlines[0].Path;
        double length = 0;
        for (int i = 0; i < seams.Points.Length; i += 2)
        {
            length += (seams.Points[i + 1] - seams.Points[i]).Length;
        }
        double scale =
            (picture.Drawing.Width - FigureStyle.Colored.Bold.Value)
            / quilt.Width.Inches.ToDouble();
        Geometry all = UnaryUnionOp.Union(
            quilt.Patches().Select(p => (Geometry)ToNts(p).Boundary).ToList()
        );
        (length / scale).ShouldBe(all.Length, all.Length * 0.001);
    }

    [TestCaseSource(nameof(Cases))]
    public void Letters_lie_inside_patches_of_their_fabric(Quilt quilt)
    {
        Palette palette = SampleFigures.PaletteOf(quilt, FigureStyle.Colored);
        Picture picture = PlacementChart.Draw(
            quilt,
            palette,
            FigureRoom.Of(504, 640),
            PlacementDetail.Patches
        );
        (double scale, double x, double y) = PlaceOf(picture, quilt);
        var patches = quilt.Patches().Select(p => (p.Fabric, Shape: ToNts(p))).ToList();
        int inside = 0;
        foreach (var text in FigurePage.Texts(FigurePage.Typeset(picture)))
        {
            var center = new Coordinate(
                (text.X + (text.Width / 2) - x) / scale,
                (text.Y + (text.Height / 2) - y) / scale
            );
            var holder = patches.FirstOrDefault(p => p.Shape.Covers(new Point(center)));
            if (holder.Fabric is null)
            {
                continue;
            }
            holder.Fabric.ShouldBe(text.Words);
            Geometry ink = new Envelope(
                (text.X - x) / scale,
                (text.X + text.Width - x) / scale,
                (text.Y - y) / scale,
                (text.Y + text.Height - y) / scale
            ).ToPolygon();
            holder.Shape.Buffer(0.01).Covers(ink).ShouldBeTrue($"{text.Words} at {center}");
            inside++;
        }
        // At most a letter a patch, and in these quilts nearly every patch has room.
        inside.ShouldBeInRange((int)(patches.Count * 0.9), patches.Count);
    }

    [Test]
    public void A_chart_of_small_patches_goes_by_blocks()
    {
        Quilt quilt = SampleQuilts.Stars(14, 14);
        Palette palette = SampleFigures.PaletteOf(quilt, FigureStyle.Colored);
        Picture picture = PlacementChart.Draw(quilt, palette, FigureRoom.Of(504, 640));
        var words = picture.Drawing.Marks.OfType<Mark.Label>().Select(FigurePage.Words).ToList();
        words.Count(w => w == "L1").ShouldBe(98);
        words.Count(w => w == "L2").ShouldBe(98);
        words.ShouldNotContain("B C");
    }

    [Test]
    public void Rows_are_numbered_on_both_sides_and_columns_above()
    {
        Quilt quilt = SampleQuilts.Stars(3, 4);
        Palette palette = SampleFigures.PaletteOf(quilt, FigureStyle.Colored);
        Picture picture = PlacementChart.Draw(
            quilt,
            palette,
            FigureRoom.Of(504, 640),
            PlacementDetail.Blocks
        );
        var words = picture.Drawing.Marks.OfType<Mark.Label>().Select(FigurePage.Words).ToList();
        words.Count(w => w == "1").ShouldBe(3);
        words.Count(w => w == "3").ShouldBe(3);
        words.Count(w => w == "4").ShouldBe(2);
        words.Count(w => w == "5").ShouldBe(0);
    }

    [Test]
    public void The_legend_lists_the_fabrics_of_the_top()
    {
        Quilt quilt = SampleQuilts.Stars(3, 4);
        FabricLegend.FabricsOf(quilt).ShouldBe(["A", "B", "C", "D"]);
        Palette palette = SampleFigures.PaletteOf(quilt, FigureStyle.Colored);
        Picture picture = FabricLegend.Draw(
            FabricLegend.FabricsOf(quilt),
            palette,
            FigureRoom.Of(504, 100)
        );
        var words = picture.Drawing.Marks.OfType<Mark.Label>().Select(FigurePage.Words).ToList();
        words.ShouldBe(["A", "Ink", "B", "Amber", "C", "Foam", "D", "Brick"]);
    }

    [Test]
    public void The_words_tell_rows_and_turns()
    {
        Quilt quilt = SampleQuilts.Pinwheels(3, 2);
        Palette palette = SampleFigures.PaletteOf(quilt, FigureStyle.Colored);
        PlacementChart
            .Draw(quilt, palette, FigureRoom.Of(300, 300), PlacementDetail.Blocks)
            .AltText.ShouldBe(
                "Placement chart of the throw quilt. Every block is drawn as it lies in the quilt and marked with its key. "
                    + "Row 1: P, P turned a quarter to the right, Q. "
                    + "Row 2: P turned a quarter to the right, Q, P turned a quarter to the left."
            );
        QuiltPicture
            .Draw(quilt, palette, FigureRoom.Of(300, 300))
            .AltText.ShouldBe(
                "The throw quilt in color, 18 by 12 in. 3 columns and 2 rows of blocks: "
                    + "4 of P (Pinwheel block with vane in Brick and air in Foam) and 2 of Q (plain block of Moss). "
                    + "It is bound in Ink."
            );
    }

    [Test]
    public void Sashing_and_borders_are_told_too() =>
        QuiltPicture
            .Draw(
                SampleQuilts.Stars(3, 4),
                SampleFigures.PaletteOf(SampleQuilts.Stars(3, 4), FigureStyle.Colored),
                FigureRoom.Of(300, 300)
            )
            .AltText.ShouldEndWith(
                "Sashing in Ink lies between the blocks, with cornerstones in Amber. "
                    + "From the inside out: border 1 in Foam, 2 in wide and border 2 in Brick, 5 in wide, with corner squares in Ink. "
                    + "It is bound in Ink."
            );

    [Test]
    public void Rows_are_pulled_apart_with_sashing_between()
    {
        Quilt quilt = SampleQuilts.Stars(3, 4);
        Palette palette = SampleFigures.PaletteOf(quilt, FigureStyle.Colored);
        Picture apart = RowAssembly.Draw(quilt, palette, FigureRoom.Of(400, 2000));
        double scale =
            (apart.Drawing.Width - (2 * 5.76) - 5 - FigureStyle.Colored.Edge.Value)
            / quilt.Center.Width.Inches.ToDouble();
        // Four rows and three sashing rows: six gaps more than the quilt is high.
        double gaps = apart.Drawing.Height - (quilt.Center.Height.Inches.ToDouble() * scale);
        // Half a letter above and below, beside the outer rows of sashing.
        double letters = FigureStyle.Colored.Small.Value;
        gaps.ShouldBe((6 * 8) + letters + FigureStyle.Colored.Edge.Value, 2);
        var words = apart.Drawing.Marks.OfType<Mark.Label>().Select(FigurePage.Words).ToList();
        words.Where(w => w.Length == 1).ShouldBe(["1", "a", "2", "b", "3", "c", "4"]);
        words.Count(w => w.StartsWith('L')).ShouldBe(12);
    }

    [Test]
    public void Either_all_blocks_of_rows_are_named_or_none()
    {
        Quilt quilt = SampleQuilts.Stars(3, 4);
        Palette palette = SampleFigures.PaletteOf(quilt, FigureStyle.Colored);
        var counts = new HashSet<int>();
        for (int width = 60; width <= 200; width += 2)
        {
            FigureRoom room = FigureRoom.Of(width, 2000);
            int named = RowAssembly
                .Draw(quilt, palette, room)
                .Drawing.Marks.OfType<Mark.Label>()
                .Count(label => FigurePage.Words(label).StartsWith('L'));
            RowAssembly.TellsBlocks(quilt, palette, room).ShouldBe(named > 0, $"{width} pt");
            counts.Add(named);
        }
        counts.ShouldBe([0, 12]);
    }

    [Test]
    public void Rows_of_sizes_with_the_same_middle_are_alike()
    {
        RowAssembly.AreAlike(SampleQuilts.Stars(3, 4), SampleQuilts.Stars(3, 4)).ShouldBeTrue();
        RowAssembly.AreAlike(SampleQuilts.Stars(3, 4), SampleQuilts.Stars(4, 3)).ShouldBeFalse();
        RowAssembly.AreAlike(SampleQuilts.Stars(3, 4), SampleQuilts.Stars(3, 5)).ShouldBeFalse();
    }

    [Test]
    public void Each_block_of_a_row_of_a_border_has_its_name_below_it()
    {
        Quilt quilt = SampleFigures.Medallion;
        Palette palette = SampleFigures.PaletteOf(quilt, FigureStyle.Colored);
        Border border = quilt.Borders.First(b => b.IsPieced);
        var names = BorderRows
            .Draw(quilt, border, palette, FigureRoom.Of(540, 300))
            .Drawing.Marks.OfType<Mark.Label>()
            .Select(FigurePage.Words)
            .ToList();
        int blocks = border.Blocks.Count(b => b.Side is BorderSide.Left or BorderSide.Top);
        names.Count(name => border.Blocks.Any(b => name == b.Place.Block.Key)).ShouldBe(blocks);
    }

    private static double AreaOf(VectorPath path)
    {
        double twice = 0;
        foreach (VectorPath part in path.Parts())
        {
            for (int i = 0; i < part.Points.Length; i++)
            {
                XY a = part.Points[i],
                    b = part.Points[(i + 1) % part.Points.Length];
                twice += (a.X * b.Y) - (b.X * a.Y);
            }
        }
        return twice / 2;
    }

    // The outer edge of the quilt is the boldest upright box.
    private static (double Scale, double X, double Y) PlaceOf(Picture picture, Quilt quilt)
    {
        Mark.Outline edge = picture
            .Drawing.Marks.OfType<Mark.Outline>()
            .Single(o => o.Fill == null && o.Stroke?.Width == FigureStyle.Colored.Bold);
        var bounds = edge.Path.Bounds();
        return (
            (bounds.Right - bounds.Left) / quilt.Width.Inches.ToDouble(),
            bounds.Left,
            bounds.Top
        );
    }

    private static NtsPolygon ToNts(Patch patch)
    {
        Coordinate[] corners =
        [
            .. patch.Shape.Corners.Select(c => new Coordinate(
                c.X.Inches.ToDouble(),
                c.Y.Inches.ToDouble()
            )),
        ];
        return new NtsPolygon(new LinearRing([.. corners, corners[0]]));
    }
}

internal static class EnvelopeExtensions
{
    public static Geometry ToPolygon(this Envelope envelope) =>
        GeometryFactory.Default.ToGeometry(envelope);
}
