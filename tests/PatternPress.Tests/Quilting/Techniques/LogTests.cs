using CsCheck;
using NUnit.Framework;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques;
using Shouldly;

namespace PatternPress.Tests.Quilting.Techniques;

/// <summary>Logs around a center: widths that close, lengths in the order of sewing.</summary>
public class LogTests
{
    // By hand, common practice, no source: a center of 1 1/2 in finished is cut 2 in; the first log is as long as the
    // center, each next as long as what lies under it, a log's finished width (1 1/2 in) more on each second turn.
    [Test]
    public void Log_cabin_of_two_rounds()
    {
        Recipe recipe = Recipes.Of("log-cabin-cut-to-length", "log-cabin 2 rounds, a b c", "7 1/2");
        Recipes
            .Cuts(recipe)
            .ShouldBe(
                "1 center [0] 2 × 2; 1 log 1 [1] 2 × 2; 1 log 2 [1] 3 1/2 × 2; 1 log 3 [2] 3 1/2 × 2; "
                    + "1 log 4 [2] 5 × 2; 1 log 5 [1] 5 × 2; 1 log 6 [1] 6 1/2 × 2; 1 log 7 [2] 6 1/2 × 2; "
                    + "1 log 8 [2] 8 × 2"
            );
        recipe.Trim.ShouldBeFalse();
        Round(recipe, 1).ShouldBe("5 × 5");
        Round(recipe, 2).ShouldBe("8 × 8");
    }

    // By hand, common practice, no source: opposite logs are alike, so they are cut together.
    [Test]
    public void Courthouse_steps_of_two_rounds()
    {
        Recipe recipe = Recipes.Of(
            "courthouse-steps-cut-to-length",
            "courthouse-steps 2 rounds center 2 logs 1, a b c",
            "6"
        );
        Recipes
            .Cuts(recipe)
            .ShouldBe(
                "1 center [0] 2 1/2 × 2 1/2; 2 logs 1 and 2 [1] 2 1/2 × 1 1/2; 2 logs 3 and 4 [2] 4 1/2 × 1 1/2; "
                    + "2 logs 5 and 6 [1] 4 1/2 × 1 1/2; 2 logs 7 and 8 [2] 6 1/2 × 1 1/2"
            );
        Round(recipe, 1).ShouldBe("4 1/2 × 4 1/2");
    }

    // By hand, common practice, no source.
    [Test]
    public void Half_log_cabin_of_two_rounds()
    {
        Recipe recipe = Recipes.Of(
            "half-log-cabin-cut-to-length",
            "half-log-cabin 2 rounds center 2 logs 1, a b c",
            "4"
        );
        Recipes
            .Cuts(recipe)
            .ShouldBe(
                "1 center [0] 2 1/2 × 2 1/2; 1 log 1 [1] 2 1/2 × 1 1/2; 1 log 2 [2] 3 1/2 × 1 1/2; "
                    + "1 log 3 [1] 3 1/2 × 1 1/2; 1 log 4 [2] 4 1/2 × 1 1/2"
            );
    }

    [TestCase("log-cabin center 3 logs 1 1/2, a b c", "12", 3)]
    [TestCase("courthouse-steps center 4 logs 1, a b c", "12", 4)]
    [TestCase("half-log-cabin center 2 logs 1, a b c", "7", 5)]
    [TestCase("log-cabin center 1 logs 1/2 and 1, a b c", "10", 6)]
    public void Rounds_follow_from_center_and_logs(string unit, string side, int rounds) =>
        Written
            .Form(unit, side)
            .Patches.Length.ShouldBe(
                (rounds * (unit.StartsWith("half", StringComparison.Ordinal) ? 2 : 4)) + 1
            );

    // 12 in over 9 logs is 1 1/3 in: cut 1 7/8 in, each is 1/24 in too wide, nine of them 3/8 in.
    [Test]
    public void Logs_between_the_marks_are_trimmed_round_by_round()
    {
        UnitForm form = Written.Form("log-cabin 4 rounds, a b c", "12");
        Recipes
            .Technique("log-cabin-cut-to-length")
            .CanMake(form, Recipes.Inches, out string reason)
            .ShouldBeFalse();
        reason.ShouldBe(
            "its logs of 1.333 in, finished, lie between the ruler's marks: cut to the next one, all together would make the unit 0.375 in too large"
        );
        Recipe trimmed = Recipes.Of("log-cabin-trim-each-round", form);
        trimmed.Trim.ShouldBeTrue();
        LengthText.Inches(trimmed.Pieces[1].Height).ShouldBe("2");
        LengthText.Inches(trimmed.UnfinishedWidth).ShouldBe("12 1/2");
        Round(trimmed, 1).ShouldBe("4 1/2 × 4 1/2");
        Round(trimmed, 2).ShouldBe("7 1/4 × 7 1/4");
    }

    // Every log lies along one whole side of what has been sewn before it, and the areas close exactly.
    [Test]
    public void Logs_lie_along_what_is_sewn_before()
    {
        Gen.Select(
                Gen.OneOf("log-cabin", "courthouse-steps", "half-log-cabin"),
                Gen.OneOf("", "counterclockwise ", "lower-left ", "upper-right counterclockwise "),
                Gen.Int[1, 6],
                Gen.Int[1, 40],
                Gen.Int[1, 24],
                Gen.Int[1, 24]
            )
            .Sample(
                (kind, place, rounds, center, first, second) =>
                {
                    bool half = kind == "half-log-cabin";
                    Rational side = half
                        ? default
                        : new Rational(center + (rounds * (first + second)), 8);
                    (Rational width, Rational height) = half
                        ? (
                            new Rational(center + (rounds * first), 8),
                            new Rational(center + (rounds * second), 8)
                        )
                        : (side, side);
                    string words =
                        $"{kind} {(kind == "courthouse-steps" || half ? "" : place)}{rounds} rounds logs {first}/8 and {second}/8, a b c";
                    if (kind == "courthouse-steps")
                    {
                        (width, height) = (
                            new Rational(center + (rounds * first * 2), 8),
                            new Rational(center + (rounds * second * 2), 8)
                        );
                    }
                    UnitForm form = Written
                        .Draw(words, Length.FromInches(width), Length.FromInches(height))
                        .Form;
                    Rect sewn = form.Patches[0].Shape.Bounds;
                    sewn.Width.ShouldBe(Length.FromInches(new Rational(center, 8)));
                    Area area = form.Patches[0].Shape.Area;
                    foreach (RolePatch patch in form.Patches.Skip(1))
                    {
                        Rect log = patch.Shape.Bounds;
                        bool beside = log.Y == sewn.Y && log.Bottom == sewn.Bottom;
                        bool above = log.X == sewn.X && log.Right == sewn.Right;
                        (
                            beside && (log.Right == sewn.X || log.X == sewn.Right)
                            || above && (log.Bottom == sewn.Y || log.Y == sewn.Bottom)
                        ).ShouldBeTrue($"{words}: {log} at {sewn}");
                        Length left = Length.Min(log.X, sewn.X),
                            top = Length.Min(log.Y, sewn.Y);
                        sewn = new Rect(
                            left,
                            top,
                            Length.Max(log.Right, sewn.Right) - left,
                            Length.Max(log.Bottom, sewn.Bottom) - top
                        );
                        area += patch.Shape.Area;
                    }
                    area.ShouldBe(form.Width * form.Height);
                    // A cut piece for every patch.
                    Recipe recipe = Recipes.Of($"{kind}-cut-to-length", form);
                    recipe.Pieces.Sum(p => p.Count).ShouldBe(form.Patches.Length);
                    foreach (RolePatch patch in form.Patches)
                    {
                        Rect place_ = patch.Shape.Bounds;
                        Length seams = Recipes.Inches.Seam * 2;
                        Length[] sides = [place_.Width + seams, place_.Height + seams];
                        recipe.Pieces.ShouldContain(p =>
                            p.Role == patch.Role
                            && sides.Order().SequenceEqual(new[] { p.Width, p.Height }.Order())
                        );
                    }
                },
                iter: 200
            );
    }

    private static string Round(Recipe recipe, int round) =>
        $"{LengthText.Inches(recipe.Measures[$"round-{round}-width"])} × {LengthText.Inches(recipe.Measures[$"round-{round}-height"])}";
}
