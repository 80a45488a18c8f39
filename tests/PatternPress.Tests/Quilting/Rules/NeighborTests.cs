using PatternPress.Quilting.Compiling;
using PatternPress.Quilting.Rules;
using PatternPress.Source.Diagnostics;
using PatternPress.Source.Syntax;

namespace PatternPress.Tests.Quilting.Rules;

/// <summary>Two fabrics alike are told exactly where they share a seam.</summary>
public sealed class NeighborTests
{
    // A and B are alike; C and D are like nothing.
    private static IEnumerable<string> Touching(string blocks, string quilt, string size)
    {
        string yaml = $$$"""
            pattern: {title: T, edition: 1.0.0, date: 2026-01-01, designer: D, skill: any, about: Words.}
            fabrics:
              A: {name: One, color: "#f2a71b"}
              B: {name: Two, color: "#f4aa20"}
              C: {name: Three, color: "#15233b"}
              D: {name: Four, color: "#f6ead2"}
            {{{blocks}}}
            quilt: {{{quilt}}}
            sizes: {one: {blocks: {{{size}}}, block: 8}}
            """;
        return Compiler
            .Compile("t", SyntaxTree.Read("t.quilt.yaml", yaml), null)
            .Diagnostics.Where(d =>
                d.Severity >= Severity.Warning && d.Code is not ("PP0231" or "PP0232")
            )
            .Select(d => $"{d.Code} {d.Text.Split('.')[0]}");
    }

    private const string Halves = """
        blocks:
          half: {map: "p q", rows: 2, units: {p: rectangle west, q: rectangle east}}
        colorings:
          AC: half west=A east=C
          BC: half west=B east=C
          CB: half west=C east=B
          AB: half west=A east=B
          PA: plain A
          PB: plain B
          PC: plain C
        """;

    [TestCase(
        "{fill: AB, borders: [{width: 2, fabric: C}]}",
        "1 x 1",
        "in block \"half\" in coloring \"AB\""
    )]
    [TestCase("{fill: AC CB, borders: [{width: 2, fabric: C}]}", "2 x 1", null)]
    [TestCase("{fill: PA PB}", "2 x 1", "where plain block \"PA\" meets plain block \"PB\"")]
    // Turned by a half turn, the halves change places and A lies beside B.
    [TestCase(
        "{fill: AC/180 BC}",
        "2 x 1",
        "where block \"half\" in coloring \"AC\" meets block \"half\" in coloring \"BC\""
    )]
    // Turned by a quarter, A lies at the top, C at the bottom.
    [TestCase(
        "{fill: PB AC/90}",
        "2 x 1",
        "where plain block \"PB\" meets block \"half\" in coloring \"AC\""
    )]
    [TestCase("{fill: AC/270 PC, borders: [{width: 2, fabric: C}]}", "2 x 1", null)]
    [TestCase(
        "{fill: PA, sashing: {width: 1, fabric: B}}",
        "2 x 1",
        "where plain block \"PA\" meets the sashing"
    )]
    // Cornerstones touch sashing only.
    [TestCase(
        "{fill: PA, sashing: {width: 1, fabric: C, cornerstones: B}, borders: [{width: 2, fabric: C}]}",
        "2 x 2",
        null
    )]
    [TestCase(
        "{fill: PC, borders: [{width: 1, fabric: A}, {width: 2, fabric: B}]}",
        "2 x 2",
        "where border 1 meets border 2"
    )]
    [TestCase(
        "{fill: PC, borders: [{width: 1, fabric: A, corners: squares B}]}",
        "2 x 2",
        "where border 1 meets itself"
    )]
    [TestCase("{fill: PA, borders: [{width: 1, fabric: C}, {width: 2, fabric: B}]}", "2 x 2", null)]
    public void Fabrics_alike_are_told_where_they_touch(string quilt, string size, string? where)
    {
        IEnumerable<string> expected = where is null ? [] : [$"PP0421 They touch {where}"];
        Touching(Halves, quilt, size).ShouldBe(expected);
    }

    [Test]
    public void Triangles_touch_along_their_diagonal()
    {
        const string block = """
            blocks:
              half: {map: "h", units: {h: "half-square upper-left, one on two"}}
            colorings:
              X: half one=A two=B
            """;
        Touching(block, "{fill: X/90, borders: [{width: 2, fabric: C}]}", "1 x 1")
            .ShouldBe(["PP0421 They touch in block \"half\" in coloring \"X\""]);
    }
}
