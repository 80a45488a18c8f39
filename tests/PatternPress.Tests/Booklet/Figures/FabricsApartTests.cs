using System.Collections.Immutable;
using PatternPress.Booklet;
using PatternPress.Booklet.Figures;
using PatternPress.Booklet.Figures.Drafting;
using PatternPress.Quilting.Colors;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Tests.Booklet.Sections;
using PatternPress.Tests.Typesetting;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Tests.Booklet.Figures;

/// <summary>
/// Whether fabrics that touch are told apart in grey and by makers with each of the three kinds of color blindness: by
/// color, or else by hatches that differ as they are painted on the page, and by their letters.
/// </summary>
public sealed class FabricsApartTests
{
    /// <summary>CIEDE2000; that of the checks PP0421 to PP0423.</summary>
    private const double Color = 5;

    /// <summary>Between the looks of two painted hatches; that which all hatches of the catalogue keep.</summary>
    private const double Hatch = 0.12;

    /// <summary>
    /// Contrast of a hatch's ink on its fabric: 3 to 1 as everybody sees it (WCAG 2.2, 1.4.11); simulated sight takes away
    /// some of it, and half of that is still plainly seen (our own limit).
    /// </summary>
    private const double SeenContrast = 1.5;

    private static readonly (string Name, Func<Color, Color> See)[] Sights =
    [
        ("in grey", c => Grey(c)),
        ("without red cones", c => ColorVisionSimulation.Seen(c, ColorVision.Protan)),
        ("without green cones", c => ColorVisionSimulation.Seen(c, ColorVision.Deutan)),
        ("without blue cones", c => ColorVisionSimulation.Seen(c, ColorVision.Tritan)),
    ];

    private static IEnumerable<string> Patterns => Manuscripts.Own;

    [TestCaseSource(nameof(Patterns))]
    public void Neighbors_are_told_apart_by_everybody(string id)
    {
        Manuscript manuscript = Manuscripts.Of(id);
        Palette palette = Palette.Of(manuscript.Pattern, manuscript.Quilts, FigureStyle.Colored);
        Dictionary<string, Painted> painted = palette.Looks.ToDictionary(
            look => look.Key,
            look => new Painted(look)
        );
        (string First, string Second)[] pairs = [.. Touching(manuscript)];
        pairs.ShouldNotBeEmpty();
        var confused = new List<string>();
        foreach ((string name, Func<Color, Color> see) in Sights)
        {
            int byColor = 0,
                byHatch = 0;
            double nearest = double.MaxValue;
            foreach ((string first, string second) in pairs)
            {
                Painted a = painted[first],
                    b = painted[second];
                if (ColorDifference.Between(see(a.Ground), see(b.Ground)) >= Color)
                {
                    byColor++;
                    continue;
                }
                double apart = HatchRaster.Distance(a.Look, b.Look);
                nearest = Math.Min(nearest, apart);
                bool shown =
                    Contrast.Ratio(see(a.Ground), see(a.Strokes)) >= SeenContrast
                    && Contrast.Ratio(see(b.Ground), see(b.Strokes)) >= SeenContrast;
                if (apart >= Hatch && shown && first != second)
                {
                    byHatch++;
                    continue;
                }
                confused.Add($"{first} and {second} {name}: hatches {apart:0.000} apart");
            }
            TestContext.Out.WriteLine(
                $"{id}, {name}: {pairs.Length} pairs that touch, {byColor} by color, {byHatch} by hatch and letter"
                    + (byHatch > 0 ? $" (the nearest {nearest:0.000} apart)" : "")
            );
        }
        confused.ShouldBeEmpty();
    }

    [TestCaseSource(nameof(Patterns))]
    public void No_two_fabrics_have_the_same_painted_hatch(string id)
    {
        Manuscript manuscript = Manuscripts.Of(id);
        Palette palette = Palette.Of(manuscript.Pattern, manuscript.Quilts, FigureStyle.Colored);
        Painted[] all = [.. palette.Looks.Select(look => new Painted(look))];
        double least = double.MaxValue;
        for (int i = 0; i < all.Length; i++)
        {
            for (int j = 0; j < i; j++)
            {
                least = Math.Min(least, HatchRaster.Distance(all[i].Look, all[j].Look));
            }
        }
        TestContext.Out.WriteLine(
            $"{id}: the nearest of {all.Length} hatches are {least:0.000} apart"
        );
        least.ShouldBeGreaterThanOrEqualTo(Hatch);
    }

    // What the figures measure is what the charts print: every fabric with its color, its hatch and its letter.
    [TestCaseSource(nameof(Patterns))]
    public void Charts_carry_the_hatch_and_the_letter_of_every_fabric(string id)
    {
        Manuscript manuscript = Manuscripts.Of(id);
        Palette palette = Palette.Of(manuscript.Pattern, manuscript.Quilts, FigureStyle.Colored);
        foreach (Quilt quilt in manuscript.Quilts)
        {
            Mark[] marks =
            [
                .. FigurePage.Marks(
                    PlacementChart.Draw(quilt, palette, FigureRoom.Of(500, 650)).Drawing.Marks
                ),
            ];
            HashSet<string> letters =
            [
                .. marks.OfType<Mark.Label>().Select(label => FigurePage.Words(label)),
            ];
            foreach (string fabric in FabricLegend.FabricsOf(quilt))
            {
                FabricLook look = palette[fabric];
                marks
                    .OfType<Mark.Outline>()
                    .ShouldContain(o => o.Fill == look.Color && o.Hatch == look.Hatch, fabric);
                letters.ShouldContain(fabric);
            }
        }
    }

    [Test]
    public void The_measure_tells_a_hatch_from_itself_moved_and_from_others()
    {
        FabricLook look = Look(FabricHatches.All[0]);
        HatchRaster
            .Distance(new Painted(look).Look, new Painted(look, 1.3, 2.1).Look)
            .ShouldBeLessThan(Hatch / 2);
        HatchRaster
            .Distance(new Painted(look).Look, new Painted(Look(FabricHatches.All[2])).Look)
            .ShouldBeGreaterThan(Hatch);

        static FabricLook Look(Hatch hatch) =>
            new("A", "A", new Ink(230, 220, 200), null, new HatchFill(hatch, Ink.Black), Ink.Black);
    }

    // What is painted is what the catalogue's own measure, which knows only the definitions, thinks is painted.
    [Test]
    public void Painted_pages_agree_with_the_definitions()
    {
        // One of each family: they come four turns at a time.
        foreach (Hatch hatch in FabricHatches.All.Where((_, i) => i % 4 == 1))
        {
            var look = new FabricLook(
                "A",
                "A",
                Ink.White,
                null,
                new HatchFill(hatch, Ink.Black),
                Ink.Black
            );
            HatchRaster
                .Distance(new Painted(look).Look, HatchRaster.Of(hatch).Look())
                .ShouldBeLessThan(Hatch, hatch.Name);
        }
    }

    /// <summary>Every pair of fabrics that share a seam in any size, and the binding with what it is sewn to.</summary>
    private static SortedSet<(string First, string Second)> Touching(Manuscript manuscript)
    {
        ImmutableArray<Fabric> fabrics = manuscript.Pattern.Fabrics;
        Dictionary<string, int> tags = fabrics.ToDictionary(f => f.Key, f => f.Order);
        var pairs = new SortedSet<(string, string)>();
        foreach (Quilt quilt in manuscript.Quilts)
        {
            var lines = new SeamLines();
            foreach (FlatQuilt.FlatPatch patch in FlatQuilt.Of(quilt).Patches)
            {
                lines.Add(patch.Corners, patch.By, tags[patch.Fabric]);
            }
            foreach (((int a, int b), _) in lines.Neighbors())
            {
                pairs.Add((fabrics[a].Key, fabrics[b].Key));
            }
            if (quilt.Size.Quilt.Binding is { } binding && !quilt.Borders.IsEmpty)
            {
                foreach (BorderPiece piece in quilt.Borders[^1].Pieces)
                {
                    if (piece.Fabric != binding.Fabric.Value)
                    {
                        pairs.Add((piece.Fabric, binding.Fabric.Value));
                    }
                }
            }
        }
        return pairs;
    }

    private static Color Grey(Color color)
    {
        Ink grey = new Ink(color.Red, color.Green, color.Blue).ToGrey();
        return new(grey.Red, grey.Green, grey.Blue);
    }

    /// <summary>A fabric's area as a finished page has it, measured dot by dot.</summary>
    private sealed class Painted
    {
        private const int DotsPerPoint = 4;
        private const double Left = 20;

        public Painted(FabricLook look, double movedRight = 0, double movedDown = 0)
        {
            Drawing drawing = new DrawingBuilder()
                .Area(
                    VectorPath.Rectangle(movedRight, movedDown, 70, 60),
                    look.Color,
                    hatch: look.Hatch
                )
                .ToDrawing(80, 70);
            var raster = new PageRaster(
                FigurePage.Typeset(new Picture(drawing, "An area.")).Pages[0],
                DotsPerPoint
            );
            Ground = new(look.Color.Red, look.Color.Green, look.Color.Blue);
            Strokes = new(look.Hatch.Ink.Red, look.Hatch.Ink.Green, look.Hatch.Ink.Blue);
            int x = (int)Math.Round((Left + 8 + movedRight) * DotsPerPoint),
                y = (int)Math.Round((Left + 8 + movedDown) * DotsPerPoint);
            Look = HatchRaster.Of((column, row) => InkOf(raster[x + column, y + row], look)).Look();
        }

        /// <summary>The fabric's own color.</summary>
        public Color Ground { get; }

        /// <summary>The color of the hatch.</summary>
        public Color Strokes { get; }

        public double[] Look { get; }

        // How far a dot is on the way from the fabric's color to the ink of the hatch.
        private static double InkOf(Ink dot, FabricLook look)
        {
            int from = Sum(look.Color),
                to = Sum(look.Hatch.Ink);
            return from == to ? 0 : Math.Clamp((double)(Sum(dot) - from) / (to - from), 0, 1);
        }

        private static int Sum(Ink ink) => ink.Red + ink.Green + ink.Blue;
    }
}
