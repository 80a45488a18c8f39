using PatternPress.Quilting.Compiling;
using PatternPress.Source.Syntax;

namespace PatternPress.Tests.Quilting.Compiling;

/// <summary>Numbers that no designer means: each gets a message, none a crash.</summary>
public sealed class HostileNumberTests
{
    private static Compilation Compile(string house, string blocks, string quilt, string sizes) =>
        Compiler.Compile(
            "test",
            SyntaxTree.Read(
                "test.quilt.yaml",
                $$"""
                pattern: {title: T, edition: 1.0.0, date: 2026-01-01, designer: D, skill: any, about: A}
                house: { {{house}} }
                fabrics:
                  A: {name: Ink, color: "#15233b"}
                  B: {name: Amber, color: "#f2a71b"}
                blocks: { {{blocks}} }
                colorings: {K: b a=A, L: b a=B}
                quilt: {fill: {checkerboard: K L}, binding: B, backing: A, {{quilt}} }
                sizes: { {{sizes}} }
                """
            ),
            null
        );

    private const string Square = "b: {size: 6, map: s, units: {s: square a}}";
    private const string Three = "s: {blocks: 3 x 3}";

    [Test]
    public void Fractions_without_a_common_ruler_are_told_and_do_not_overflow()
    {
        int[] primes = [997, 991, 983, 977, 971, 967, 953, 947, 941, 937];
        string borders = string.Join(", ", primes.Select(p => $"{{width: 2 1/{p}, fabric: A}}"));
        Compilation result = Compile("", Square, $"borders: [{borders}]", Three);
        result.Diagnostics.ShouldContain(d =>
            d.Code == "PP0215" && d.Title.Contains("common", StringComparison.Ordinal)
        );
        result.HasErrors.ShouldBeTrue();
    }

    [Test]
    public void Shares_of_a_block_without_a_common_measure_are_told_and_do_not_overflow()
    {
        string shares = string.Join(
            ' ',
            "1/997 1/991 1/983 1/977 1/971 1/967 1/953 1/947".Split(' ')
        );
        Compilation result = Compile(
            "",
            $"b: {{size: 6, columns: {shares}, map: s t s t s t s t, units: {{s: rectangle a, t: rectangle a}}}}",
            "",
            Three
        );
        result.Diagnostics.ShouldContain(d => d.Code == "PP0215");
    }

    [TestCase(
        "seam: 1/997, ruler: 1/991, yard-step: 1/983, squaring: 1/977, end-squaring: 1/971, oversize: 1/967"
    )]
    [TestCase(
        "usable-width: 40 1/997, seam: 1/991, binding-width: 2 1/983, backing-width: 40 1/977"
    )]
    [TestCase("shrinkage: 1/997, allowance: 1/991, seam: 1/983, ruler: 1/977, squaring: 1/971")]
    public void House_rules_in_unlike_fractions_are_computed_or_told(string house)
    {
        Compilation result = Compile(
            house,
            Square,
            "borders: [{width: 2 1/953, fabric: A}]",
            Three
        );
        (result.Tables is not null || result.HasErrors).ShouldBeTrue();
    }

    [TestCase("usable-width: 5", "PP0303")]
    [TestCase("usable-width: 1/4", "PP0303")]
    [TestCase("end-squaring: 40", "PP0303")]
    public void A_piece_wider_than_any_strip_is_told_with_its_fabric_and_sizes(
        string house,
        string code
    )
    {
        Compilation result = Compile(house, Square, "", Three);
        var found = result.Diagnostics.First(d => d.Code == code);
        found.Title.ShouldContain("\"A\"");
        string all = found.Title + found.Primary.Text + found.Text;
        all.ShouldContain("6 1/2 in");
    }

    [Test]
    public void Very_many_pieces_are_told()
    {
        Compilation result = Compile("", Square, "", "s: {blocks: 99999 x 99999}");
        result.HasErrors.ShouldBeTrue();
        result.Diagnostics.ShouldContain(d => d.Code == "PP0220");
    }
}
