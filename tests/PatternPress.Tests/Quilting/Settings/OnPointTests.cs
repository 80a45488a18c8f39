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
using PatternPress.Quilting.Techniques;
using PatternPress.Source;
using PatternPress.Tests.Proofing;
using PatternPress.Tests.Quilting.Cutting;

namespace PatternPress.Tests.Quilting.Settings;

/// <summary>Blocks on a corner with the triangles around them.</summary>
public sealed class OnPointTests
{
    private static Making Plain(string block, int across, int down, string more = "") =>
        Makings.Of(
            $$"""
            pattern: {title: T, edition: 1.0.0, date: 2026-01-01, designer: D}
            fabrics:
              A: {name: Ink, color: "#15233b", usable-width: 60}
              B: {name: Amber, color: "#f2a71b", usable-width: 60}
            colorings:
              P: plain A
            quilt:
              setting: on-point
              fill: P
              triangles: {{(more.Length == 0 ? "B" : $"{{fabric: B, {more}}}")}}
              backing: A
            sizes:
              one: {blocks: {{across}} x {{down}}, block: {{block}}}
            """
        );

    private static (Cut Side, Cut Corner) Squares(Making making) =>
        (
            making.Sizes[0].Cuts.First(c => c.After == PieceCut.TwiceDiagonally),
            making.Sizes[0].Cuts.First(c => c.After == PieceCut.OnceDiagonally)
        );

    // Quilter's Cache, "How to Make Setting Triangles", Marcia Hohn, October 2002, and the chart at lukas.is-a-geek.org (both
    // agree); the row of 12 worked out there: 18.218 -> 18 1/4 and 9.364 -> 9 3/8. Also Moonlight Quilters guild, "On-point
    // settings" (6 in: 9 3/4 and 5 1/8), and in magazines Summer Salsa (6 in), Blowin' in the Wind (11 1/2 in: 17 5/8 and
    // 9 1/8), the IQSC sampler (12 in: 18 1/4).
    [TestCase("4", "7", "3 3/4")]
    [TestCase("5", "8 3/8", "4 1/2")]
    [TestCase("6", "9 3/4", "5 1/8")]
    [TestCase("7", "11 1/4", "5 7/8")]
    [TestCase("8", "12 5/8", "6 5/8")]
    [TestCase("9", "14", "7 1/4")]
    [TestCase("10", "15 1/2", "8")]
    [TestCase("11", "16 7/8", "8 3/4")]
    [TestCase("11 1/2", "17 5/8", "9 1/8")]
    [TestCase("12", "18 1/4", "9 3/8")]
    [TestCase("13", "19 3/4", "10 1/8")]
    [TestCase("14", "21 1/8", "10 7/8")]
    [TestCase("15", "22 1/2", "11 1/2")]
    // Published 23 7/8: the table uses 1.414 (23.874), with √2 the square must be 23.877 in, just above the mark.
    [TestCase("16", "24", "12 1/4")]
    public void Squares_are_cut_as_published(string block, string side, string corner)
    {
        (Cut sides, Cut corners) = Squares(Plain(block, 3, 3));
        LengthText.Inches(sides.Width).ShouldBe(side);
        LengthText.Inches(corners.Width).ShouldBe(corner);
    }

    // Deliberately larger in print: Urban Amish, 9 in: 15 in, which is a float of 1/2 in (14.978); Table Manners, 6 in: 10 and
    // 5 1/2 in; both by adding to the square.
    [Test]
    public void A_float_makes_the_squares_larger_and_so_does_the_house()
    {
        LengthText.Inches(Squares(Plain("9", 3, 3, "float: 1/2")).Side.Width).ShouldBe("15");
        Making making = Plain("6", 3, 3);
        House house = making.Sizes[0].Quilt.House with
        {
            TriangleOversize = Length.FromInches(0, 1, 4),
        };
        Quilt quilt = making.Sizes[0].Quilt;
        Making larger = new Maker().Make(
            making.Pattern,
            [quilt with { Size = quilt.Size with { House = house } }]
        );
        (Cut side, Cut corner) = Squares(larger);
        LengthText.Inches(side.Width).ShouldBe("10");
        LengthText.Inches(corner.Width).ShouldBe("5 3/8");
    }

    // Counts printed in patterns (2(r + c) − 4 side triangles, rc + (r − 1)(c − 1) blocks): 4 x 5, 9 x 10, 4 x 4, 3 x 3, 3 x 4.
    [TestCase(4, 5, 14, 32)]
    [TestCase(9, 10, 34, 162)]
    [TestCase(4, 4, 12, 25)]
    [TestCase(3, 3, 8, 13)]
    [TestCase(3, 4, 10, 18)]
    public void Triangles_and_blocks_are_as_many_as_published(
        int across,
        int down,
        int triangles,
        int blocks
    )
    {
        Quilt quilt = Plain("6", across, down).Sizes[0].Quilt;
        quilt.Places.Length.ShouldBe(blocks);
        quilt.Pieces.Count(p => p.Kind == SettingPieceKind.Side).ShouldBe(triangles);
        quilt.Pieces.Count(p => p.Kind == SettingPieceKind.Corner).ShouldBe(4);
    }

    // Quilter's Cache, "Math Charts", Marcia Hohn, 2002-06-17: diagonals, to the nearest eighth.
    [TestCase("4", "5 5/8")]
    [TestCase("5", "7 1/8")]
    [TestCase("6", "8 1/2")]
    [TestCase("7", "9 7/8")]
    [TestCase("8", "11 3/8")]
    [TestCase("9", "12 3/4")]
    [TestCase("10", "14 1/8")]
    [TestCase("12", "17")]
    [TestCase("14", "19 3/4")]
    public void One_block_on_point_is_as_wide_as_its_diagonal(string block, string diagonal)
    {
        Quilt quilt = Plain(block, 1, 1).Sizes[0].Quilt;
        LengthText.Inches(Ruler.Eighths.Nearest(quilt.Width)).ShouldBe(diagonal);
        quilt.Width.ShouldBe(quilt.Height);
    }

    [Test]
    public void The_rows_are_the_diagonals_and_the_corners_come_last()
    {
        Quilt quilt = Plain("6", 2, 3).Sizes[0].Quilt;
        string[] rows =
        [
            .. quilt.Rows.Select(row =>
                string.Concat(
                    row.Parts.Select(p =>
                        p.Kind == LayoutPartKind.Block
                            ? $"({quilt.Places[p.Index].Row},{quilt.Places[p.Index].Column})"
                            : "t"
                    )
                )
            ),
        ];
        rows.ShouldBe([
            "t(0,0)t",
            "t(2,0)(1,0)(0,1)",
            "(4,0)(3,0)(2,1)t",
            "t(4,1)t",
            "t",
            "t",
            "t",
            "t",
        ]);
    }

    private static Gen<string> Design { get; } =
        from across in Gen.Int[1, 5]
        from down in Gen.Int[1, 5]
        from block in Gen.Int[2, 14]
        from sash in Gen.Int[0, 3]
        from stones in Gen.Bool
        from away in Gen.Int[0, 3]
        from corners in Gen.Bool
        from border in Gen.Bool
        select $$"""
            pattern: {title: T, edition: 1.0.0, date: 2026-01-01, designer: D}
            fabrics:
              A: {name: Ink, color: "#15233b", usable-width: 60}
              B: {name: Amber, color: "#f2a71b", usable-width: 60}
              C: {name: Rose, color: "#d1495b", usable-width: 60}
            blocks:
              kite:
                size: 8
                map: |
                  p q
                  r r
                units: {p: "half-square upper-left, a on b", q: square a, r: rectangle b}
            colorings:
              K: kite a=A b=B
              L: kite a=C b=B
              P: plain C
            quilt:
              setting: on-point
              fill: |
                K/90 L
                P K
              {{(
                sash > 0
                    ? $"sashing: {{width: {sash}/2, fabric: A{(stones ? ", cornerstones: C" : "")}}}"
                    : ""
            )}}
              triangles: {fabric: B{{(corners ? ", corners: A" : "")}}{{(
                sash == 0 && away > 0 ? $", float: {away}/4" : ""
            )}} }
              borders: [{{(border ? "{width: 2, fabric: A}" : "")}}]
              backing: A
            sizes:
              one: {blocks: {{across}} x {{down}}, block: {{block}}}
            """;

    // The sum of all patches is the whole quilt to the last digit, all lie within it, the outside closes, every patch has a
    // piece that holds it with its seams, and a maker who follows the tables gets the quilt as drawn.
    [Test]
    public void Random_quilts_close_exactly() =>
        Design.Sample(
            yaml =>
            {
                Making making = Makings.Of(yaml, new FabricPlanner());
                making.Problems.ShouldBeEmpty();
                SizeMaking size = making.Sizes[0];
                Quilt quilt = size.Quilt;
                Area sum = Area.Zero;
                Length around = Length.Zero;
                foreach (Patch patch in quilt.Patches())
                {
                    patch.Shape.Area.SquareInches.Sign.ShouldBe(1);
                    sum += patch.Shape.Area;
                    Rect bounds = patch.Shape.Bounds;
                    bounds.X.Sign.ShouldBeGreaterThanOrEqualTo(0);
                    bounds.Y.Sign.ShouldBeGreaterThanOrEqualTo(0);
                    (quilt.Width - bounds.Right).Sign.ShouldBeGreaterThanOrEqualTo(0);
                    (quilt.Height - bounds.Bottom).Sign.ShouldBeGreaterThanOrEqualTo(0);
                    around += OnTheEdge(patch.Shape, quilt);
                }
                (sum.SquareInches - (quilt.Width * quilt.Height).SquareInches).ShouldBe(Exact.Zero);
                around.ShouldBe((quilt.Width + quilt.Height) * 2);
                // Every part of the layout is sewn once.
                quilt
                    .Rows.SelectMany(r => r.Parts)
                    .Distinct()
                    .Count()
                    .ShouldBe(quilt.Places.Length + quilt.Sashes.Length + quilt.Pieces.Length);
                quilt
                    .Rows.Sum(r => r.Parts.Length)
                    .ShouldBe(quilt.Places.Length + quilt.Sashes.Length + quilt.Pieces.Length);
                foreach (SettingPiece piece in quilt.Pieces)
                {
                    HasItsSquare(piece, size);
                }
                ImmutableArray<Quilt> drawing = [quilt];
                ProofReport report = new Prover(drawing).Prove(Tabulator.Tabulate(making));
                report
                    .Mistakes.Concat(report.Sizes.SelectMany(s => s.Mistakes))
                    .Where(m => m.Kind != MistakeKind.Excess)
                    .Select(m => m.ToString())
                    .ShouldBeEmpty();
            },
            iter: 60,
            threads: 1,
            print: yaml => yaml
        );

    private static Length OnTheEdge(Polygon shape, Quilt quilt)
    {
        Length along = Length.Zero;
        for (int i = 0; i < shape.Corners.Length; i++)
        {
            Point a = shape.Corners[i],
                b = shape.Corners[(i + 1) % shape.Corners.Length];
            if (a.X == b.X && (a.X == Length.Zero || a.X == quilt.Width))
            {
                along += Length.Max(a.Y, b.Y) - Length.Min(a.Y, b.Y);
            }
            else if (a.Y == b.Y && (a.Y == Length.Zero || a.Y == quilt.Height))
            {
                along += Length.Max(a.X, b.X) - Length.Min(a.X, b.X);
            }
        }
        return along;
    }

    // In doubles and from the shape alone: the triangle cut from the square, seams off, is no smaller than the piece.
    private static void HasItsSquare(SettingPiece piece, SizeMaking size)
    {
        Cut cut = size.Cuts.First(c =>
            c.Purpose is CutPurpose.SettingTriangle p
            && p.Kind == piece.Kind
            && c.Fabric == piece.Fabric
        );
        double square = cut.Width.Inches.ToDouble(),
            seam = size.Quilt.House.Seam.Inches.ToDouble();
        double edge =
            piece.Kind == SettingPieceKind.Side
                ? square - (seam * (2 + (2 * Math.Sqrt(2))))
                : square - (seam * (2 + Math.Sqrt(2)));
        Rect bounds = piece.Shape.Bounds;
        double wide = bounds.Width.Inches.ToDouble(),
            high = bounds.Height.Inches.ToDouble();
        if (piece.Kind == SettingPieceKind.Corner)
        {
            edge.ShouldBeGreaterThanOrEqualTo(Math.Max(wide, high) - 1e-9);
            return;
        }
        // Half as high as its long edge is long.
        (edge / 2).ShouldBeGreaterThanOrEqualTo(Math.Min(wide, high) - 1e-9);
        edge.ShouldBeGreaterThanOrEqualTo(Math.Max(wide, high) - 1e-9);
    }

    private static string Spread(FillKind kind, string text, int rows, int columns)
    {
        Fill fill = new(
            kind,
            [
                .. text.Split('\n')
                    .Select(line =>
                        line.Split(' ')
                            .Select(w => new FillCell(w, Turn.None, Span.None))
                            .ToImmutableArray()
                    ),
            ],
            3,
            Span.None
        );
        FillCatalog
            .Of(kind)
            .TrySpread(
                fill,
                new FillGrid(rows, columns, true),
                out FillCell[][]? cells,
                out string? problem
            )
            .ShouldBeTrue(problem);
        return string.Join('\n', cells!.Select(l => string.Join(' ', l.Select(c => c.Coloring))));
    }

    [Test]
    public void Fills_cover_the_places_in_between()
    {
        Spread(FillKind.Checkerboard, "a b", 2, 3).ShouldBe("a a a\nb b\na a a");
        Spread(FillKind.Repeat, "a b\nc d", 2, 3).ShouldBe("a b a\nc d\na b a");
        Spread(FillKind.Rows, "a b c", 2, 3).ShouldBe("a a a\nb b\nc c c");
        Spread(FillKind.Diagonals, "a b c d", 2, 3).ShouldBe("a b c\nb c\nb c d");
        Spread(FillKind.Rings, "a\nb\nc", 3, 3).ShouldBe("c c c\nb b\nc a c\nb b\nc c c");
        Spread(FillKind.Map, "a b\nc\nd e", 2, 2).ShouldBe("a b\nc\nd e");
    }

    [Test]
    public void A_scatter_leaves_no_two_touching_places_alike() =>
        (from rows in Gen.Int[1, 6] from columns in Gen.Int[2, 6] select (rows, columns)).Sample(
            size =>
            {
                string[][] lines =
                [
                    .. Spread(FillKind.Scatter, "a b c d", size.rows, size.columns)
                        .Split('\n')
                        .Select(line => line.Split(' ')),
                ];
                for (int r = 0; r + 1 < lines.Length; r++)
                {
                    // A place of a short line touches two of the long line above and two of that below.
                    (string[] few, string[] many) =
                        r % 2 == 0 ? (lines[r + 1], lines[r]) : (lines[r], lines[r + 1]);
                    for (int c = 0; c < few.Length; c++)
                    {
                        few[c].ShouldNotBe(many[c]);
                        few[c].ShouldNotBe(many[c + 1]);
                    }
                }
            },
            iter: 60,
            threads: 1
        );
}
