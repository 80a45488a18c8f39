using PatternPress.Source.Diagnostics;

namespace PatternPress.Tests.Quilting.Rules;

/// <summary>Which typed numbers are told, and which are left alone.</summary>
public sealed class TypedNumberTests
{
    // The base pattern's throw finishes at 54 × 70 in: 6 × 8 blocks of 8 in and a border of 3 in.
    private static IEnumerable<string> Told(string about)
    {
        string yaml = File.ReadAllText(
                Path.Combine(Repository.Root, "tests", "cases", "rules", "base.quilt.yaml")
            )
            .ReplaceLineEndings("\n")
            .Replace(
                "about: Stars over quiet water.",
                $"about: |\n    {about}",
                StringComparison.Ordinal
            );
        return Proofreading
            .Of("t.quilt.yaml", yaml, out var source)
            .Select(d => $"{d.Code} {source.Slice(d.Primary.Span)}");
    }

    [TestCase("It finishes at 54 x 70 in.", "PP0401 54 x 70 in")]
    [TestCase("It finishes at 54\" x 70\".", "PP0401 54\" x 70\"")]
    [TestCase("It finishes at 70 × 54 inches.", "PP0401 70 × 54 inches")]
    [TestCase("It finishes at 55 x 70 in.", "PP0402 55 x 70 in")]
    [TestCase("Made of 48 blocks.", "PP0401 48 blocks")]
    [TestCase("Made of 24 blocks of one kind.", null)]
    [TestCase("Made of 49 blocks.", "PP0402 49 blocks")]
    [TestCase("Made of 6 x 8 blocks.", null)]
    [TestCase("Made of 7 x 8 blocks.", "PP0402 7 x 8 blocks")]
    [TestCase("An 8-inch block.", "PP0401 8-inch block")]
    [TestCase("An 8 1/2 in block before it is joined.", "PP0401 8 1/2 in block")]
    [TestCase("An 8½ in block before it is joined.", "PP0401 8½ in block")]
    [TestCase("A 9 in block.", "PP0402 9 in block")]
    [TestCase("Takes 99 yards of patience.", "PP0402 99 yards")]
    // Numbers that mean nothing computed.
    [TestCase("Our 2nd pattern, the 15th of 2026, for 3 friends.", null)]
    [TestCase("A fat quarter of 18 x 21 in, and 1/4 in seams.", null)]
    [TestCase("See https://example.org/54x70 and [here](https://example.org/48-blocks).", null)]
    [TestCase("It finishes at {{ size \"throw\" }}.", null)]
    [TestCase("Sew 2 blocks together.", null)]
    [TestCase("Version 54.70 of fabric A48 blocks nothing.", null)]
    public void Numbers_in_prose(string about, string? told) =>
        Told(about).ShouldBe(told is null ? [] : [told]);

    [Test]
    public void Several_numbers_come_in_their_order() =>
        Told("48 blocks make 54 x 70 in.").ShouldBe(["PP0401 48 blocks", "PP0401 54 x 70 in"]);
}
