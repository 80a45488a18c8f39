using System.Collections.Immutable;
using NUnit.Framework;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques;
using Shouldly;

namespace PatternPress.Tests.Quilting.Techniques;

/// <summary>The diagrams show what a maker would have on the table.</summary>
public class SketchTests
{
    private static IEnumerable<TestCaseData> Every =>
        from technique in TechniqueCatalog.All
        from unit in TechniqueTests.Units
        from house in (House[])
            [
                Recipes.Inches,
                Recipes.Oversize with
                {
                    Pressing = PressingStyle.Open,
                },
                Recipes.Metric,
            ]
        let form = Written.Draw(unit.Text, $"{unit.Width * 3}", $"{unit.Height * 3}").Form
        where technique.CanMake(form, house, out _)
        select new TestCaseData(technique.Keyword, form, house).SetArgDisplayNames(
            technique.Keyword,
            unit.Text,
            $"{house.Unit} {house.Cutting}"
        );

    [TestCaseSource(nameof(Every))]
    public void Frames_are_sound(string technique, UnitForm form, House house)
    {
        Recipe recipe = Recipes.Of(technique, form, house);
        foreach (Step step in recipe.Steps)
        {
            step.Sketch.Frames.ShouldNotBeEmpty();
            step.Sketch.Frames[0].Link.ShouldBe(FrameLink.None);
            foreach (SketchFrame frame in step.Sketch.Frames)
            {
                frame.Shapes.ShouldNotBeEmpty();
                frame.Count.ShouldBePositive();
                foreach (SketchShape shape in frame.Shapes)
                {
                    shape.Shape.Area.SquareInches.Sign.ShouldBe(1, $"{step}: {shape.Shape}");
                    // Paper has no role.
                    shape.Role.ShouldBeInRange(
                        technique is "foundation-paper" or "fused-applique" ? -1 : 0,
                        form.RoleCount - 1
                    );
                }
                Rect bounds = new Polygon([
                    .. frame.Shapes.SelectMany(s => s.Shape.Corners),
                ]).Bounds;
                foreach (SketchLine line in frame.Lines)
                {
                    line.From.ShouldNotBe(line.To);
                    Within(bounds, line.From).ShouldBeTrue($"{step} {line}");
                    Within(bounds, line.To).ShouldBeTrue($"{step} {line}");
                    (line.Kind == SketchLineKind.Dimension).ShouldBe(line.Measure is not null);
                    if (line.Measure is { } measure)
                    {
                        recipe.Measures.Keys.ShouldContain(measure);
                    }
                }
            }
        }
    }

    // What a dimension says is as long as what it is drawn along.
    [TestCaseSource(nameof(Every))]
    public void Dimensions_are_true(string technique, UnitForm form, House house)
    {
        Recipe recipe = Recipes.Of(technique, form, house);
        foreach (Step step in recipe.Steps)
        {
            foreach (SketchLine line in step.Sketch.Frames.SelectMany(f => f.Lines))
            {
                if (line.Measure is { } measure)
                {
                    Point way = line.To - line.From;
                    Length drawn = Length.Max(Abs(way.X), Abs(way.Y));
                    Length told = recipe.Measures[measure];
                    // Patches cut to size are drawn exactly; the text rounds up to the ruler.
                    (told - drawn).ShouldBeGreaterThanOrEqualTo(Length.Zero, $"{step} {measure}");
                    (told - drawn).ShouldBeLessThan(house.Ruler.Step, $"{step} {measure}");
                }
            }
        }
    }

    [TestCaseSource(nameof(Every))]
    public void The_last_picture_is_the_unit_at_its_unfinished_size(
        string technique,
        UnitForm form,
        House house
    )
    {
        Recipe recipe = Recipes.Of(technique, form, house);
        SketchFrame last = recipe.Steps[^1].Sketch.Frames[^1];
        Rect size = new Polygon([.. last.Shapes.SelectMany(s => s.Shape.Corners)]).Bounds;
        size.Width.ShouldBe(recipe.UnfinishedWidth);
        size.Height.ShouldBe(recipe.UnfinishedHeight);
        last.Shapes.ShouldAllBe(s => s.Side == FabricSide.Right);
        last.Shapes.Length.ShouldBe(form.Patches.Length + form.Overlays.Length);
        // Where the unit is trimmed, the cuts lie inside the larger unit, all round.
        if (recipe.Trim)
        {
            SketchFrame before = recipe.Steps[^1].Sketch.Frames[0];
            before.Lines.Count(l => l.Kind == SketchLineKind.Cut).ShouldBe(4);
            Rect larger = before.Bounds;
            larger.Width.ShouldBeGreaterThan(size.Width);
            larger.Height.ShouldBeGreaterThan(size.Height);
        }
    }

    // Seams beside a diagonal run at the seam allowance from it, on both sides.
    [TestCase("half-square-two-at-a-time", "half-square upper-left, a on b", "sew", 2)]
    [TestCase("half-square-eight-at-a-time", "half-square upper-left, a on b", "sew", 4)]
    [TestCase("quarter-square-two-at-a-time", "quarter-square, a b", "sew", 2)]
    [TestCase("quarter-square-two-at-a-time", "quarter-square, a b", "sew-again", 2)]
    [TestCase("geese-four-at-a-time", "geese up, a on b", "sew", 2)]
    [TestCase("geese-four-at-a-time", "geese up, a on b", "sew-again", 2)]
    public void Seams_lie_a_seam_allowance_from_the_line(
        string technique,
        string unit,
        string step,
        int seams
    )
    {
        string height = unit.StartsWith("geese", StringComparison.Ordinal) ? "3" : "6";
        Recipe recipe = Recipes.Of(technique, unit, "6", height);
        SketchFrame frame = recipe.Steps.Single(s => s.Name == step).Sketch.Frames[^1];
        SketchLine[] sewn = [.. frame.Lines.Where(l => l.Kind == SketchLineKind.Sewn)];
        sewn.Length.ShouldBe(seams);
        foreach (SketchLine seam in sewn)
        {
            frame
                .Lines.Where(l => l.Kind == SketchLineKind.Marked)
                .ShouldContain(marked => Math.Abs(Distance(seam, marked) - 0.25) < 1e-9);
        }
        frame
            .Lines.Where(l => l.Kind == SketchLineKind.Marked)
            .ShouldAllBe(marked =>
                sewn.Count(s => Math.Abs(Distance(s, marked) - 0.25) < 1e-9) == 2
            );
    }

    // Sewing two pieces right sides together, cutting between the seams and opening the upper right half mirrors the
    // top layer across the cut. What then lies where must be the unit.
    [TestCase("half-square upper-left, a on b", "half-square-two-at-a-time", "sew")]
    [TestCase("quarter-square, a b", "quarter-square-two-at-a-time", "sew-again")]
    [TestCase("quarter-square, a b c", "quarter-square-two-at-a-time", "sew-again")]
    public void Opening_what_is_sewn_gives_the_unit(string unit, string technique, string step)
    {
        UnitForm form = Written.Form(unit, "3");
        Recipe recipe = Recipes.Of(technique, form);
        SketchFrame frame = recipe.Steps.Single(s => s.Name == step).Sketch.Frames[^1];
        double side = frame
            .Shapes.Where(s => s.Side == FabricSide.Wrong)
            .Max(s => s.Shape.Bounds.Right.Inches.ToDouble());
        bool rising = step == "sew";
        // Places well inside the patches, in either half; each half is a unit, turned by some quarter turns.
        foreach (bool upperHalf in (bool[])[true, false])
        {
            var seen = new List<(double X, double Y, int Role)>();
            foreach (double along in (double[])[0.2, 0.8])
            {
                double aside = upperHalf ? 0.15 : -0.15;
                (double x, double y) = rising
                    ? (along - aside, 1 - along - aside)
                    : (along + aside, along - aside);
                (double mx, double my) = rising ? (1 - y, 1 - x) : (y, x);
                seen.Add((x, y, RoleAt(frame, FabricSide.Right, x * side, y * side, side / 20)));
                // Opened, the right side of the top layer shows at the mirror image of its place.
                seen.Add((mx, my, RoleAt(frame, FabricSide.Wrong, x * side, y * side, 0)));
            }
            Enumerable
                .Range(0, 4)
                .ShouldContain(
                    quarters => seen.All(s => TurnedRole(form, s.X, s.Y, quarters) == s.Role),
                    string.Join(" ", seen)
                );
        }
    }

    private static int TurnedRole(UnitForm form, double x, double y, int quarters)
    {
        for (int i = 0; i < quarters; i++)
        {
            (x, y) = (1 - y, x);
        }
        return PatchRole(form, x, y);
    }

    // A half opened covers the square of its cut size less what the seam takes.
    [Test]
    public void Pressed_half_square_units_are_as_large_as_sewing_makes_them()
    {
        Recipe recipe = Recipes.Of(
            "half-square-two-at-a-time",
            "half-square upper-left, a on b",
            "3"
        );
        SketchFrame frame = recipe.Steps.Single(s => s.Name == "press").Sketch.Frames[0];
        Length side = recipe.Pieces[0].Width - new Length(new Exact(0, new Rational(1, 4)));
        Area right = frame
            .Shapes.Where(s => s.Side == FabricSide.Right)
            .Aggregate(Area.Zero, (sum, s) => sum + s.Shape.Area);
        right.ShouldBe(side * side);
        // The ears: two triangles with legs of s√2.
        Area ears = frame
            .Shapes.Where(s => s.Side == FabricSide.Wrong)
            .Aggregate(Area.Zero, (sum, s) => sum + s.Shape.Area);
        ears.SquareInches.ShouldBe(new Exact(new Rational(1, 8)));
    }

    private static bool Within(Rect rect, Point point) =>
        point.X >= rect.X && point.X <= rect.Right && point.Y >= rect.Y && point.Y <= rect.Bottom;

    private static Length Abs(Length length) => length.Sign < 0 ? -length : length;

    // From the middle of a line to another line, not bounded by its ends.
    private static double Distance(SketchLine from, SketchLine to)
    {
        (double x, double y) = (
            (D(from.From.X) + D(from.To.X)) / 2,
            (D(from.From.Y) + D(from.To.Y)) / 2
        );
        (double dx, double dy) = (D(to.To.X) - D(to.From.X), D(to.To.Y) - D(to.From.Y));
        return Math.Abs(((x - D(to.From.X)) * dy) - ((y - D(to.From.Y)) * dx))
            / Math.Sqrt((dx * dx) + (dy * dy));
    }

    private static double D(Length length) => length.Inches.ToDouble();

    // The lower layer is drawn a little aside, so that an edge of it shows.
    private static int RoleAt(
        SketchFrame frame,
        FabricSide side,
        double x,
        double y,
        double aside
    ) =>
        frame
            .Shapes.Where(s => s.Side == side)
            .Last(s => Contains(s.Shape, x + aside, y + aside))
            .Role;

    private static int PatchRole(UnitForm form, double x, double y) =>
        form.Patches.First(p => Contains(p.Shape, x * D(form.Width), y * D(form.Height))).Role;

    private static bool Contains(Polygon polygon, double x, double y)
    {
        ImmutableArray<Point> corners = polygon.Corners;
        for (int i = 0; i < corners.Length; i++)
        {
            Point a = corners[i],
                b = corners[(i + 1) % corners.Length];
            double cross = ((D(b.X) - D(a.X)) * (y - D(a.Y))) - ((D(b.Y) - D(a.Y)) * (x - D(a.X)));
            if (cross < -1e-12)
            {
                return false;
            }
        }
        return true;
    }
}
