using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Rules;
using PatternPress.Quilting.Techniques;
using PatternPress.Tests.Quilting.Techniques;

namespace PatternPress.Tests.Quilting.Rules;

/// <summary>How many seams meet in a point, and which edges are on the bias by how a unit is made.</summary>
public class SeamRaysTests
{
    // Eight diamonds meet in the center of a star: eight seams, no more.
    [Test]
    public void Eight_seams_meet_in_the_center_of_a_star()
    {
        UnitForm form = Written.Form("eight-point-star, a on b", "12");
        var rays = new SeamRays();
        foreach (RolePatch patch in form.Patches)
        {
            rays.Add(patch.Shape);
        }
        var center = new Point(Length.FromInches(6), Length.FromInches(6));
        rays.All.Single(r => r.At == center).Ways.Count.ShouldBe(8);
        PP0282_ManySeamsMeet.Crowded(rays).ShouldBeNull();
    }

    // A fan of ten triangles about a point, of unlike slopes.
    [Test]
    public void Ten_seams_in_a_point_are_too_many()
    {
        (int X, int Y)[] rim =
        [
            (4, 0),
            (4, 1),
            (4, 4),
            (0, 4),
            (-4, 4),
            (-4, 0),
            (-4, -1),
            (-4, -4),
            (0, -4),
            (4, -4),
        ];
        var rays = new SeamRays();
        for (int i = 0; i < rim.Length; i++)
        {
            rays.Add(new Polygon([Point.Origin, At(rim[i]), At(rim[(i + 1) % rim.Length])]));
        }
        PP0282_ManySeamsMeet.Crowded(rays).ShouldBe((Point.Origin, 10));

        static Point At((int X, int Y) p) => new(Length.FromInches(p.X), Length.FromInches(p.Y));
    }

    // A seam that passes through leads away twice, from whichever patches it is told.
    [Test]
    public void A_seam_that_passes_through_counts_twice_and_no_more()
    {
        var rays = new SeamRays();
        rays.Add(new Rect(Length.Zero, Length.Zero, Inch(2), Inch(1)).ToPolygon());
        rays.Add(new Rect(Length.Zero, Inch(1), Inch(1), Inch(1)).ToPolygon());
        rays.Add(new Rect(Inch(1), Inch(1), Inch(1), Inch(1)).ToPolygon());
        rays.All.Single(r => r.At == new Point(Inch(1), Inch(1))).Ways.Count.ShouldBe(3);

        static Length Inch(int inches) => Length.FromInches(inches);
    }

    // The center of a square-in-a-square lies on its point: cut by itself its edges are on the straight grain, left over from a
    // large square they are on the bias. Neither puts one on the outside.
    [TestCase("square-in-square-set-in-triangles", 0)]
    [TestCase("square-in-square-quick-corners", 4)]
    public void Bias_depends_on_how_a_unit_is_made(string technique, int edges)
    {
        UnitForm form = Written.Form("square-in-square, a on b", "4");
        Recipes.Technique(technique).BiasEdges(form, 0).Length.ShouldBe(edges);
        Recipes.Technique(technique).BiasEdges(form, 1).ShouldBe(form.Patches[1].BiasEdges);
    }

    [Test]
    public void Techniques_add_to_the_bias_edges_of_the_form_and_take_none_away()
    {
        foreach ((string text, int width, int height) in TechniqueTests.Units)
        {
            UnitForm form = Written.Draw(text, $"{width * 3}", $"{height * 3}").Form;
            foreach (Technique technique in TechniqueCatalog.For(form.Kind))
            {
                for (int i = 0; i < form.Patches.Length; i++)
                {
                    foreach (int edge in technique.BiasEdges(form, i))
                    {
                        edge.ShouldBeInRange(0, form.Patches[i].Shape.Corners.Length - 1);
                    }
                    form.Patches[i]
                        .BiasEdges.ShouldBeSubsetOf(
                            technique.BiasEdges(form, i),
                            technique.Keyword
                        );
                }
            }
        }
    }
}
