using System.Collections.Immutable;
using CsCheck;
using PatternPress.Proofing;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Tables;
using PatternPress.Tests.Quilting.Cutting;

namespace PatternPress.Tests.Quilting.Resolving;

/// <summary>Blocks inside blocks.</summary>
public sealed class InnerBlockTests
{
    private static string Source(string turn, string frame, string more = "") =>
        $$"""
            pattern: {title: T, edition: 1.0.0, date: 2026-01-01, designer: D}
            fabrics:
              A: {name: Ink, color: "#15233b"}
              B: {name: Amber, color: "#f2a71b"}
              C: {name: Rose, color: "#d1495b"}
            blocks:
              outer:
                size: 12
                columns: {{frame}}
                rows: {{frame}}
                map: |
                  f f f
                  g I h
                  e e e
                units:
                  f: rectangle edge
                  e: rectangle edge
                  g: rectangle edge
                  h: rectangle edge
                  I: "block inner{{turn}}{{more}}"
              inner:
                size: 8
                map: |
                  G G s
                  G G s
                  F F k
                units:
                  G: half-square upper-left, ray on sky
                  s: rectangle sky
                  F: geese up, ray on sky
                  k: square core
            colorings:
              X: outer edge=A ray=B sky=C core=A
              Y: inner ray=B sky=C core=A
            quilt: {fill: X}
            sizes:
              one: {blocks: 2 x 2}
            """;

    // In its region the inner block looks as it does by itself at that size, turned.
    [TestCase("", 0)]
    [TestCase("/90", 1)]
    [TestCase("/180", 2)]
    [TestCase("/270", 3)]
    public void The_inner_block_is_drawn_in_its_region_as_it_is_by_itself(string turn, int quarters)
    {
        Quilt quilt = Designs.Resolve(Designs.Read(Source(turn, "1 4 1"))).Single();
        BlockPlace whole = quilt.Places[0];
        var alone = new Length[] { Length.FromInches(8) };
        string yaml = Source(turn, "1 4 1")
            .Replace("{fill: X}", "{fill: Y}")
            .Replace("2 x 2}", "1 x 1, block: 8}");
        Quilt other = Designs.Resolve(Designs.Read(yaml)).Single();
        IEnumerable<string> Shapes(IEnumerable<Patch> patches) =>
            patches
                .Select(p =>
                    p.Fabric
                    + " "
                    + string.Join(
                        ' ',
                        p.Shape.Corners.Select(c => $"{c}").Order(StringComparer.Ordinal)
                    )
                )
                .Order(StringComparer.Ordinal);
        var at = new Point(Length.FromInches(2), Length.FromInches(2));
        string[] expected =
        [
            .. Shapes(
                other
                    .Places[0]
                    .Patches()
                    .Select(p =>
                        p with
                        {
                            Shape = p
                                .Shape.Turned(new Turn(quarters), alone[0], alone[0])
                                .MoveBy(at),
                        }
                    )
            ),
        ];
        string[] found = [.. Shapes(whole.Patches())];
        expected.ShouldBeSubsetOf(found);
        found.Length.ShouldBe(expected.Length + 4);
    }

    [Test]
    public void The_inner_block_is_sewn_before_the_row_it_is_in()
    {
        Quilt quilt = Designs.Resolve(Designs.Read(Source("", "1 4 1"))).Single();
        var rows = SewingOrder.Of(quilt.Places[0].Block.Block!).ShouldBeOfType<SewingOrder.Group>();
        rows.Parts.Length.ShouldBe(3);
        var row = rows.Parts[1].ShouldBeOfType<SewingOrder.Group>();
        row.Parts.Length.ShouldBe(3);
        var inner = row.Parts[1].ShouldBeOfType<SewingOrder.Inner>();
        inner.Block.Key.ShouldBe("inner");
        inner.Units().Count().ShouldBe(4);
    }

    // Whatever the frame, turn and names of parts: the areas balance, the grid closes and the proof finds the printed size of the
    // inner block.
    [Test]
    public void Random_frames_and_turns_are_sewn_as_drawn() =>
        (
            from quarters in Gen.Int[0, 3]
            from edge in Gen.Int[1, 4]
            from middle in Gen.Int[2, 9]
            from renamed in Gen.Bool
            select (quarters, edge, middle, renamed)
        ).Sample(
            design =>
            {
                string yaml = Source(
                    $"/{design.quarters * 90}",
                    $"{design.edge} {design.middle} {design.edge}",
                    design.renamed ? ", core=edge" : ""
                );
                if (design.renamed)
                {
                    yaml = yaml.Replace(
                        "outer edge=A ray=B sky=C core=A",
                        "outer edge=A ray=B sky=C"
                    );
                }
                Making making = Makings.Of(yaml, new FabricPlanner());
                making.Problems.ShouldBeEmpty();
                Quilt quilt = making.Sizes[0].Quilt;
                Area sum = Area.Zero;
                foreach (Patch patch in quilt.Patches())
                {
                    sum += patch.Shape.Area;
                }
                sum.ShouldBe(quilt.Width * quilt.Height);
                ImmutableArray<Quilt> drawing = [quilt];
                ProofReport report = new Prover(drawing).Prove(Tabulator.Tabulate(making));
                report
                    .Mistakes.Concat(report.Sizes.SelectMany(s => s.Mistakes))
                    .Where(m => m.Kind != MistakeKind.Excess)
                    .Select(m => m.ToString())
                    .ShouldBeEmpty();
            },
            iter: 30,
            threads: 1
        );
}
