using System.Collections.Immutable;
using CsCheck;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Union;
using PatternPress.Proofing;
using PatternPress.Quilting.Compiling;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Tables;
using PatternPress.Source.Diagnostics;
using PatternPress.Source.Syntax;
using PatternPress.Tests.Quilting.Cutting;
using Point = PatternPress.Quilting.Geometry.Point;

namespace PatternPress.Tests.Quilting.Settings;

/// <summary>Borders of blocks, coping strips, corner blocks, sides that differ, and medallions, whose rounds are borders.</summary>
public sealed class BorderTests
{
    private const string Blocks = """
        pattern: {title: T, edition: 1.0.0, date: 2026-01-01, designer: D}
        fabrics:
          A: {name: Ink, color: "#15233b", usable-width: 60}
          B: {name: Amber, color: "#f2a71b", usable-width: 60}
          C: {name: Rose, color: "#d1495b", usable-width: 60}
        blocks:
          hook:
            size: 5
            map: |
              p q
              r r
            units: {p: "half-square upper-left, a on b", q: square a, r: rectangle b}
          goose:
            size: 4 x 2
            map: G
            units: {G: "geese up, a on b"}
        colorings:
          H: hook a=A b=B
          K: hook a=C b=B
          G: goose a=A b=B
          R: goose a=C b=B
          P: plain C
        """;

    private static string Plain(string width, string height, string borders) =>
        $$"""
            {{Blocks}}
            quilt:
              fill: P
              borders:
            {{Indented(borders)}}
              backing: A
            sizes:
              one: {blocks: 1 x 1}
            """.Replace(
            "blocks:\n  hook:",
            $"blocks:\n  field:\n    size: {width} x {height}\n    map: r\n    units: {{r: rectangle a}}\n  hook:",
            StringComparison.Ordinal
        ).Replace("  P: plain C", "  P: field a=C", StringComparison.Ordinal);

    private static string Indented(string lines) =>
        string.Join('\n', lines.Split('\n').Select(line => "    " + line));

    private static Quilt Resolved(string width, string height, string borders) =>
        Designs.Resolve(Designs.Read(Plain(width, height, borders)))[0];

    private static string Inches(Length length) => LengthText.Inches(length);

    // "Making a Pieced Border Fit", Patchwork Times, 2009-07-01, http://www.patchworktimes.com/borders/making-a-pieced-border-fit/:
    // a quilt of 46 × 58 in with 5 in blocks takes coping strips of 2 in at the sides (10 blocks, 50 in); the same rule gives 1 in
    // at top and bottom (12 blocks, 60 in).
    [Test]
    public void A_coping_strip_is_as_wide_as_published()
    {
        Quilt quilt = Resolved("46", "58", "- {blocks: H, corners: squares A, coping: B}");
        Border coping = quilt.Borders[0];
        coping.IsCoping.ShouldBeTrue();
        Inches(coping.Widths.Left).ShouldBe("2");
        Inches(coping.Widths.Right).ShouldBe("2");
        Inches(coping.Widths.Top).ShouldBe("1");
        quilt.Borders[1].Blocks.Count(b => b.Side == BorderSide.Top).ShouldBe(10);
        quilt.Borders[1].Blocks.Count(b => b.Side == BorderSide.Left).ShouldBe(12);
    }

    // The same page's fudge strip as cut: "2-1/2", the finished width and two seams.
    [Test]
    public void A_coping_strip_is_cut_as_published()
    {
        SizeMaking size = Makings
            .Of(Plain("46", "58", "- {blocks: H, corners: squares A, coping: B}"))
            .Sizes[0];
        Inches(
                size.Cuts.First(c =>
                    c.Purpose is CutPurpose.Border { Number: 1, Part: BorderPart.Sides }
                ).Width
            )
            .ShouldBe("2 1/2");
    }

    // Worked example of an article on spacer borders, seen as a copy without its author's name: a center of 20 1/2 in, blocks of
    // 4 1/8 in, 7 a side make 28 7/8 in: (28 7/8 − 20 1/2) / 2 = 4 3/16 in all round.
    [Test]
    public void A_spacer_for_odd_blocks_is_as_wide_as_published()
    {
        Quilt quilt = Resolved(
            "20 1/2",
            "20 1/2",
            "- {blocks: H, width: 4 1/8, corners: squares A, coping: {fabric: B, at-least: 3, at-most: 5}}"
        );
        quilt.Borders[0].Widths.Even.ShouldBe(Length.FromInches(4, 3, 16));
        quilt.Borders[1].Blocks.Count(b => b.Side == BorderSide.Top).ShouldBe(7);
        Inches(quilt.Width - (Length.FromInches(4, 1, 8) * 2)).ShouldBe("28 7/8");
    }

    // By trying every pair of counts: the widths chosen close both ways, and no pair within the limits differs less or, as even,
    // is narrower.
    [Test]
    public void No_better_coping_strip_exists() =>
        (
            from width in Gen.Int[10, 160]
            from height in Gen.Int[10, 160]
            from repeat in Gen.Int[2, 24]
            from least in Gen.Int[1, 6]
            from room in Gen.Int[1, 12]
            from middle in Gen.Bool
            select (width, height, repeat, least, most: least + room, middle)
        ).Sample(
            c =>
            {
                // In quarters of an inch; the middle is a square block.
                int repeat = c.repeat;
                string borders =
                    $"- {{blocks: H, width: {repeat}/4, corners: squares A, {(c.middle ? "middle: K, " : "")}coping: {{fabric: B, at-least: {c.least}/4, at-most: {c.most}/4}}}}";
                var best = (Apart: double.MaxValue, Sum: double.MaxValue);
                foreach (double side in Widths(c.width))
                {
                    foreach (double end in Widths(c.height))
                    {
                        (double, double) pair = (Math.Abs(side - end), side + end);
                        if (pair.CompareTo(best) < 0)
                        {
                            best = pair;
                        }
                    }
                }
                Compilation result = Compiled(Plain($"{c.width}/4", $"{c.height}/4", borders));
                if (best.Apart == double.MaxValue)
                {
                    result.Diagnostics.Select(d => d.Code).ShouldContain("PP0251");
                    return;
                }
                result.Diagnostics.Select(d => d.Code).ShouldNotContain("PP0251");
                BorderWidths widths = result.Quilts[0].Borders[0].Widths;
                double left = widths.Left.Inches.ToDouble() * 4,
                    top = widths.Top.Inches.ToDouble() * 4;
                (Math.Abs(left - top), left + top).ShouldBe((best.Apart, best.Sum));

                IEnumerable<double> Widths(int run)
                {
                    for (int count = 1; count < 400; count++)
                    {
                        double x = ((count * repeat) - run) / 2.0;
                        // With a middle block, a repeat on both sides of it, or only the middle.
                        if ((!c.middle || count % 2 == 1) && x >= c.least && x <= c.most)
                        {
                            yield return x;
                        }
                    }
                }
            },
            iter: 150,
            threads: 1,
            print: c => $"{c}"
        );

    [Test]
    public void Blocks_point_outward_on_all_sides_and_the_others_run_around()
    {
        Quilt quilt = Resolved("8", "8", "- {blocks: G, corners: squares A}");
        string.Join(
                ' ',
                quilt
                    .Borders[0]
                    .Blocks.GroupBy(b => b.Side)
                    .Select(side => $"{side.Key}:{side.First().Place.Turn.Degrees}")
            )
            .ShouldBe("Left:270 Right:90 Top:0 Bottom:180");
        // The side runs from its left end seen from outside: down at the right, up at the left.
        Point[] right =
        [
            .. quilt
                .Borders[0]
                .Blocks.Where(b => b.Side == BorderSide.Right)
                .Select(b => b.Place.Place.UpperLeft),
        ];
        right.Select(p => Inches(p.Y)).ShouldBe(["2", "6"]);
        quilt
            .Borders[0]
            .Blocks.Where(b => b.Side == BorderSide.Left)
            .Select(b => Inches(b.Place.Place.Y))
            .ShouldBe(["6", "2"]);
    }

    [Test]
    public void Corner_blocks_turn_from_corner_to_corner_and_are_made_to_the_border()
    {
        Quilt quilt = Resolved("8", "10", "- {width: 3, fabric: B, corners: blocks K}");
        BorderBlock[] corners = [.. quilt.Borders[0].Blocks];
        corners.Select(b => b.Place.Turn.Degrees).ShouldBe([0, 90, 180, 270]);
        corners.ShouldAllBe(b => b.Place.Block.Width == Length.FromInches(3));
        corners
            .Select(b => $"{Inches(b.Place.Place.X)},{Inches(b.Place.Place.Y)}")
            .ShouldBe(["0,0", "11,0", "11,13", "0,13"]);
    }

    [Test]
    public void A_middle_stands_in_the_middle_and_what_follows_runs_back() =>
        string.Join(
                ' ',
                Resolved(
                    "20",
                    "20",
                    "- {blocks: G R, middle: P, width: 2, corners: squares A}".Replace(
                        "middle: P",
                        "middle: G/180",
                        StringComparison.Ordinal
                    )
                )
                    .Borders[0]
                    .Blocks.Where(b => b.Side == BorderSide.Top)
                    .Select(b => $"{b.Place.Block.Key}{b.Turn.Degrees}")
            )
            .ShouldBe("G0 R0 G180 R0 G0");

    [Test]
    public void Rounds_that_a_size_leaves_out_keep_their_numbers()
    {
        Pattern pattern = Designs.Read(
            $$"""
            {{Blocks}}
            quilt:
              setting: medallion
              fill: H
              rounds:
                - {width: 1, fabric: A}
                - {blocks: G, corners: squares A, coping: C}
                - {width: 2, fabric: B}
              borders:
                - {width: 4, fabric: C}
              backing: A
            sizes:
              small: {blocks: 1 x 1, rounds: 1}
              middle: {blocks: 1 x 1, rounds: 2}
              large: {blocks: 2 x 2}
            """
        );
        Designs
            .Resolve(pattern)
            .Select(q => string.Join(' ', q.Borders.Select(b => b.Number)))
            .ShouldBe(["1 5", "1 2 3 5", "1 2 3 4 5"]);
    }

    [Test]
    public void A_border_that_does_not_close_names_what_would()
    {
        Diagnostic found = Compiled(Plain("46", "58", "- {blocks: H, corners: squares A}"))
            .Diagnostics.Single(d => d.Severity == Severity.Error);
        found.Code.ShouldBe("PP0251");
        found.Text.ShouldContain(
            "top and bottom 46 in, 9 repeats are 45 in, 10 repeats are 50 in; sides 58 in, 11 repeats are 55 in, 12 repeats are 60 in"
        );
        found.Text.ShouldContain(
            "a coping strip of 2 in at left and right, 1 in or 3 1/2 in at top and bottom would do"
        );
    }

    [TestCase("{width: 2, blocks: H, corners: mitered}", "corners: mitered has no place")]
    [TestCase("{width: 2, fabric: A, blocks: H}", "fabric has no place")]
    [TestCase("{sides: {top: 2}, blocks: H}", "sides has no place")]
    [TestCase("{width: 2, fabric: A, middle: H}", "middle has no place")]
    [TestCase("{width: 2, fabric: A, coping: B}", "coping has no place")]
    [TestCase("{width: 2}", "a border has no fabric")]
    [TestCase("{fabric: A}", "a border has no width")]
    [TestCase("{fabric: A, sides: {top: 2}, corners: mitered}", "corners: mitered has no place")]
    [TestCase("{fabric: A, sides: {top: 2}, corners: squares B}", "corners: squares has no place")]
    [TestCase("{width: 2, blocks: P}", null)]
    [TestCase("{blocks: P}", "a border of plain blocks has no width")]
    [TestCase("{width: 3, blocks: G, after-middle: H}", "differ in length")]
    [TestCase("{blocks: G H}", "is not as high as its border is wide")]
    [TestCase("{width: 2, fabric: A, corners: blocks G}", "is not square")]
    [TestCase("{width: 2, fabric: A, corners: blocks}", "corner blocks needs one coloring")]
    [TestCase("{width: 2, fabric: A, corners: blocks Q}", "coloring \"Q\"")]
    [TestCase("{width: 2, blocks: H, middle: G G}", "the middle of a border needs one block")]
    [TestCase(
        "{width: 9, blocks: H, coping: {fabric: B, at-most: 1}}",
        "no coping strip of 1/2 in to 1 in"
    )]
    public void Borders_that_cannot_be_sewn_are_told(string border, string? title)
    {
        string yaml = $$"""
            {{Blocks}}
            quilt:
              fill: H
              borders: [{{border}}]
              backing: A
            sizes:
              one: {blocks: 4 x 4}
            """;
        string[] errors =
        [
            .. Compiled(yaml)
                .Diagnostics.Where(d => d.Severity == Severity.Error)
                .Select(d => d.Title),
        ];
        if (title is null)
        {
            errors.ShouldBeEmpty();
            return;
        }
        errors.ShouldHaveSingleItem().ShouldContain(title);
    }

    [TestCase("setting: straight\n  rounds: [{width: 1, fabric: A}]", "has no rounds")]
    [TestCase("setting: straight\n  center: on-point", "has no center")]
    [TestCase("setting: medallion\n  triangles: A", "a center set straight has no triangles")]
    public void Keys_of_a_medallion_belong_to_a_medallion(string quilt, string title) =>
        Compiled(
            $$"""
            {{Blocks}}
            quilt:
              {{quilt}}
              fill: H
              backing: A
            sizes:
              one: {blocks: 2 x 2}
            """
        )
            .Diagnostics.First(d => d.Severity == Severity.Error)
            .Title.ShouldContain(title);

    [TestCase("rounds: 2", "at most 1 rounds")]
    [TestCase("rounds: some", "is not a whole number")]
    public void More_rounds_than_there_are_cannot_be_had(string size, string title) =>
        Compiled(
            $$"""
            {{Blocks}}
            quilt:
              setting: medallion
              fill: H
              rounds: [{width: 1, fabric: A}]
              backing: A
            sizes:
              one: {blocks: 2 x 2, {{size}}}
            """
        )
            .Diagnostics.First(d => d.Severity == Severity.Error)
            .Title.ShouldContain(title);

    private static Compilation Compiled(string yaml) =>
        Compiler.Compile("t", SyntaxTree.Read("t.yaml", yaml), null);

    private static Gen<string> Widths { get; } =
        from left in Gen.Int[0, 6]
        from top in Gen.Int[0, 6]
        from right in Gen.Int[0, 6]
        from bottom in Gen.Int[1, 6]
        select "{"
            + string.Join(
                ", ",
                new[] { ("left", left), ("top", top), ("right", right), ("bottom", bottom) }
                    .Where(s => s.Item2 > 0)
                    .Select(s => $"{s.Item1}: {s.Item2}/2")
            )
            + "}";

    private static Gen<string> OneOf(params string[] words) =>
        Gen.Int[0, words.Length - 1].Select(i => words[i]);

    // Every kind of border; those of blocks take a coping strip of any width that may be needed.
    private static Gen<string> Any { get; } =
        from kind in Gen.Int[0, 4]
        from width in Gen.Int[2, 12]
        from widths in Widths
        from fabric in OneOf("A", "B", "C")
        from corners in OneOf("sides-first", "top-first", "squares C", "blocks K", "blocks H/90")
        from blocks in OneOf("G", "G R", "H", "H G/90", "K/180 G", "P H")
        from middle in OneOf(
            "",
            "middle: K, ",
            "middle: P, ",
            "middle: G/90, ",
            "after-middle: X, "
        )
        select kind switch
        {
            0 => $"{{width: {width}/4, fabric: {fabric}, corners: mitered}}",
            1 => $"{{width: {width}/4, fabric: {fabric}, corners: {corners}}}",
            2 =>
                $"{{sides: {widths}, fabric: {fabric}, corners: {(width % 2 == 0 ? "sides-first" : "top-first")}}}",
            _ =>
                $"{{blocks: {blocks}, width: {width}/4, {middle.Replace("X", blocks, StringComparison.Ordinal)}corners: {corners}, coping: {{fabric: {fabric}, at-least: 1/2, at-most: 9}}}}",
        };

    private static Gen<string> Design { get; } =
        from onPoint in Gen.Bool
        from across in Gen.Int[1, 3]
        from down in Gen.Int[1, 3]
        from rounds in Any.Array[0, 3]
        from borders in Any.Array[1, 2]
        from used in Gen.Int[0, 3]
        select $$"""
            {{Blocks}}
            quilt:
              setting: medallion
              center: {{(onPoint ? "on-point" : "straight")}}
              {{(onPoint ? "triangles: A" : "")}}
              fill: {checkerboard: H K}
              rounds: [{{string.Join(", ", rounds)}}]
              borders: [{{string.Join(", ", borders)}}]
              backing: A
            sizes:
              one: {blocks: {{across}} x {{down}}}
              two: {blocks: {{down}} x {{across}}, rounds: {{Math.Min(used, rounds.Length)}}}
            """;

    // The sum of all patches is the whole quilt to the last digit and the drawn polygons cover it without overlap, every patch has a
    // piece it is cut from, and a maker who follows the tables gets the quilt as drawn.
    [Test]
    public void Random_borders_close_exactly() =>
        Design.Sample(
            yaml =>
            {
                Compilation result = Compiled(yaml);
                Diagnostic[] errors =
                [
                    .. result.Diagnostics.Where(d => d.Severity == Severity.Error),
                ];
                // Blocks longer than twice the limit of a coping strip need not come out.
                errors = [.. errors.Where(d => d.Code is not ("PP0251" or "PP0307"))];
                errors.Select(d => $"{d.Code} {d.Title} {d.Text}").ShouldBeEmpty();
                foreach (Quilt quilt in result.Quilts)
                {
                    Closes(quilt);
                }
                if (result.Quilts.Length < 2)
                {
                    return;
                }
                Making making = new Maker().Make(result.Pattern!, result.Quilts);
                making.Problems.ShouldBeEmpty();
                HasPieces(making);
                ProofReport report = new Prover(result.Quilts).Prove(Tabulator.Tabulate(making));
                report
                    .Mistakes.Concat(report.Sizes.SelectMany(s => s.Mistakes))
                    .Where(m => m.Kind != MistakeKind.Excess)
                    .Select(m => m.ToString())
                    .ShouldBeEmpty();
            },
            iter: 24,
            threads: 1,
            print: yaml => yaml
        );

    private static void Closes(Quilt quilt)
    {
        var sum = Area.Zero;
        var shapes = new List<Geometry>();
        double drawn = 0;
        foreach (Patch patch in quilt.Patches())
        {
            patch.Shape.Area.SquareInches.Sign.ShouldBe(1);
            sum += patch.Shape.Area;
            Geometry shape = Drawn(patch.Shape);
            drawn += shape.Area;
            shapes.Add(shape);
        }
        (sum.SquareInches - (quilt.Width * quilt.Height).SquareInches).ShouldBe(Exact.Zero);
        // Grown by a hair, so that edges that meet in doubles do not leave slits.
        Geometry union = UnaryUnionOp.Union(shapes.Select(s => s.Buffer(1e-6)).ToList());
        double whole = quilt.Width.Inches.ToDouble() * quilt.Height.Inches.ToDouble();
        drawn.ShouldBe(whole, 1e-6);
        union.Area.ShouldBe(whole, whole * 1e-4);
        union.Envelope.Area.ShouldBe(whole, whole * 1e-4);
    }

    private static Geometry Drawn(PatternPress.Quilting.Geometry.Polygon shape)
    {
        Coordinate[] corners =
        [
            .. shape.Corners.Select(c => new Coordinate(
                c.X.Inches.ToDouble(),
                c.Y.Inches.ToDouble()
            )),
        ];
        return new NetTopologySuite.Geometries.Polygon(new LinearRing([.. corners, corners[0]]));
    }

    // Every fabric seen in a size is cut in it, and its pieces have at least the area of its patches.
    private static void HasPieces(Making making)
    {
        foreach (SizeMaking size in making.Sizes)
        {
            var seen = new Dictionary<string, double>();
            foreach (Patch patch in size.Quilt.Patches())
            {
                seen[patch.Fabric] =
                    seen.GetValueOrDefault(patch.Fabric) + patch.Shape.Area.SquareInches.ToDouble();
            }
            foreach ((string fabric, double area) in seen)
            {
                size.Cuts.Where(c => c.Fabric == fabric)
                    .Sum(c => c.Count * (c.Width * c.Height).SquareInches.ToDouble())
                    .ShouldBeGreaterThanOrEqualTo(area);
            }
        }
    }
}
