using System.Collections.Immutable;
using System.Text;
using CsCheck;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Union;
using PatternPress.Proofing;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Tables;
using PatternPress.Tests.Quilting.Cutting;
using Polygon = NetTopologySuite.Geometries.Polygon;

namespace PatternPress.Tests.Quilting.Settings;

/// <summary>Blocks of several sizes on one grid, sewn in sections.</summary>
public sealed class InSectionsTests
{
    private static Length Inches(int whole) => Length.FromInches(whole);

    private static Rect Box(int x, int y, int right, int bottom) =>
        new(Inches(x), Inches(y), Inches(right - x), Inches(bottom - y));

    private static string Source(
        string columns,
        string rows,
        string fill,
        string colorings = "",
        string size = ""
    )
    {
        string[] lines = fill.Split('\n');
        return $$"""
            pattern: {title: T, edition: 1.0.0, date: 2026-01-01, designer: D}
            fabrics:
              A: {name: Ink, color: "#15233b", usable-width: 200}
              B: {name: Amber, color: "#f2a71b", usable-width: 200}
              C: {name: Rose, color: "#d1495b", usable-width: 200}
            blocks:
              star:
                {{size}}
                map: |
                  s G G s
                  E H H W
                  E H H W
                  s F F s
                units:
                  s: square sky
                  G: geese up, ray on sky
                  F: geese down, ray on sky
                  E: geese left, ray on sky
                  W: geese right, ray on sky
                  H: square heart
            colorings:
              S: star sky=A ray=B heart=C
              P: plain A
            {{colorings}}
            quilt:
              setting: in-sections
              columns: {{columns}}
              rows: {{rows}}
              fill: |
            {{string.Join('\n', lines.Select(l => "    " + l))}}
            sizes:
              one: {blocks: {{lines[0].Split(' ').Length}} x {{lines.Length}}}
            """;
    }

    private static string[] Places(string yaml) =>
        [
            .. Designs
                .Resolve(Designs.Read(yaml))
                .Single()
                .Places.Select(p => $"{p.Block.Key} {p.Place}"),
        ];

    [Test]
    public void A_block_without_a_size_takes_as_many_touching_cells_as_have_its_shape() =>
        Places(Source("4", "4", "S S S\nS S P\nS P P"))
            .ShouldBe([
                "S 8 × 8 at (0, 0)",
                "S 4 × 4 at (8, 0)",
                "P 4 × 8 at (8, 4)",
                "S 4 × 4 at (0, 8)",
                "P 4 × 4 at (4, 8)",
            ]);

    [Test]
    public void A_block_with_a_size_takes_the_cells_that_measure_as_much() =>
        Places(Source("4", "4", "S S S S\nS S S S", size: "size: 4")).Length.ShouldBe(8);

    [Test]
    public void Widths_repeat_where_there_are_more_columns()
    {
        Quilt quilt = Designs
            .Resolve(Designs.Read(Source("8 4", "8, 4", "S P S P\nP S P S")))
            .Single();
        (quilt.Width, quilt.Height).ShouldBe((Inches(24), Inches(12)));
    }

    [Test]
    public void Rows_are_taken_before_columns_and_each_seam_runs_from_edge_to_edge()
    {
        var order = SewingOrder.Of([
            Box(0, 0, 2, 2),
            Box(2, 0, 3, 1),
            Box(2, 1, 3, 2),
            Box(0, 2, 3, 3),
        ]);
        var rows = order.ShouldBeOfType<SewingOrder.Group>();
        rows.Level.ShouldBeTrue();
        var upper = rows.Parts[0].ShouldBeOfType<SewingOrder.Group>();
        upper.Level.ShouldBeFalse();
        upper.Parts[1].Units().ShouldBe([1, 2]);
        rows.Parts[1].ShouldBe(new SewingOrder.Unit(3));
    }

    // The arrangement of five rectangles that no straight cut divides: common knowledge of the trade, where it is sewn with a
    // partial seam, and the smallest rectangle cut into rectangles that no cut through divides.
    [TestCase(true)]
    [TestCase(false)]
    public void Four_parts_around_a_middle_are_sewn_with_a_partial_seam(bool clockwise)
    {
        Rect[] boxes =
        [
            Box(1, 1, 2, 2),
            Box(0, 0, 2, 1),
            Box(2, 0, 3, 2),
            Box(1, 2, 3, 3),
            Box(0, 1, 1, 3),
        ];
        if (!clockwise)
        {
            boxes = [.. boxes.Select(b => new Rect(Inches(3) - b.Right, b.Y, b.Width, b.Height))];
        }
        var around = SewingOrder.Of([.. boxes]).ShouldBeOfType<SewingOrder.Around>();
        around.IsComplete.ShouldBeTrue();
        around.Middle.ShouldBe(new SewingOrder.Unit(0));
        around.Parts.SelectMany(p => p.Units()).ShouldBe([1, 2, 3, 4]);
    }

    [Test]
    public void Parts_that_lock_into_each_other_have_no_order() =>
        SewingOrder
            .Of([
                Box(0, 0, 3, 1),
                Box(3, 0, 4, 3),
                Box(0, 1, 1, 4),
                Box(1, 1, 3, 2),
                Box(1, 2, 2, 4),
                Box(2, 2, 3, 3),
                Box(2, 3, 4, 4),
            ])
            .IsComplete.ShouldBeFalse();

    /// <summary>A rectangle cut at random: through, or into four parts around a middle.</summary>
    internal static Gen<ImmutableArray<Rect>> Cut(int x, int y, int right, int bottom, int depth)
    {
        int wide = right - x,
            high = bottom - y;
        Gen<ImmutableArray<Rect>> whole = Gen.Const(
            ImmutableArray.Create(Box(x, y, right, bottom))
        );
        if (depth == 0 || wide < 2 || high < 2)
        {
            return whole;
        }
        Gen<ImmutableArray<Rect>> upright =
            from at in Gen.Int[x + 1, right - 1]
            from left in Cut(x, y, at, bottom, depth - 1)
            from other in Cut(at, y, right, bottom, depth - 1)
            select left.AddRange(other);
        Gen<ImmutableArray<Rect>> level =
            from at in Gen.Int[y + 1, bottom - 1]
            from upper in Cut(x, y, right, at, depth - 1)
            from lower in Cut(x, at, right, bottom, depth - 1)
            select upper.AddRange(lower);
        Gen<ImmutableArray<Rect>> around =
            wide < 3 || high < 3
                ? whole
                : from x1 in Gen.Int[x + 1, right - 2]
                from x2 in Gen.Int[x1 + 1, right - 1]
                from y1 in Gen.Int[y + 1, bottom - 2]
                from y2 in Gen.Int[y1 + 1, bottom - 1]
                from top in Cut(x, y, x2, y1, depth - 1)
                from after in Cut(x2, y, right, y2, depth - 1)
                from below in Cut(x1, y2, right, bottom, depth - 1)
                from before in Cut(x, y1, x1, bottom, depth - 1)
                from middle in Cut(x1, y1, x2, y2, depth - 1)
                select top.AddRange(after).AddRange(below).AddRange(before).AddRange(middle);
        return Gen.Frequency((1, whole), (3, upright), (3, level), (2, around));
    }

    private static string Drawn(ImmutableArray<Rect> boxes, int[] kinds)
    {
        int[] x =
        [
            .. boxes.SelectMany(b => new[] { Whole(b.X), Whole(b.Right) }).Distinct().Order(),
        ];
        int[] y =
        [
            .. boxes.SelectMany(b => new[] { Whole(b.Y), Whole(b.Bottom) }).Distinct().Order(),
        ];
        var colorings = new StringBuilder();
        for (int i = 0; i < boxes.Length; i++)
        {
            bool star = boxes[i].Width == boxes[i].Height && kinds[i % kinds.Length] == 0;
            colorings.AppendLine(
                star ? $"  X{i}: star sky=A ray=B heart=C" : $"  X{i}: plain {"ABC"[i % 3]}"
            );
        }
        IEnumerable<string> rows = Enumerable
            .Range(0, y.Length - 1)
            .Select(r =>
                string.Join(
                    ' ',
                    Enumerable
                        .Range(0, x.Length - 1)
                        .Select(c =>
                            "X"
                            + boxes.IndexOf(
                                boxes.First(b =>
                                    Whole(b.X) <= x[c]
                                    && x[c] < Whole(b.Right)
                                    && Whole(b.Y) <= y[r]
                                    && y[r] < Whole(b.Bottom)
                                )
                            )
                        )
                )
            );
        return Source(
            string.Join(' ', x.Zip(x.Skip(1), (a, b) => b - a)),
            string.Join(' ', y.Zip(y.Skip(1), (a, b) => b - a)),
            string.Join('\n', rows),
            colorings.ToString()
        );

        static int Whole(Length length) => (int)length.Inches.ToDouble();
    }

    // Whatever is cut through or around is found again: the areas are the whole to the last digit, as drawn nothing overlaps, and
    // a maker who sews the printed sections in their order gets the quilt as drawn.
    [Test]
    public void Random_layouts_are_sewn_as_drawn() =>
        (
            from boxes in Cut(0, 0, 24, 18, 3)
            from kinds in Gen.Int[0, 2].Array[5]
            select (boxes, kinds)
        )
            .Where(layout => layout.boxes.Length is > 1 and < 60)
            .Sample(
                layout =>
                {
                    Making making = Makings.Of(
                        Drawn(layout.boxes, layout.kinds),
                        new FabricPlanner()
                    );
                    making.Problems.ShouldBeEmpty();
                    Quilt quilt = making.Sizes[0].Quilt;
                    quilt.Places.Length.ShouldBe(layout.boxes.Length);
                    Area sum = Area.Zero;
                    var factory = new GeometryFactory(new PrecisionModel(1e6));
                    var shapes = new List<Geometry>();
                    foreach (Patch patch in quilt.Patches())
                    {
                        sum += patch.Shape.Area;
                        shapes.Add(ToGeometry(factory, patch));
                    }
                    sum.ShouldBe(quilt.Width * quilt.Height);
                    Geometry union = CascadedPolygonUnion.Union(shapes);
                    union.Area.ShouldBe(sum.SquareInches.ToDouble(), 1e-3);
                    union.NumGeometries.ShouldBe(1);
                    ImmutableArray<QuiltSection> sections = QuiltSection.Of(quilt);
                    sections[^1].Place.ShouldBe(quilt.Center);
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
                print: layout => Drawn(layout.boxes, layout.kinds)
            );

    private static Polygon ToGeometry(GeometryFactory factory, Patch patch) =>
        factory.CreatePolygon([
            .. patch
                .Shape.Corners.Append(patch.Shape.Corners[0])
                .Select(c => new Coordinate(c.X.Inches.ToDouble(), c.Y.Inches.ToDouble())),
        ]);

    [Test]
    public void Sections_that_are_alike_are_made_together()
    {
        Quilt quilt = Designs
            .Resolve(Designs.Read(Source("4 8", "4", "S P S P\nS P S P", "", "size: 4")))
            .Single();
        // Two stars, one below the other, beside a plain piece as high; twice.
        QuiltSection.Of(quilt).Select(s => s.Count).ShouldBe([2, 1]);
    }
}
