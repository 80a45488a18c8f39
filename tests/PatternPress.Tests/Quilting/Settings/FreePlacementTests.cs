using System.Collections.Immutable;
using CsCheck;
using PatternPress.Proofing;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Rules;
using PatternPress.Quilting.Tables;
using PatternPress.Source.Diagnostics;
using PatternPress.Tests.Quilting.Cutting;

namespace PatternPress.Tests.Quilting.Settings;

/// <summary>Blocks placed one by one.</summary>
public sealed class FreePlacementTests
{
    private static string Source(IEnumerable<string> places, string blocks = "1 x 1") =>
        $$"""
            pattern: {title: T, edition: 1.0.0, date: 2026-01-01, designer: D}
            fabrics:
              A: {name: Ink, color: "#15233b", usable-width: 40}
              B: {name: Amber, color: "#f2a71b", usable-width: 40}
            blocks:
              pair:
                map: |
                  a b
                  b a
                units: {a: square a, b: square b}
            colorings:
              S: pair a=A b=B
              P: plain A
              Q: plain B
            quilt:
              setting: free
              places: |
            {{string.Join('\n', places.Select(p => "    " + p))}}
            sizes:
              one: {blocks: {{blocks}}}
            """;

    private static string[] Faults(params string[] places)
    {
        var findings = new FindingCollector(["one"]);
        var pattern = Designs.Read(Source(places));
        BlockSet blocks = QuiltResolver.ResolveBlocks(pattern, findings);
        QuiltResolver.Resolve(pattern, pattern.Sizes[0], blocks, findings).ShouldBeNull();
        return
        [
            .. findings
                .ToDiagnostics()
                .Select(d => $"{d.Code} line {d.Primary.Span.StartLine}: {d.Text}"),
        ];
    }

    [Test]
    public void Overlaps_are_told_with_both_blocks_and_what_they_share() =>
        Faults("S 6 at 0, 0", "P 6 at 5 1/2, 2", "Q 6 x 6 at 12, 0")
            .ShouldHaveSingleItem()
            .ShouldBe(
                "PP0266 line 19: one: both cover 1/2 × 4 in, 5 1/2 in from the left and 2 in from the top"
            );

    [Test]
    public void Every_gap_is_told_with_its_size_and_place() =>
        Faults("S 6 at 0, 0", "P 2 x 4 at 8, 0", "Q 10 x 2 at 0, 8")
            .ShouldHaveSingleItem()
            .ShouldBe(
                "PP0267 line 17: one: nothing covers 2 × 8 in, 6 in from the left and 0 in from the top\n"
                    + "one: nothing covers 2 × 4 in, 8 in from the left and 4 in from the top\n"
                    + "one: nothing covers 6 × 2 in, 0 in from the left and 6 in from the top"
            );

    // Any layout that is cut through or around at random, given piece by piece in any order, is sewn as drawn, repeated or not;
    // moved by a half inch, any one piece lies over another or leaves a gap.
    [Test]
    public void Random_placements_fill_exactly_or_are_refused() =>
        (
            from boxes in InSectionsTests.Cut(0, 0, 20, 16, 2)
            from order in Gen.Shuffle(Enumerable.Range(0, boxes.Length).ToArray())
            from moved in Gen.Int[0, boxes.Length - 1]
            from repeats in Gen.Int[1, 3]
            select (boxes, order, moved, repeats)
        )
            .Where(layout => layout.boxes.Length is > 1 and < 40)
            .Sample(
                layout =>
                {
                    string[] lines =
                    [
                        .. layout.order.Select(i =>
                            Line(layout.boxes[i], i, new Point(Length.Zero, Length.Zero))
                        ),
                    ];
                    Making making = Makings.Of(
                        Source(lines, $"{layout.repeats} x 2"),
                        new FabricPlanner()
                    );
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
                    int at = Array.IndexOf(layout.order, layout.moved);
                    lines[at] = Line(
                        layout.boxes[layout.moved],
                        layout.moved,
                        new Point(Length.FromInches(0, 1, 2), Length.Zero)
                    );
                    Faults(lines).ShouldNotBeEmpty();
                },
                iter: 40,
                threads: 1
            );

    private static string Line(Rect box, int number, Point by)
    {
        string size =
            $"{LengthText.Inches(box.Width)} x {LengthText.Inches(box.Height)} at {LengthText.Inches(box.X + by.X)}, {LengthText.Inches(box.Y + by.Y)}";
        return (
                box.Width == box.Height && number % 2 == 0 ? "S "
                : number % 3 == 0 ? "P "
                : "Q "
            ) + size;
    }
}
