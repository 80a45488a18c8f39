using System.Collections.Immutable;
using PatternPress.Booklet.Figures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Tests.Booklet.Figures;

/// <summary>The catalogue of hatches and how they are given to fabrics.</summary>
public sealed class HatchTests
{
    internal static double ThinnestLine(Hatch hatch, double scale) =>
        hatch
            .Layers.Select(layer =>
                layer switch
                {
                    HatchLayer.Lines l => l.Width,
                    HatchLayer.Waves w => w.Width,
                    HatchLayer.Shapes { Filled: false } s => s.Width,
                    _ => double.MaxValue,
                } * scale
            )
            .DefaultIfEmpty(double.MaxValue)
            .Min();

    [Test]
    public void There_are_more_than_fabrics_in_a_large_pattern()
    {
        FabricHatches.All.Length.ShouldBeGreaterThanOrEqualTo(40);
        FabricHatches.All.Select(h => h.Name).ShouldBeUnique();
    }

    [Test]
    public void No_line_is_too_thin_to_print()
    {
        foreach (Hatch hatch in FabricHatches.All)
        {
            ThinnestLine(hatch, 1)
                .ShouldBeGreaterThanOrEqualTo(FigureStyle.ThinnestLine, hatch.Name);
        }
    }

    [Test]
    public void All_are_made_of_lines_so_that_pages_stay_small()
    {
        foreach (Hatch hatch in FabricHatches.All)
        {
            hatch.Layers.ShouldAllBe(layer => layer is HatchLayer.Lines, hatch.Name);
        }
    }

    [Test]
    public void No_two_look_alike_as_printed()
    {
        // Each hatch painted dot by dot and described by its darkness and by how like itself it is when moved: the same
        // texture gives the same numbers wherever it starts.
        ImmutableArray<Hatch> all = FabricHatches.All;
        double[][] looks = [.. all.Select(h => HatchRaster.Of(h).Look())];
        var close = new List<string>();
        for (int i = 0; i < all.Length; i++)
        {
            for (int j = i + 1; j < all.Length; j++)
            {
                double apart = HatchRaster.Distance(looks[i], looks[j]);
                if (apart < 0.12)
                {
                    close.Add($"{all[i].Name} and {all[j].Name}: {apart:0.000}");
                }
            }
        }
        close.ShouldBeEmpty();
    }

    [Test]
    public void The_measure_knows_a_moved_hatch_again()
    {
        Hatch lines = new("lines", [new HatchLayer.Lines(0, 4, 0.5)]);
        Hatch moved = new("moved", [new HatchLayer.Lines(0, 4, 0.5) { Offset = 1.5 }]);
        Hatch turned = new("turned", [new HatchLayer.Lines(90, 4, 0.5)]);
        double[] look = HatchRaster.Of(lines).Look();
        HatchRaster.Distance(look, HatchRaster.Of(moved).Look()).ShouldBeLessThan(0.05);
        HatchRaster.Distance(look, HatchRaster.Of(turned).Look()).ShouldBeGreaterThan(0.3);
    }

    [Test]
    public void Coverage_is_what_a_printer_would_ink()
    {
        foreach (Hatch hatch in FabricHatches.All)
        {
            // Where lines cross, the sum of their shares is more than the ink.
            double printed = HatchRaster.Of(hatch).Coverage,
                thought = new HatchSignature(hatch, 1).Coverage;
            printed.ShouldBeInRange((thought * 0.8) - 0.02, (thought * 1.05) + 0.02, hatch.Name);
        }
    }

    [Test]
    public void Twenty_five_fabrics_get_twenty_five_hatches()
    {
        Quilt quilt = SampleQuilts.Scraps(9, 8);
        var hatches = HatchAssignment.Assign(quilt.Pattern.Fabrics, [quilt], FabricHatches.All);
        hatches.Length.ShouldBe(25);
        hatches.Select(h => h.Hatch.Name).ShouldBeUnique();
        hatches.ShouldAllBe(h => h.Scale == 1);
    }

    [Test]
    public void The_same_pattern_always_gets_the_same_hatches()
    {
        Quilt quilt = SampleQuilts.Scraps(9, 8);
        HatchAssignment
            .Assign(quilt.Pattern.Fabrics, [quilt], FabricHatches.All)
            .ShouldBe(HatchAssignment.Assign(quilt.Pattern.Fabrics, [quilt], FabricHatches.All));
    }

    [Test]
    public void Dark_fabrics_get_dense_hatches()
    {
        Quilt quilt = SampleQuilts.Stars(4, 4);
        Palette palette = Palette.Of(quilt.Pattern, [quilt], FigureStyle.Colored);
        double ink = Coverage("A"),
            foam = Coverage("C");
        ink.ShouldBeGreaterThan(2 * foam);

        double Coverage(string key) => new HatchSignature(palette[key].Hatch.Hatch, 1).Coverage;
    }

    [Test]
    public void Neighbours_differ_more_than_others()
    {
        Quilt quilt = SampleQuilts.Scraps(9, 8);
        ImmutableArray<Fabric> fabrics = quilt.Pattern.Fabrics;
        var hatches = HatchAssignment.Assign(fabrics, [quilt], FabricHatches.All);
        HatchSignature[] signatures =
        [
            .. hatches.Select(h => new HatchSignature(h.Hatch, h.Scale)),
        ];
        var neighbours = new HashSet<(int, int)>();
        foreach (BlockPlace a in quilt.Places)
        {
            foreach (BlockPlace b in quilt.Places)
            {
                if (Math.Abs(a.Row - b.Row) + Math.Abs(a.Column - b.Column) == 1)
                {
                    (int i, int j) = (Index(a), Index(b));
                    neighbours.Add((Math.Min(i, j), Math.Max(i, j)));
                }
            }
        }
        double beside = neighbours.Average(p =>
            signatures[p.Item1].LikenessTo(signatures[p.Item2])
        );
        double all = Enumerable
            .Range(0, 25)
            .SelectMany(i =>
                Enumerable.Range(i + 1, 24 - i).Select(j => signatures[i].LikenessTo(signatures[j]))
            )
            .Average();
        beside.ShouldBeLessThan(all);
        neighbours
            .Max(p => signatures[p.Item1].LikenessTo(signatures[p.Item2]))
            .ShouldBeLessThan(0.75);

        int Index(BlockPlace place) =>
            fabrics.IndexOf(fabrics.First(f => "S" + f.Key == place.Block.Key));
    }

    [Test]
    public void More_fabrics_than_hatches_still_differ()
    {
        ImmutableArray<Fabric> fabrics =
        [
            .. Enumerable
                .Range(0, 100)
                .Select(i =>
                    SampleQuilts.MakeFabric(
                        $"F{i}",
                        $"Fabric {i}",
                        new Color((byte)(2 * i), (byte)i, 40),
                        null,
                        i
                    )
                ),
        ];
        var hatches = HatchAssignment.Assign(fabrics, [], FabricHatches.All);
        hatches.Select(h => (h.Hatch.Name, h.Scale)).ShouldBeUnique();
    }

    [Test]
    public void No_fabrics_need_no_hatches() =>
        HatchAssignment.Assign([], [], FabricHatches.All).ShouldBeEmpty();
}
