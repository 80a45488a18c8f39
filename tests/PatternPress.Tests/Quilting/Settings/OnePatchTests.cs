using System.Collections.Immutable;
using CsCheck;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Union;
using PatternPress.Proofing;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Cutting.Planning;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Settings;
using PatternPress.Quilting.Tables;
using PatternPress.Quilting.Techniques;
using PatternPress.Tests.Proofing;
using Polygon = PatternPress.Quilting.Geometry.Polygon;

namespace PatternPress.Tests.Quilting.Settings;

/// <summary>Rows of triangles, diamonds and half hexagons.</summary>
public sealed class OnePatchTests
{
    private static string Source(string shape, string height, int across, int down, string fill) =>
        $$"""
            pattern: {title: T, edition: 1.0.0, date: 2026-01-01, designer: D}
            fabrics:
              A: {name: Ink, color: "#15233b"}
              B: {name: Amber, color: "#f2a71b"}
              C: {name: Cream, color: "#f6ead2"}
            colorings: {a: plain A, b: plain B, c: plain C}
            quilt:
              setting: one-patch
              patch: {shape: {{shape}}, height: {{height}}}
              fill: {{fill}}
            sizes:
              one: {blocks: {{across}} x {{down}}}
            """;

    private static readonly Gen<string> Sources =
        from shape in Gen.OneOf(Gen.Const("triangle"), Gen.Const("diamond"), Gen.Const("hexagon"))
        from eighths in Gen.Int[8, 60]
        from across in Gen.Int[3, 11]
        from down in Gen.Int[1, 9]
        from fill in Gen.OneOf(
            Gen.Const("{checkerboard: a b}"),
            Gen.Const("{diagonals: a b c}"),
            Gen.Const("{rows: a b}"),
            Gen.Const("{rings: a b c}")
        )
        select Source(
            shape,
            LengthText.Inches(Length.FromInches(new Rational(eighths, 8))),
            across,
            down,
            fill
        );

    [Test]
    public void Random_rows_close_and_balance_and_can_be_made_as_printed() =>
        Sources.Sample(
            yaml =>
            {
                Pattern pattern = Designs.Read(yaml);
                Quilt quilt = Designs.Resolve(pattern)[0];
                Area sum = quilt.Pieces.Aggregate(Area.Zero, (all, p) => all + p.Shape.Area);
                sum.ShouldBe(quilt.Width * quilt.Height, "exactly, with √3");
                Geometry union = UnaryUnionOp.Union(
                    quilt.Pieces.Select(p => (Geometry)ToNts(p.Shape)).ToList()
                );
                double whole = sum.ToDouble();
                union.Area.ShouldBe(whole, whole * 1e-9, "no gap and no overlap");
                union.EnvelopeInternal.Width.ShouldBe(quilt.Width.Inches.ToDouble(), 1e-9);
                union.EnvelopeInternal.Height.ShouldBe(quilt.Height.Inches.ToDouble(), 1e-9);
                quilt.Pieces.Length.ShouldBe(quilt.Size.Rows * quilt.Size.Columns);

                (PrintedTables tables, ImmutableArray<Quilt> drawing) = Proofs.Of(yaml)!.Value;
                ProofReport proof = Proof.Prove(tables, drawing);
                string.Join("\n", proof.Mistakes).ShouldBe("");
                tables
                    .Patches.Sum(row => row.BySize[0]!.Count)
                    .ShouldBe(quilt.Pieces.Length, "every patch has a piece");
            },
            iter: 40
        );

    // The strip of equal-sided triangles is 3/4 in higher than the finished triangle, that of diamonds and half hexagons 1/2 in
    // (common practice, no source).
    [TestCase("triangle", "4", "4 3/4")]
    [TestCase("triangle", "5 1/2", "6 1/4")]
    [TestCase("diamond", "3", "3 1/2")]
    [TestCase("hexagon", "2 1/4", "2 3/4")]
    public void Strips_are_as_high_as_the_row_with_its_seams(
        string shape,
        string height,
        string strip
    )
    {
        (PrintedTables tables, _) = Proofs.Of(Source(shape, height, 8, 4, "{rows: a b}"))!.Value;
        tables
            .Patches.SelectMany(row => row.BySize)
            .Select(cell => LengthText.Inches(cell!.Height))
            .Distinct()
            .ShouldBe([strip]);
    }

    /// <summary>Pieces laid side by side as the plan counts them touch and stay in the strip.</summary>
    [TestCase(SettingPieceKind.Triangle)]
    [TestCase(SettingPieceKind.Diamond)]
    [TestCase(SettingPieceKind.HalfHexagon)]
    public void Pieces_nest_in_the_strip(SettingPieceKind kind)
    {
        Length height = Length.FromInches(3),
            seam = Length.FromInches(0, 1, 4);
        SlantedPiece nested = SixtyDegrees.Nested(kind, height, seam);
        Polygon cut = SixtyDegrees.TemplateOf(kind, false, height, seam).Cut;
        var bounds = cut.Bounds;
        bounds.Height.ShouldBe(nested.Height);
        bounds.Width.ShouldBe(nested.First);
        Polygon piece = cut.MoveBy(new PatternPress.Quilting.Geometry.Point(-bounds.X, -bounds.Y));
        var lying = Enumerable
            .Range(0, 5)
            .Select(i =>
                (
                    i % 2 == 1 && kind != SettingPieceKind.Diamond
                        ? piece.Turned(
                            new PatternPress.Quilting.Geometry.Turn(2),
                            bounds.Width,
                            bounds.Height
                        )
                        : piece
                ).MoveBy(new PatternPress.Quilting.Geometry.Point(nested.Pitch * i, Length.Zero))
            )
            .Select(ToNts)
            .ToList();
        Geometry union = UnaryUnionOp.Union(lying.ConvertAll(p => (Geometry)p));
        union.Area.ShouldBe(lying.Sum(p => p.Area), 1e-9, "no overlap");
        union.Length.ShouldBeLessThan(lying.Sum(p => p.Length) - 1, "neighbors share an edge");
        union.EnvelopeInternal.Width.ShouldBe(nested.LengthFor(5).Inches.ToDouble(), 1e-9);
    }

    /// <summary>The cut line is the seam line moved out by the seam, mitred; a triangle end's tip is cut off by the strip.</summary>
    [Test]
    public void Templates_are_the_finished_shapes_with_their_seams(
        [Values] SettingPieceKind kind,
        [Values] bool reversed
    )
    {
        if (kind is SettingPieceKind.Side or SettingPieceKind.Corner)
        {
            return;
        }
        Length seam = Length.FromInches(0, 1, 4);
        PieceTemplate template = SixtyDegrees.TemplateOf(
            kind,
            reversed,
            Length.FromInches(4),
            seam
        );
        template.Seam.Area.Sign.ShouldBe(1, "clockwise");
        template.Cut.Area.Sign.ShouldBe(1, "clockwise");
        double by = seam.Inches.ToDouble();
        Geometry finished = ToNts(template.Seam),
            cut = ToNts(template.Cut);
        cut.Covers(finished.Buffer(1e-9)).ShouldBeTrue();
        foreach (Coordinate corner in cut.Coordinates)
        {
            finished
                .Distance(new GeometryFactory().CreatePoint(corner))
                .ShouldBeGreaterThanOrEqualTo(by - 1e-9);
        }
        // Each edge of the seam line has one of the cut line beside it, a seam away.
        var edges = cut.Coordinates.Zip(cut.Coordinates.Skip(1)).ToList();
        foreach (
            (Coordinate a, Coordinate b) in finished.Coordinates.Zip(finished.Coordinates.Skip(1))
        )
        {
            edges.ShouldContain(edge =>
                Math.Abs(Beside(a, b, edge.First, edge.Second) - by) < 1e-9
            );
        }
    }

    // How far one line is from a parallel one; infinite where they are not parallel.
    private static double Beside(Coordinate a, Coordinate b, Coordinate c, Coordinate d)
    {
        double x = b.X - a.X,
            y = b.Y - a.Y,
            length = Math.Sqrt((x * x) + (y * y));
        double one = ((x * (c.Y - a.Y)) - (y * (c.X - a.X))) / length,
            two = ((x * (d.Y - a.Y)) - (y * (d.X - a.X))) / length;
        return Math.Abs(one - two) < 1e-9 ? Math.Abs(one) : double.PositiveInfinity;
    }

    private static NetTopologySuite.Geometries.Polygon ToNts(Polygon shape)
    {
        Coordinate[] ring =
        [
            .. shape.Corners.Select(c => new Coordinate(
                c.X.Inches.ToDouble(),
                c.Y.Inches.ToDouble()
            )),
        ];
        return new GeometryFactory().CreatePolygon([.. ring, ring[0]]);
    }
}
