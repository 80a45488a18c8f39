using CsCheck;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Union;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;
using Polygon = PatternPress.Quilting.Geometry.Polygon;

namespace PatternPress.Tests.Quilting.Resolving;

public sealed class QuiltResolverTests
{
    private static Gen<string> Choose(params string[] words) =>
        Gen.Int[0, words.Length - 1].Select(i => words[i]);

    private static Length Inches(int whole) => Length.FromInches(whole);

    // A published layout: 5 × 6 blocks of 12 in make 60 × 72 (Delaware Quilts, "Sizes" page).
    [Test]
    public void Blocks_edge_to_edge_measure_their_sum()
    {
        Quilt quilt = Designs
            .Resolve(Designs.Read(Designs.Star("fill: S1", "throw: {blocks: 5 x 6, block: 12}")))
            .Single();
        (quilt.Width, quilt.Height).ShouldBe((Inches(60), Inches(72)));
    }

    // The same with 3 in sashing all round makes 78 × 93 (Delaware Quilts, "Sizes" page).
    [Test]
    public void Sashing_around_adds_one_strip_more_than_blocks()
    {
        Quilt quilt = Designs
            .Resolve(
                Designs.Read(
                    Designs.Star(
                        "fill: S1\nsashing: {width: 3, fabric: A, cornerstones: B, around: yes}",
                        "throw: {blocks: 5 x 6, block: 12}"
                    )
                )
            )
            .Single();
        (quilt.Width, quilt.Height).ShouldBe((Inches(78), Inches(93)));
        quilt.Sashes.Count(s => s.Kind == SashKind.Upright).ShouldBe(6 * 6);
        quilt.Sashes.Count(s => s.Kind == SashKind.Level).ShouldBe(7 * 5);
        quilt.Sashes.Count(s => s.Kind == SashKind.Cornerstone).ShouldBe(7 * 6);
    }

    [Test]
    public void Borders_turn_their_corners_as_asked()
    {
        Quilt quilt = Designs
            .Resolve(
                Designs.Read(
                    Designs.Star(
                        "fill: S1\nborders: [{width: 1, fabric: B}, {width: 2, fabric: C, corners: top-first}, {width: 3, fabric: D, corners: squares A}]",
                        "one: {blocks: 1 x 2}"
                    )
                )
            )
            .Single();
        (quilt.Width, quilt.Height).ShouldBe((Inches(20), Inches(28)));
        quilt
            .Borders.Select(b =>
                string.Join(
                    ' ',
                    b.Pieces.Select(p =>
                        $"{p.Side}:{LengthText.Inches(p.Place.Width)}x{LengthText.Inches(p.Place.Height)}"
                    )
                )
            )
            .ShouldBe([
                "Left:1x16 Right:1x16 Top:10x1 Bottom:10x1",
                "Left:2x22 Right:2x22 Top:10x2 Bottom:10x2",
                "Left:3x22 Right:3x22 Top:14x3 Bottom:14x3 Corner:3x3 Corner:3x3 Corner:3x3 Corner:3x3",
            ]);
    }

    [Test]
    public void A_turned_block_shows_its_patches_turned()
    {
        string yaml = Designs
            .Star("fill: S1/90", "one: {blocks: 1 x 1}")
            .Replace("geese down, ray on sky", "square sky", StringComparison.Ordinal)
            .Replace("F: square sky", "F: rectangle sky", StringComparison.Ordinal);
        Quilt quilt = Designs.Resolve(Designs.Read(yaml)).Single();
        // The rectangle drawn at the bottom, 4 × 2, comes to lie at the left.
        quilt
            .Patches()
            .ShouldContain(p =>
                p.Shape.Bounds == new Rect(Inches(0), Inches(2), Inches(2), Inches(4))
                && p.Fabric == "A"
            );
    }

    [Test]
    public void Random_quilts_are_covered_once_and_wholly()
    {
        Gen<string> borders = Gen.OneOf(
            Gen.Const(""),
            Gen.Select(Gen.Int[1, 30], Choose("sides-first", "top-first", "squares D"))
                .Select(
                    (eighths, corners) =>
                        $"\nborders: [{{width: {eighths}/8, fabric: B, corners: {corners}}}, {{width: 2, fabric: C}}]"
                )
        );
        Gen<string> sashing = Gen.OneOf(
            Gen.Const(""),
            Gen.Select(Gen.Int[1, 20], Gen.Bool, Gen.Bool)
                .Select(
                    (eighths, corner, around) =>
                        $"\nsashing: {{width: {eighths}/8, fabric: D, around: {(around ? "yes" : "no")}{(corner ? ", cornerstones: B" : "")}}}"
                )
        );
        Gen<string> fill = Choose(
            "fill: |\n  S1 P\n  S2/90 S3/180",
            "fill: {checkerboard: S1 P}",
            "fill: {rings: S1 S2 P}",
            "fill: {diagonals: S1 S2 S3}",
            "fill: {rows: S1 S2}",
            "fill: {scatter: S1 S2 S3, seed: 3}"
        );
        Gen.Select(fill, sashing, borders, Gen.Int[1, 6], Gen.Int[1, 6], Gen.Int[8, 120])
            .Sample(
                (f, s, b, columns, rows, eighths) =>
                {
                    string yaml = Designs.Star(
                        f + s + b,
                        $"one: {{blocks: {columns} x {rows}, block: {eighths}/8}}"
                    );
                    CheckCover(Designs.Resolve(Designs.Read(yaml)).Single());
                },
                iter: 60
            );
    }

    /// <summary>Exactly by area, and as drawn: no overlap and no gap (NetTopologySuite's union).</summary>
    private static void CheckCover(Quilt quilt)
    {
        List<Patch> patches = [.. quilt.Patches()];
        Area covered = Area.Zero;
        foreach (Patch patch in patches)
        {
            covered += patch.Shape.Area;
        }
        covered.ShouldBe(quilt.Width * quilt.Height);
        var factory = new GeometryFactory(new PrecisionModel(1e6));
        Geometry union = CascadedPolygonUnion.Union([
            .. patches.Select(p => ToGeometry(factory, p.Shape)),
        ]);
        union.Area.ShouldBe(covered.SquareInches.ToDouble(), 1e-3);
        union.EnvelopeInternal.Width.ShouldBe(quilt.Width.Inches.ToDouble(), 1e-5);
        union.NumGeometries.ShouldBe(1);
    }

    private static Geometry ToGeometry(GeometryFactory factory, Polygon polygon) =>
        factory.CreatePolygon([
            .. polygon
                .Corners.Append(polygon.Corners[0])
                .Select(c => new Coordinate(c.X.Inches.ToDouble(), c.Y.Inches.ToDouble())),
        ]);
}
