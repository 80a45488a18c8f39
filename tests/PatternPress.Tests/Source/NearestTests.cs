using CsCheck;
using NUnit.Framework;
using PatternPress.Source;
using Shouldly;

namespace PatternPress.Tests.Source;

public sealed class NearestTests
{
    private static readonly string[] Units = ["square", "geese", "half-square", "quarter-square"];

    [TestCase("gese", "geese")]
    [TestCase("geees", "geese")]
    [TestCase("egese", "geese")]
    [TestCase("GEESE", "geese")]
    [TestCase("sqaure", "square")]
    [TestCase("half square", "half-square")]
    [TestCase("halfsquare", "half-square")]
    [TestCase("triangle", null)]
    [TestCase("xy", null)]
    [TestCase("", null)]
    public void A_mistyped_name_finds_the_one_meant(string word, string? meant) =>
        Nearest.To(word, Units).ShouldBe(meant);

    [Test]
    public void An_only_candidate_is_offered_whatever_was_typed() =>
        Nearest.To("something", ["straight"]).ShouldBe("straight");

    [Test]
    public void Without_candidates_there_is_none() => Nearest.To("a", []).ShouldBeNull();

    [Test]
    public void Letter_case_alone_beats_fewer_wrong_letters() =>
        Nearest.To("Lamp", ["lamps", "LAMP", "lame"]).ShouldBe("LAMP");

    [Test]
    public void Of_equals_the_first_is_taken() =>
        Nearest.To("lamq", ["lamp", "lamb"]).ShouldBe("lamp");

    [Test]
    public void A_word_of_any_length_is_answered_at_once() =>
        Nearest.To(new string('x', 1_000_000), ["straight", "on-point"]).ShouldBeNull();

    // Damerau, "A technique for computer detection and correction of spelling errors", CACM 7(3), 1964: one wrong,
    // missing or extra letter or one swap of neighbours is one error.
    [TestCase("abcd", "abcd", 0)]
    [TestCase("abcd", "abxd", 1)]
    [TestCase("abcd", "abd", 1)]
    [TestCase("abcd", "abccd", 1)]
    [TestCase("abcd", "acbd", 1)]
    [TestCase("", "abc", 3)]
    [TestCase("kitten", "sitting", 3)]
    [TestCase("ca", "abc", 3)]
    public void Distance_counts_single_errors(string left, string right, int errors) =>
        Nearest.Distance(left, right).ShouldBe(errors);

    [Test]
    public void Distance_is_symmetric_and_bounded()
    {
        var word = Gen.Char["abc"].Array[0, 8].Select(letters => new string(letters));
        Gen.Select(word, word)
            .Sample(
                (left, right) =>
                {
                    var distance = Nearest.Distance(left, right);
                    distance.ShouldBe(Nearest.Distance(right, left));
                    distance.ShouldBeInRange(
                        Math.Abs(left.Length - right.Length),
                        Math.Max(left.Length, right.Length)
                    );
                    (distance == 0).ShouldBe(left == right);
                },
                iter: 5000
            );
    }
}
