using NUnit.Framework;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Techniques;
using Shouldly;

namespace PatternPress.Tests.Quilting.Techniques;

/// <summary>Strip sets that are shifted or cut at an angle.</summary>
public class StripVariationTests
{
    // By hand, common practice, no source: cells of 3 × 4 in; strips of 4 1/2 in, rings of 3 1/2 in, 11 to a tube of 40 in.
    [Test]
    public void Bargello_comes_from_one_tube()
    {
        Recipe recipe = Recipes.Of(
            "bargello-strip-tubes",
            "bargello shifts 0 1 2 1, a b c d",
            "12",
            "16"
        );
        recipe.StripSets.Length.ShouldBe(1);
        recipe.StripSets[0].Roles.ShouldBe([0, 1, 2, 3]);
        recipe.StripSets[0].SegmentsPerUnit.ShouldBe(4);
        recipe.StripSets[0].SegmentsPerSet.ShouldBe(11);
        Recipes
            .Cuts(recipe)
            .ShouldBe(
                "1 strip [0] 40 × 4 1/2; 1 strip [1] 40 × 4 1/2; 1 strip [2] 40 × 4 1/2; 1 strip [3] 40 × 4 1/2"
            );
        // 44 rings for 11 units: four tubes.
        recipe.PiecesFor(11).Select(p => p.Count).ShouldBe([4, 4, 4, 4]);
    }

    // By hand, no source: 6 segments of 2 in in a band 12 × 8 in with two stripes of 1 in. A stripe is √2 in high where the side of
    // a segment cuts it; (8 − 2√2 − 2) / 2 = 1.5858 in stay above and below. Outer strips: (1.5858 + 2 + 1/2) / √2 + 1/4 = 3.139 in.
    [Test]
    public void Seminole_band()
    {
        Recipe recipe = Recipes.Of(
            "seminole-angled-segments",
            "seminole 6 segments of 1, a b on c",
            "12",
            "8"
        );
        Recipes
            .Cuts(recipe)
            .ShouldBe(
                "1 strip [0] 40 × 1 1/2; 1 strip [1] 40 × 1 1/2; 2 edge strip [2] 40 × 3 1/4"
            );
        recipe.Pieces[2].Exactly.Height.Inches.ToDouble().ShouldBe(3.13909, 1e-4);
        LengthText.Inches(recipe.Measures["segment"]).ShouldBe("2 1/2");
        // Sewn the set is 8 in high; (20 − 8) / (2 1/2 √2) = 3.39: three pairs from a folded set.
        recipe.StripSets[0].SegmentsPerSet.ShouldBe(6);
        recipe.StripSets[0].Roles.ShouldBe([2, 0, 1, 2]);
        recipe.Trim.ShouldBeTrue();
    }

    // Every outer edge of a seminole band is on the bias; the sides of its stripes are along their strips.
    [Test]
    public void A_seminole_band_says_that_its_edges_are_on_the_bias()
    {
        UnitForm form = Written.Form("seminole 4 segments of 1/2, a on b", "8", "6");
        Technique technique = Recipes.Technique("seminole-angled-segments");
        for (int i = 0; i < form.Patches.Length; i++)
        {
            var corners = form.Patches[i].Shape.Corners;
            for (int edge = 0; edge < corners.Length; edge++)
            {
                bool slanted =
                    corners[edge].X != corners[(edge + 1) % corners.Length].X
                    && corners[edge].Y != corners[(edge + 1) % corners.Length].Y;
                technique.BiasEdges(form, i).Contains(edge).ShouldBe(!slanted);
            }
        }
    }
}
