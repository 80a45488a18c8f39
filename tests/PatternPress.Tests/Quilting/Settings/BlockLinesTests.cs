using System.Collections.Immutable;
using CsCheck;
using PatternPress.Proofing;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Settings.Fills;
using PatternPress.Quilting.Tables;
using PatternPress.Source;
using PatternPress.Tests.Quilting.Cutting;

namespace PatternPress.Tests.Quilting.Settings;

/// <summary>Strippy and staggered quilts: lines of blocks, strips between them, half blocks at their ends.</summary>
public sealed class BlockLinesTests
{
    private static Length Inches(int whole) => Length.FromInches(whole);

    private static string Source(string quilt, string blocks, string half = "3 x 6") =>
        $$"""
            pattern: {title: T, edition: 1.0.0, date: 2026-01-01, designer: D}
            fabrics:
              A: {name: Ink, color: "#15233b"}
              B: {name: Amber, color: "#f2a71b"}
              C: {name: Rose, color: "#d1495b"}
            blocks:
              pair:
                size: 6
                map: a b
                units: {a: rectangle a, b: rectangle b}
              half:
                size: {{half}}
                map: |
                  a
                  b
                units: {a: rectangle a, b: rectangle b}
            colorings:
              X: pair a=A b=B
              Y: pair a=C b=B
              H: half a=A b=C
              P: plain B
            quilt: { {{quilt}} }
            sizes:
              one: {blocks: {{blocks}}}
            """;

    private static Quilt Only(string yaml) => Designs.Resolve(Designs.Read(yaml)).Single();

    [Test]
    public void A_strippy_quilt_is_its_columns_and_the_strips_between_them()
    {
        Quilt quilt = Only(
            Source("setting: strippy, sashing: {width: 2, fabric: C}, fill: {rows: X Y}", "4 x 5")
        );
        (quilt.Width, quilt.Height).ShouldBe((Inches((4 * 6) + (3 * 2)), Inches(5 * 6)));
        quilt.Sashes.Length.ShouldBe(3);
        quilt.Sashes.ShouldAllBe(s => s.Kind == SashKind.Column && s.Place.Height == quilt.Height);
    }

    [Test]
    public void Shifted_rows_begin_and_end_with_half_a_block()
    {
        Quilt quilt = Only(Source("setting: staggered, ends: H H/180, fill: {rows: X Y}", "3 x 4"));
        (quilt.Width, quilt.Height).ShouldBe((Inches(18), Inches(24)));
        string Row(int row) =>
            string.Join(
                ' ',
                quilt
                    .Places.Where(p => p.Row == row)
                    .Select(p => $"{p.Block.Key}{p.Turn.Degrees}@{p.Place.X.Inches.ToDouble()}")
            );
        Row(0).ShouldBe("X0@0 X0@6 X0@12");
        Row(1).ShouldBe("H0@0 Y0@3 Y0@9 H180@15");
    }

    [Test]
    public void Shifted_columns_take_plain_ends_half_as_high()
    {
        Quilt quilt = Only(
            Source("setting: staggered, along: columns, ends: P, fill: {rows: X Y}", "2 x 3")
        );
        (quilt.Width, quilt.Height).ShouldBe((Inches(12), Inches(18)));
        quilt
            .Places.Where(p => p.Place.X.Sign > 0)
            .Select(p => $"{p.Block.Key} {p.Place.Y.Inches.ToDouble()}")
            .ShouldBe(["P 0", "Y 3", "Y 9", "P 15"]);
    }

    // Every size of block that a quilt size asks for halves with it.
    [Test]
    public void Half_blocks_follow_the_size_of_the_blocks()
    {
        Quilt quilt = Only(
            Source("setting: staggered, ends: H, fill: X", "3 x 2")
                .Replace("3 x 2}", "3 x 2, block: 9}")
        );
        (quilt.Width, quilt.Height).ShouldBe((Inches(27), Inches(18)));
    }

    [Test]
    public void Random_lines_are_sewn_as_drawn() =>
        (
            from columns in Gen.Int[1, 6]
            from rows in Gen.Int[1, 6]
            from strip in Gen.Int[0, 3]
            from around in Gen.Bool
            from kind in Gen.Int[0, 3]
            select (columns, rows, strip, around, kind)
        ).Sample(
            design =>
            {
                string sashing =
                    design.strip == 0 && design.kind != 0
                        ? ""
                        : $", sashing: {{width: {design.strip + 1}, fabric: C, around: {(design.around ? "yes" : "no")}}}";
                string quilt = design.kind switch
                {
                    0 => "setting: strippy, fill: {checkerboard: X Y}",
                    1 => "setting: staggered, ends: H H/180, fill: {rows: X Y}",
                    2 => "setting: staggered, ends: P, fill: {diagonals: X Y}",
                    _ => "setting: staggered, along: columns, ends: H, fill: {rings: X Y}",
                };
                Making making = Makings.Of(
                    Source(
                        quilt + sashing,
                        $"{design.columns} x {design.rows}",
                        design.kind == 3 ? "6 x 3" : "3 x 6"
                    ),
                    new FabricPlanner()
                );
                making.Problems.ShouldBeEmpty();
                Quilt drawn = making.Sizes[0].Quilt;
                Area sum = Area.Zero;
                foreach (Patch patch in drawn.Patches())
                {
                    sum += patch.Shape.Area;
                    Rect bounds = patch.Shape.Bounds;
                    bounds.Right.ShouldBeLessThanOrEqualTo(drawn.Width);
                    bounds.Bottom.ShouldBeLessThanOrEqualTo(drawn.Height);
                }
                sum.ShouldBe(drawn.Width * drawn.Height);
                ImmutableArray<Quilt> drawing = [drawn];
                ProofReport report = new Prover(drawing).Prove(Tabulator.Tabulate(making));
                report
                    .Mistakes.Concat(report.Sizes.SelectMany(s => s.Mistakes))
                    .Where(m => m.Kind != MistakeKind.Excess)
                    .Select(m => m.ToString())
                    .ShouldBeEmpty();
            },
            iter: 80,
            threads: 1
        );

    [Test]
    public void A_scatter_heeds_the_two_places_that_a_shifted_one_touches() =>
        (from rows in Gen.Int[1, 6] from columns in Gen.Int[2, 6] select (rows, columns)).Sample(
            size =>
            {
                var fill = new Fill(
                    FillKind.Scatter,
                    [
                        [.. "abcd".Select(c => new FillCell($"{c}", Turn.None, Span.None))],
                    ],
                    5,
                    Span.None
                );
                FillCatalog
                    .Of(FillKind.Scatter)
                    .TrySpread(
                        fill,
                        new FillGrid(size.rows, size.columns) { Shifted = true },
                        out FillCell[][]? cells,
                        out string? problem
                    )
                    .ShouldBeTrue(problem);
                for (int r = 0; r < size.rows; r++)
                {
                    cells![r].Length.ShouldBe(r % 2 == 0 ? size.columns : size.columns - 1);
                    for (int c = 1; c < cells[r].Length; c++)
                    {
                        cells[r][c].Coloring.ShouldNotBe(cells[r][c - 1].Coloring);
                    }
                    for (int c = 0; r % 2 == 1 && c < cells[r].Length; c++)
                    {
                        cells[r][c].Coloring.ShouldNotBe(cells[r - 1][c].Coloring);
                        cells[r][c].Coloring.ShouldNotBe(cells[r - 1][c + 1].Coloring);
                    }
                }
            },
            iter: 40,
            threads: 1
        );
}
