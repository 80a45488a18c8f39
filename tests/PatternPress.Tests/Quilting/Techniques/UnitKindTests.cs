using System.Collections.Immutable;
using CsCheck;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Union;
using NUnit.Framework;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Techniques;
using Shouldly;
using Point = PatternPress.Quilting.Geometry.Point;
using Polygon = PatternPress.Quilting.Geometry.Polygon;

namespace PatternPress.Tests.Quilting.Techniques;

public class UnitKindTests
{
    // Every way of writing every kind; w × h in cells of a random size.
    private static readonly (string Text, int Width, int Height)[] Designs =
    [
        ("square core", 1, 1),
        ("rectangle core", 1, 1),
        ("rectangle core", 3, 1),
        ("rectangle core", 2, 5),
        ("half-square upper-left, ray on sky", 1, 1),
        ("half-square upper-right, ray on sky", 1, 1),
        ("half-square lower-right, ray on sky", 1, 1),
        ("half-square lower-left, ray on sky", 1, 1),
        ("half-rectangle upper-left, ray on sky", 1, 2),
        ("half-rectangle upper-right, ray on sky", 2, 1),
        ("half-rectangle lower-right, ray on sky", 2, 3),
        ("half-rectangle lower-left, ray on sky", 3, 1),
        ("quarter-square, a b", 1, 1),
        ("quarter-square left, a b", 1, 1),
        ("quarter-square, a b c", 1, 1),
        ("quarter-square left, a b c", 1, 1),
        ("quarter-square, a b c d", 1, 1),
        ("quarter-square, a b c b", 1, 1),
        ("quarter-square, a b a c", 1, 1),
        ("geese up, ray on sky", 2, 1),
        ("geese down, ray on sky", 2, 1),
        ("geese left, ray on sky", 1, 2),
        ("geese right, ray on sky", 1, 2),
        ("square-in-square, core on sky", 1, 1),
        ("eight-point-star, ray on sky", 1, 1),
        ("eight-point-star, ray glow on sky", 1, 1),
        ("eight-point-star split, a b c d e f g h on sky", 1, 1),
        ("corners upper-left, ray on sky", 1, 1),
        ("corners lower-right, ray on sky", 3, 2),
        ("corners lower-left upper-right, a b on sky", 1, 1),
        ("corners lower-left upper-left, a b on sky", 2, 3),
        ("corners lower-left upper-right lower-right, a b c on sky", 2, 3),
        ("corners upper-left upper-right lower-right lower-left, a b c d on sky", 2, 1),
        ("rail upright, a b c", 1, 1),
        ("rail level, a b", 3, 1),
        ("rail upright, a b a b a", 2, 3),
        ("four-patch, a b", 1, 1),
        ("four-patch, a b", 1, 2),
        ("nine-patch, a b", 1, 1),
        ("nine-patch, a b c", 2, 1),
        ("nine-patch, a b c", 1, 2),
        ("checkerboard 4 x 4, a b", 1, 1),
        ("checkerboard 3 x 4, a b", 3, 4),
        ("checkerboard 2 x 5, a b", 1, 1),
        ("checkerboard 5 x 2, a b", 1, 3),
        ("checkerboard 7 x 6, a b", 2, 1),
        ("bargello shifts 0 1 2 1, a b c d", 1, 1),
        ("bargello level shifts 0 -1 5, a b c", 2, 1),
        ("seminole 4 segments of 1/256, a on b", 4, 4),
        ("seminole upright 6 segments of 1/256, a b c on a", 3, 6),
        ("log-cabin 3 rounds, core light dark", 1, 1),
        ("log-cabin upper-right 2 rounds, core a b c d", 1, 1),
        ("log-cabin lower-left counterclockwise 2 rounds, core light core", 1, 1),
        ("log-cabin 1 round logs 1/128 and 1/256 and 1/128 and 1/256, core a b a b", 1, 1),
        ("log-cabin lower-right 2 rounds logs 1/256, core a", 2, 1),
        ("log-cabin 2 rounds, core a b c d e f g h", 1, 1),
        ("courthouse-steps 3 rounds, core light dark", 1, 1),
        ("courthouse-steps level 2 rounds logs 1/256 and 1/256, core a b c d", 2, 3),
        ("half-log-cabin 5 rounds, core light dark", 1, 1),
        ("half-log-cabin upper-right counterclockwise 3 rounds, core a b c", 1, 1),
        ("half-log-cabin lower-left 1 round logs 1/256, core a", 3, 2),
        ("quarter-circle upper-left, a on b", 1, 1),
        ("quarter-circle lower-right, a on b", 1, 1),
        ("foundation spire, a b", 2, 3),
        ("applique gull, a b on c", 1, 1),
        ("foundation spire right, a b", 3, 2),
    ];

    private static readonly Gen<Length> Cell = Gen.Select(
        Gen.Int[1, 400],
        Gen.OneOf(1, 2, 3, 4, 5, 7, 8, 12, 16),
        Gen.Bool,
        (n, d, metric) =>
            metric
                ? Length.FromCentimetres(new Rational(n, d))
                : Length.FromInches(new Rational(n, d))
    );

    private static readonly Gen<(string Text, Length Width, Length Height)> Unit = Gen.Select(
        Gen.OneOf(Designs),
        Cell,
        (design, cell) => (design.Text, cell * design.Width, cell * design.Height)
    );

    [Test]
    public void Patches_tile_the_region_exactly()
    {
        Unit.Sample(
            unit =>
            {
                ImmutableArray<(Polygon Shape, string Part)> patches = Placed(
                    Written.Draw(unit.Text, unit.Width, unit.Height)
                );
                Area sum = Area.Zero;
                foreach ((Polygon shape, _) in patches)
                {
                    shape.Area.Sign.ShouldBe(1, "clockwise, and not empty");
                    sum += shape.Area;
                }
                sum.ShouldBe(unit.Width * unit.Height);

                var polygons = patches.Select(p => ToNts(p.Shape)).ToList();
                Geometry union = UnaryUnionOp.Union(polygons);
                double whole = unit.Width.Inches.ToDouble() * unit.Height.Inches.ToDouble();
                union.Area.ShouldBe(whole, whole * 1e-9, "no gap and no overlap");
                union.EnvelopeInternal.MinX.ShouldBe(0);
                union.EnvelopeInternal.MinY.ShouldBe(0);
                union.EnvelopeInternal.MaxX.ShouldBe(unit.Width.Inches.ToDouble(), 1e-9);
                union.EnvelopeInternal.MaxY.ShouldBe(unit.Height.Inches.ToDouble(), 1e-9);
            },
            iter: 400
        );
    }

    [Test]
    public void Bias_edges_are_the_diagonal_ones_that_are_not_a_centers()
    {
        foreach ((string text, int width, int height) in Designs)
        {
            UnitForm form = Written.Draw(text, $"{width * 2}", $"{height * 2}").Form;
            foreach (RolePatch patch in form.Patches)
            {
                for (int i = 0; i < patch.Shape.Corners.Length; i++)
                {
                    Point a = patch.Shape.Corners[i],
                        b = patch.Shape.Corners[(i + 1) % patch.Shape.Corners.Length];
                    bool diagonal = a.X != b.X && a.Y != b.Y;
                    bool center = form.Kind.Keyword == "square-in-square" && patch.Role == 0;
                    // Cut at an angle, the slanted edges are those along the strips.
                    bool slanted = form.Kind.Keyword == "seminole";
                    patch
                        .BiasEdges.Contains(i)
                        .ShouldBe(diagonal != slanted && !center, $"{text} {patch}");
                }
            }
        }
    }

    [TestCase("square core", "3", "3", "core@1.5,1.5")]
    [TestCase("half-square upper-left, ray on sky", "3", "3", "ray@1,1 sky@2,2")]
    [TestCase("half-square upper-right, ray on sky", "3", "3", "ray@2,1 sky@1,2")]
    [TestCase("half-square lower-right, ray on sky", "3", "3", "ray@2,2 sky@1,1")]
    [TestCase("half-square lower-left, ray on sky", "3", "3", "ray@1,2 sky@2,1")]
    [TestCase("half-rectangle upper-left, ray on sky", "3", "6", "ray@1,2 sky@2,4")]
    [TestCase("half-rectangle upper-right, ray on sky", "3", "6", "ray@2,2 sky@1,4")]
    [TestCase("half-rectangle lower-right, ray on sky", "3", "6", "ray@2,4 sky@1,2")]
    [TestCase("half-rectangle lower-left, ray on sky", "3", "6", "ray@1,4 sky@2,2")]
    [TestCase("half-rectangle upper-left, ray on sky", "6", "3", "ray@2,1 sky@4,2")]
    [TestCase("half-rectangle upper-right, ray on sky", "6", "3", "ray@4,1 sky@2,2")]
    [TestCase("half-rectangle lower-right, ray on sky", "6", "3", "ray@4,2 sky@2,1")]
    [TestCase("half-rectangle lower-left, ray on sky", "6", "3", "ray@2,2 sky@4,1")]
    [TestCase(
        "bargello shifts 0 1, a b c",
        "2",
        "3",
        "a@0.5,0.5 b@0.5,1.5 c@0.5,2.5 b@1.5,0.5 c@1.5,1.5 a@1.5,2.5"
    )]
    [TestCase(
        "bargello level shifts 0 -1, a b c",
        "3",
        "2",
        "a@0.5,0.5 b@1.5,0.5 c@2.5,0.5 c@0.5,1.5 a@1.5,1.5 b@2.5,1.5"
    )]
    [TestCase("quarter-square, a b", "6", "6", "a@3,1 a@3,5 b@1,3 b@5,3")]
    [TestCase("quarter-square top, a on b", "6", "6", "a@3,1 a@3,5 b@1,3 b@5,3")]
    [TestCase("quarter-square left, a b", "6", "6", "a@1,3 a@5,3 b@3,1 b@3,5")]
    [TestCase("quarter-square, a b c", "6", "6", "a@3,1 a@3,5 b@1,3 c@5,3")]
    [TestCase("quarter-square left, a b c", "6", "6", "a@1,3 a@5,3 b@3,1 c@3,5")]
    [TestCase("quarter-square, a b c d", "6", "6", "a@3,1 b@5,3 c@3,5 d@1,3")]
    [TestCase("quarter-square, a b a c", "6", "6", "a@3,1 b@5,3 a@3,5 c@1,3")]
    [TestCase("quarter-square, a b c b", "6", "6", "a@3,1 b@5,3 c@3,5 b@1,3")]
    [TestCase("geese up, ray on sky", "6", "3", "ray@3,2 sky@1,1 sky@5,1")]
    [TestCase("geese down, ray on sky", "6", "3", "ray@3,1 sky@1,2 sky@5,2")]
    [TestCase("geese left, ray on sky", "3", "6", "ray@2,3 sky@1,1 sky@1,5")]
    [TestCase("geese right, ray on sky", "3", "6", "ray@1,3 sky@2,1 sky@2,5")]
    [TestCase(
        "square-in-square, core on sky",
        "6",
        "6",
        "core@3,3 sky@1,1 sky@5,1 sky@1,5 sky@5,5"
    )]
    [TestCase("corners lower-left, ray on sky", "6", "6", "ray@1,5")]
    [TestCase("corners upper-right lower-left, a b on sky", "6", "6", "a@5,1 b@1,5")]
    [TestCase("corners lower-right lower-left, a b on sky", "12", "6", "a@11,5 b@1,5")]
    [TestCase("corners lower-right upper-right, a b on sky", "6", "12", "a@5,11 b@5,1")]
    [TestCase(
        "corners lower-right upper-right upper-left, a b c on sky",
        "6",
        "12",
        "a@5,11 b@5,1 c@1,1"
    )]
    [TestCase("corners upper-left of 1 1/2, ray on sky", "3", "3", "ray@0.5,0.5")]
    [TestCase("rail upright, a b c", "6", "4", "a@1,2 b@3,2 c@5,2")]
    [TestCase("rail level, a b c", "4", "6", "a@2,1 b@2,3 c@2,5")]
    [TestCase("four-patch, a b", "4", "4", "a@1,1 b@3,1 b@1,3 a@3,3")]
    [TestCase("four-patch, a b", "4", "8", "a@1,2 b@3,2 b@1,6 a@3,6")]
    [TestCase("nine-patch, a b c", "6", "6", "a@1,1 b@3,1 a@5,1 c@3,3")]
    [TestCase("checkerboard 2 x 3, a b", "4", "6", "a@1,1 b@3,1 b@1,3 a@3,3 a@1,5")]
    [TestCase("checkerboard 3 x 2, a b", "6", "4", "a@1,1 b@3,1 a@5,1 b@1,3")]
    [TestCase("checkerboard 3 x 4, a b", "6", "8", "a@1,1 b@3,1 a@5,1 b@1,3")]
    [TestCase("checkerboard 2 x 2, a b", "4", "4", "a@1,1 b@3,1")]
    public void Words_put_each_part_in_its_place(
        string text,
        string width,
        string height,
        string places
    )
    {
        ImmutableArray<(Polygon Shape, string Part)> patches = Placed(
            Written.Draw(text, width, height)
        );
        foreach (string place in places.Split(' '))
        {
            string[] words = place.Split('@', ',');
            patches
                .Select(p => (p.Part, Center(p.Shape)))
                .ShouldContain((words[0], (double.Parse(words[1]), double.Parse(words[2]))));
        }
    }

    [TestCase("half-square upper-left, a on b", "half-square lower-right, a on b", "3", "3")]
    [TestCase("geese up, a on b", "geese left, a on b", "4", "2")]
    [TestCase("geese up, a on b", "geese down, a on b", "4", "2")]
    [TestCase("rectangle a", "rectangle a", "4", "2")]
    [TestCase("rail upright, a b c", "rail level, a b c", "4", "3")]
    [TestCase("checkerboard 4 x 6, a b", "checkerboard 6 x 4, a b", "4", "6")]
    [TestCase("corners upper-left, a on b", "corners lower-left, a on b", "3", "3")]
    [TestCase("corners upper-left, a on b", "corners upper-right, a on b", "4", "3")]
    [TestCase("quarter-square, a b", "quarter-square left, a b", "3", "3")]
    [TestCase("quarter-square, a b c", "quarter-square, c a b a", "3", "3")]
    public void A_unit_turned_is_the_same_form(
        string one,
        string turned,
        string width,
        string height
    )
    {
        UnitForm form = Written.Form(one, width, height);
        bool sideways =
            width != height && !turned.Contains("down") && !turned.StartsWith("checkerboard 4 x 4");
        UnitForm other = sideways
            ? Written.Form(turned, height, width)
            : Written.Form(turned, width, height);
        other.ShouldBe(form);
        other.GetHashCode().ShouldBe(form.GetHashCode());
    }

    [TestCase("corners upper-left, a on b", "corners upper-right, a on b", "4", "3")]
    [TestCase(
        "corners upper-left lower-right, a on b",
        "corners upper-right lower-left, a on b",
        "4",
        "3"
    )]
    [TestCase("corners upper-left of 1, a on b", "corners upper-left of 2, a on b", "4", "4")]
    [TestCase(
        "corners upper-left upper-right, a on b",
        "corners upper-left lower-right, a on b",
        "4",
        "4"
    )]
    [TestCase("quarter-square, a b", "quarter-square, a b c", "4", "4")]
    [TestCase("nine-patch, a b", "nine-patch, a b c", "3", "3")]
    public void Mirror_images_and_other_shapes_are_told_apart(
        string one,
        string other,
        string width,
        string height
    ) => Written.Form(other, width, height).ShouldNotBe(Written.Form(one, width, height));

    [TestCase("checkerboard 2 x 2, a b", "four-patch, a b")]
    [TestCase("checkerboard 3 x 3, a b", "nine-patch, a b")]
    [TestCase("nine-patch, a b a", "nine-patch, a b")]
    [TestCase("rectangle a", "square a")]
    [TestCase("quarter-square, a b a b", "quarter-square, a b")]
    [TestCase("corners upper-left lower-right, a a on b", "corners lower-right upper-left, a on b")]
    public void Units_that_look_alike_are_one_form_however_they_are_written(
        string one,
        string other
    ) => Written.Form(one, "6").ShouldBe(Written.Form(other, "6"));

    // Every way to color every form: settling keeps the picture, and all turned colorings of one picture settle alike.
    [Test]
    public void Settling_keeps_the_picture()
    {
        Gen.Select(Unit, Gen.OneOf("A", "B", "C").Array[24 * 24], Gen.Int[0, 3])
            .Sample(
                (unit, keys, quarters) =>
                {
                    UnitForm form = Written.Draw(unit.Text, unit.Width, unit.Height).Form;
                    ImmutableArray<string> fabrics = [.. keys.Take(form.RoleCount)];
                    (ImmutableArray<string> settled, Turn turn) = form.Settle(fabrics);
                    Picture(form, settled, turn).ShouldBe(Picture(form, fabrics, Turn.None));
                    foreach (Symmetry symmetry in form.Symmetries)
                    {
                        ImmutableArray<string> other =
                        [
                            .. symmetry.RoleAt.Select(role => fabrics[role]),
                        ];
                        form.Settle(other).Fabrics.ShouldBe(settled);
                    }
                },
                iter: 300
            );
    }

    [Test]
    public void Half_squares_of_swapped_fabrics_settle_to_one_unit()
    {
        UnitForm form = Written.Form("half-square upper-left, a on b", "3");
        form.Settle(["B", "A"]).ShouldBe((["A", "B"], new Turn(2)), new SettledComparer());
        form.Settle(["A", "B"]).ShouldBe((["A", "B"], Turn.None), new SettledComparer());
    }

    [Test]
    public void Catalog_has_each_keyword_once_and_examples_that_draw()
    {
        UnitKindCatalog.Keywords.ShouldBeUnique();
        foreach (UnitKind kind in UnitKindCatalog.All)
        {
            UnitKindCatalog.TryFind(kind.Keyword, out UnitKind? found).ShouldBeTrue();
            found.ShouldBeSameAs(kind);
            kind.Example.ShouldStartWith(kind.Keyword + (kind.Example.Contains(',') ? "" : " "));
            (string width, string height) = kind is { Keyword: "geese" or "half-rectangle" }
                ? ("4", "2")
                : ("4", "4");
            Written.Draw(kind.Example, width, height).Parts.ShouldNotBeEmpty();
        }
        UnitKindCatalog.TryFind("nonsense", out _).ShouldBeFalse();
    }

    private static ImmutableArray<(Polygon Shape, string Part)> Placed(DrawnUnit drawn) =>
        [
            .. drawn.Form.Patches.Select(p =>
                (
                    p.Shape.Turned(drawn.Turn, drawn.Form.Width, drawn.Form.Height),
                    drawn.Parts[p.Role]
                )
            ),
        ];

    private static string Picture(UnitForm form, ImmutableArray<string> fabrics, Turn turn) =>
        string.Join(
            '\n',
            form.Patches.Select(p =>
                {
                    (double x, double y) = Center(p.Shape.Turned(turn, form.Width, form.Height));
                    return $"{x:0.####} {y:0.####} {fabrics[p.Role]}";
                })
                .Order(StringComparer.Ordinal)
        );

    private static (double X, double Y) Center(Polygon polygon)
    {
        Coordinate c = ToNts(polygon).Centroid.Coordinate;
        return (Math.Round(c.X, 6), Math.Round(c.Y, 6));
    }

    private static NetTopologySuite.Geometries.Polygon ToNts(Polygon polygon)
    {
        Coordinate[] ring =
        [
            .. polygon
                .Straightened()
                .Corners.Select(c => new Coordinate(c.X.Inches.ToDouble(), c.Y.Inches.ToDouble())),
        ];
        return new GeometryFactory().CreatePolygon([.. ring, ring[0]]);
    }

    private sealed class SettledComparer
        : IEqualityComparer<(ImmutableArray<string> Fabrics, Turn Turn)>
    {
        public bool Equals(
            (ImmutableArray<string> Fabrics, Turn Turn) x,
            (ImmutableArray<string> Fabrics, Turn Turn) y
        ) => x.Turn == y.Turn && x.Fabrics.SequenceEqual(y.Fabrics);

        public int GetHashCode((ImmutableArray<string> Fabrics, Turn Turn) obj) => 0;
    }
}
