using System.Collections.Immutable;
using CsCheck;
using NUnit.Framework;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques;
using Shouldly;
using Point = PatternPress.Quilting.Geometry.Point;

namespace PatternPress.Tests.Quilting.Techniques;

/// <summary>Half-rectangle triangles: sizes, leans, and what can be trimmed from them.</summary>
public class HalfRectangleTests
{
    // By hand, no source: a 2 × 4 in unit has a diagonal of √20 = 4.472 in. Enlarged about its incircle, a triangle with
    // seams has legs of 2 + 1/4 (1 + 6.472 / 4) = 2.6545 and 4 + 1/4 (1 + 8.472 / 2) = 5.309 in.
    [Test]
    public void Legs_with_their_seams()
    {
        Recipe recipe = Recipes.Of(
            "half-rectangle-two-at-a-time",
            "half-rectangle upper-left, a on b",
            "2",
            "4"
        );
        recipe.Pieces[0].Exactly.Width.Inches.ToDouble().ShouldBe(2.654508, 1e-5);
        recipe.Pieces[0].Exactly.Height.Inches.ToDouble().ShouldBe(5.309017, 1e-5);
        Recipes
            .Cuts(recipe)
            .ShouldBe("1 rectangle [0] 2 7/8 × 5 1/2; 1 rectangle [1] 2 7/8 × 5 1/2");
        recipe.Trim.ShouldBeTrue();
        recipe.Yield.ShouldBe(2);
    }

    // By hand, no source: a 3 × 4 in unit is trimmed to 3 1/2 × 4 1/2. A pair of 3 3/4 × 5 loses 1/4 · 6 1/4 / 5 = 0.3125 in of its
    // width and opens to 3.4375 in: too little. 3 7/8 × 5 1/8 opens to 3.5616 × 4.7105 in and leans by 0.22 degrees less.
    [Test]
    public void The_next_mark_is_cut_where_the_exact_legs_do_not_leave_enough() =>
        Recipes
            .Cuts(
                Recipes.Of(
                    "half-rectangle-single-triangles",
                    "half-rectangle upper-right, a on b",
                    "3",
                    "4"
                )
            )
            .ShouldBe("1 rectangle [0] 3 7/8 × 5 1/8; 1 rectangle [1] 3 7/8 × 5 1/8");

    // Eight ways to write a unit are four of each lean and never a turn of one another.
    [Test]
    public void Leans_are_no_turns_of_each_other()
    {
        foreach (string corner in Corner)
        {
            DrawnUnit upright = Written.Draw($"half-rectangle {corner}, a on b", "2", "4"),
                lying = Written.Draw($"half-rectangle {corner}, a on b", "4", "2");
            // The same corner of a lying rectangle leans the other way when it is stood up.
            upright.Form.ShouldNotBe(lying.Form);
            upright.Form.Variant.ShouldNotBe(lying.Form.Variant);
        }
        UnitForm right = Written.Form("half-rectangle upper-left, a on b", "2", "4"),
            left = Written.Form("half-rectangle upper-right, a on b", "2", "4");
        for (int quarters = 0; quarters < 4; quarters += 2)
        {
            ImmutableArray<Polygon> turned =
            [
                .. right.Patches.Select(p =>
                    p.Shape.Turned(new Turn(quarters), right.Width, right.Height)
                ),
            ];
            foreach (RolePatch patch in left.Patches)
            {
                turned.ShouldNotContain(t =>
                    t.Corners.ToHashSet().SetEquals(patch.Shape.Corners.ToHashSet())
                );
            }
        }
    }

    // The unit is trimmed with its seam through the points a seam inside two corners: what is cut off lies within the
    // sewn pair, and one mark less on either side would not do.
    [Test]
    public void What_is_trimmed_lies_within_what_is_sewn()
    {
        Gen.Select(Gen.Int[4, 60], Gen.Int[4, 60], Gen.Bool, Gen.Bool)
            .Where((a, b, _, _) => a != b && Math.Max(a, b) <= 6 * Math.Min(a, b))
            .Sample(
                (a, b, right, oversize) =>
                {
                    House house = oversize ? Recipes.Oversize : Recipes.Inches;
                    UnitForm form = Written
                        .Draw(
                            $"half-rectangle {(right ? "upper-left" : "upper-right")}, a on b",
                            Length.FromInches(new Rational(a, 8)),
                            Length.FromInches(new Rational(b, 8))
                        )
                        .Form;
                    Recipe recipe = Recipes.Of("half-rectangle-two-at-a-time", form, house);
                    (double w, double h) = (D(recipe.Pieces[0].Width), D(recipe.Pieces[0].Height));
                    double more = oversize ? 0.125 : 0;
                    Spare(form, w, h).ShouldBeGreaterThanOrEqualTo(-1e-5);
                    Spare(form, w - more - 0.125, h - more).ShouldBeLessThan(0);
                    Spare(form, w - more, h - more - 0.125).ShouldBeLessThan(0);
                    SketchFrame trim = recipe.Steps.Single(s => s.Name == "trim").Sketch.Frames[0];
                    foreach (SketchLine line in trim.Lines.Where(l => l.Kind == SketchLineKind.Cut))
                    {
                        Inside(trim.Bounds, line.From).ShouldBeTrue();
                    }
                },
                iter: 200
            );
    }

    // The distance from the unit's corners to the edges of the opened pair, by points: the seam is the diagonal of a
    // rectangle whose legs lost seam / sin at their ends.
    private static double Spare(UnitForm form, double w, double h)
    {
        double angle = Math.Atan2(h, w),
            width = w - (0.25 / Math.Sin(angle)),
            height = h - (0.25 / Math.Cos(angle)),
            turn = Math.Atan2(D(form.Height), D(form.Width)) - angle,
            x = (D(form.Width) / 2) + 0.25,
            y = (D(form.Height) / 2) + 0.25;
        double spare = double.MaxValue;
        foreach ((int i, int j) in new[] { (1, 1), (1, -1), (-1, 1), (-1, -1) })
        {
            double px = (width / 2) + (i * x * Math.Cos(turn)) - (j * y * Math.Sin(turn)),
                py = (height / 2) + (i * x * Math.Sin(turn)) + (j * y * Math.Cos(turn));
            spare = new[] { spare, px, width - px, py, height - py }.Min();
        }
        return spare;
    }

    private static bool Inside(Rect rect, Point point) =>
        point.X >= rect.X && point.X <= rect.Right && point.Y >= rect.Y && point.Y <= rect.Bottom;

    private static readonly string[] Corner =
    [
        "upper-left",
        "upper-right",
        "lower-right",
        "lower-left",
    ];

    private static double D(Length length) => length.Inches.ToDouble();
}
