using System.Collections.Immutable;
using CsCheck;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;
using NUnit.Framework;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques;
using Shouldly;
using Polygon = NetTopologySuite.Geometries.Polygon;

namespace PatternPress.Tests.Quilting.Techniques;

public class TechniqueTests
{
    // A unit for every technique to try; w × h in cells.
    internal static readonly ImmutableArray<(string Text, int Width, int Height)> Units =
    [
        ("square a", 1, 1),
        ("rectangle a", 5, 2),
        ("half-square upper-left, a on b", 1, 1),
        ("half-rectangle upper-left, a on b", 1, 2),
        ("half-rectangle upper-right, a on b", 2, 3),
        ("quarter-square, a b", 1, 1),
        ("quarter-square, a b c", 1, 1),
        ("quarter-square, a b c d", 1, 1),
        ("geese up, a on b", 2, 1),
        ("square-in-square, a on b", 1, 1),
        ("eight-point-star, a b on c", 4, 4),
        ("eight-point-star split, a on b", 3, 3),
        ("corners upper-left, a on b", 1, 1),
        ("corners upper-left lower-right, a b on c", 3, 2),
        ("corners upper-left upper-right, a on b", 2, 1),
        ("corners upper-left upper-right lower-right lower-left, a b c d on e", 2, 1),
        ("rail upright, a b c", 1, 1),
        ("rail upright, a b a b", 2, 1),
        ("four-patch, a b", 1, 1),
        ("four-patch, a b", 2, 1),
        ("nine-patch, a b", 1, 1),
        ("nine-patch, a b c", 1, 1),
        ("checkerboard 4 x 4, a b", 1, 1),
        ("checkerboard 5 x 4, a b", 1, 1),
        ("checkerboard 5 x 5, a b", 1, 1),
        ("bargello shifts 0 1 2 1, a b c d", 1, 1),
        ("seminole 4 segments of 1/2, a b on c", 4, 4),
        ("log-cabin 2 rounds, a b c", 5, 5),
        ("log-cabin counterclockwise 1 round, a b c d e", 3, 3),
        ("courthouse-steps 3 rounds, a b c", 7, 7),
        ("half-log-cabin 3 rounds, a b c", 4, 4),
        ("quarter-circle upper-left, a on b", 1, 1),
        ("foundation spire, a b", 2, 3),
        ("applique gull, a b on c", 1, 1),
    ];

    private static readonly Gen<(UnitForm Form, House House)> Sewn = Gen.Select(
        Gen.OneOf(Units.ToArray()),
        Gen.Int[1, 12 * 8],
        Gen.OneOf(1, 2, 3, 8),
        Gen.OneOf(Recipes.Inches, Recipes.Metric, Recipes.Oversize),
        (unit, n, d, house) =>
        {
            // The segments of a band have a width of their own, whatever its region: half an inch takes nearly two.
            Rational size =
                new Rational(n, d)
                + (unit.Text.StartsWith("seminole", StringComparison.Ordinal) ? 2 : 0);
            Length cell =
                house.Unit == LengthUnit.Centimetre
                    ? Length.FromCentimetres(size)
                    : Length.FromInches(size);
            return (Written.Draw(unit.Text, cell * unit.Width, cell * unit.Height).Form, house);
        }
    );

    // Techniques whose pieces are used up: what is cut is exactly what the finished patches and their seams need.
    private static readonly ImmutableHashSet<string> WithoutWaste =
    [
        "plain-squares",
        "plain-rectangles",
        "half-square-two-at-a-time",
        "half-square-eight-at-a-time",
        "half-square-single-triangles",
        "quarter-square-two-at-a-time",
        "quarter-square-single-triangles",
        "geese-four-at-a-time",
        "square-in-square-set-in-triangles",
        "rail-single-strips",
        "four-patch-pieced-singly",
        "nine-patch-pieced-singly",
        "checkerboard-pieced-singly",
        "log-cabin-cut-to-length",
        "courthouse-steps-cut-to-length",
        "half-log-cabin-cut-to-length",
    ];

    [Test]
    public void Finished_patches_with_their_seams_fit_the_pieces_exactly()
    {
        Sewn.Sample(
            sewn =>
            {
                (UnitForm form, House house) = sewn;
                double seam = house.Seam.Inches.ToDouble();
                foreach (Recipe recipe in RecipesOf(form, house))
                {
                    for (int role = 0; role < form.RoleCount; role++)
                    {
                        double cut = recipe
                            .Pieces.Where(p => p.Role == role)
                            .Sum(p => p.Count * Double(p.Exactly.Width) * Double(p.Exactly.Height));
                        double needed =
                            recipe.Yield
                            * form.Patches.Where(p => p.Role == role)
                                .Sum(p => Offset(p, seam).Area);
                        if (WithoutWaste.Contains(recipe.Technique))
                        {
                            cut.ShouldBe(needed, needed * 1e-9, $"{recipe.Technique} role {role}");
                        }
                        else if (!recipe.StripSets.IsEmpty)
                        {
                            cut.ShouldBeGreaterThanOrEqualTo(needed * (1 - 1e-9));
                        }
                    }
                }
            },
            iter: 150
        );
    }

    [Test]
    public void Every_patch_with_its_seam_fits_into_its_piece()
    {
        Sewn.Sample(
            sewn =>
            {
                (UnitForm form, House house) = sewn;
                double seam = house.Seam.Inches.ToDouble();
                foreach (Recipe recipe in RecipesOf(form, house))
                {
                    foreach (RolePatch patch in form.Patches)
                    {
                        Envelope box = Offset(patch, seam).EnvelopeInternal;
                        // Logs of one fabric are of many lengths.
                        RecipePiece piece =
                            recipe.Pieces.FirstOrDefault(p =>
                                p.Role == patch.Role
                                && p.Name.StartsWith("log", StringComparison.Ordinal)
                                && Math.Abs(
                                    (Double(p.Exactly.Width) * Double(p.Exactly.Height))
                                        - (box.Width * box.Height)
                                ) < 1e-9
                            ) ?? recipe.Pieces.First(p => p.Role == patch.Role);
                        if (
                            piece.Template is not null
                            || form.Kind.Keyword is "foundation" or "applique"
                        )
                        {
                            // Curved edges and pieces for paper have tests of their own.
                            continue;
                        }
                        double width = Double(piece.Exactly.Width),
                            height = Double(piece.Exactly.Height);
                        if (
                            recipe.Technique.EndsWith("stitch-and-flip", StringComparison.Ordinal)
                            || recipe.Technique.EndsWith("quick-corners", StringComparison.Ordinal)
                        )
                        {
                            // The seam of a flipped square is its own diagonal, so the ends of the seam allowance
                            // are missing; what must be there is the triangle out to the unit's raw edges.
                            bool flipped =
                                recipe.Technique == "corners-stitch-and-flip"
                                    ? patch.Role < form.RoleCount - 1
                                    : patch.Role == 1;
                            if (flipped)
                            {
                                double leg = Double(patch.Shape.Bounds.Width) + (2 * seam);
                                width.ShouldBe(leg, leg * 1e-9, recipe.Technique);
                                height.ShouldBe(leg, leg * 1e-9, recipe.Technique);
                                continue;
                            }
                            width.ShouldBe(Double(form.Width) + (2 * seam), 1e-9);
                            height.ShouldBe(Double(form.Height) + (2 * seam), 1e-9);
                            continue;
                        }
                        if (form.Kind.Keyword == "square-in-square" && patch.Role == 0)
                        {
                            // Cut straight, set on its point: its diagonal is the patch's width.
                            box.Width.ShouldBe(width * Math.Sqrt(2), 1e-9);
                            continue;
                        }
                        if (form.Kind.Keyword is "eight-point-star" or "seminole")
                        {
                            // Diamonds and quarters of squares lie slanted in what they are cut from; the areas are
                            // held elsewhere.
                            continue;
                        }
                        if (piece.WholeStrip)
                        {
                            box.Width.ShouldBe(height, 1e-9, "a strip is as wide as a cell");
                            box.Height.ShouldBeLessThanOrEqualTo(width + 1e-9);
                            continue;
                        }
                        (double longer, double shorter) = (
                            Math.Max(box.Width, box.Height),
                            Math.Min(box.Width, box.Height)
                        );
                        longer.ShouldBeLessThanOrEqualTo(
                            Math.Max(width, height) + 1e-9,
                            $"{recipe.Technique} {patch}"
                        );
                        shorter.ShouldBeLessThanOrEqualTo(Math.Min(width, height) + 1e-9);
                    }
                }
            },
            iter: 150
        );
    }

    [Test]
    public void Cut_sizes_are_the_exact_ones_up_to_the_next_mark()
    {
        Sewn.Sample(
            sewn =>
            {
                (UnitForm form, House house) = sewn;
                foreach (Recipe recipe in RecipesOf(form, house))
                {
                    recipe.UnfinishedWidth.ShouldBe(form.Width + (house.Seam * 2));
                    recipe.UnfinishedHeight.ShouldBe(form.Height + (house.Seam * 2));
                    recipe.Yield.ShouldBePositive();
                    foreach (RecipePiece piece in recipe.Pieces)
                    {
                        piece.Count.ShouldBePositive();
                        piece.Role.ShouldBeInRange(0, form.RoleCount - 1);
                        foreach (
                            (Length cut, Length exactly) in new[]
                            {
                                (piece.Width, piece.Exactly.Width),
                                (piece.Height, piece.Exactly.Height),
                            }
                        )
                        {
                            if (piece.WholeStrip && cut == house.StripLength(house.UsableWidth))
                            {
                                continue;
                            }
                            house.Ruler.Shows(cut).ShouldBeTrue();
                            cut.ShouldBeGreaterThanOrEqualTo(exactly);
                            // Eight at a time is twice a rounded size.
                            Length most =
                                recipe.Technique == "half-square-eight-at-a-time"
                                    ? house.Ruler.Step * 2
                                    : house.Ruler.Step;
                            if (
                                house.Cutting == CuttingStyle.Oversize
                                || recipe.Technique.EndsWith(
                                    "-trim-each-round",
                                    StringComparison.Ordinal
                                )
                            )
                            {
                                most += house.Oversize * 2;
                            }
                            if (form.Kind.Keyword == "half-rectangle")
                            {
                                // Larger until the unit can be trimmed with its seam through the corners.
                                most += house.Ruler.Step * 12;
                            }
                            (cut - exactly).ShouldBeLessThan(most);
                        }
                    }
                    recipe
                        .Pieces.GroupBy(p => p.Name)
                        .ShouldAllBe(g =>
                            g.All(p => p.Width == g.First().Width && p.Height == g.First().Height)
                        );
                }
            },
            iter: 150
        );
    }

    [TestCase("half-square-two-at-a-time", "half-square upper-left, a on b", "3", "3", 2)]
    [TestCase("half-square-eight-at-a-time", "half-square upper-left, a on b", "3", "3", 8)]
    [TestCase("half-square-single-triangles", "half-square upper-left, a on b", "3", "3", 2)]
    [TestCase("quarter-square-two-at-a-time", "quarter-square, a b", "3", "3", 2)]
    [TestCase("quarter-square-two-at-a-time", "quarter-square, a b c", "3", "3", 4)]
    [TestCase("quarter-square-single-triangles", "quarter-square, a b c d", "3", "3", 4)]
    [TestCase("geese-four-at-a-time", "geese up, a on b", "4", "2", 4)]
    [TestCase("geese-stitch-and-flip", "geese up, a on b", "4", "2", 1)]
    [TestCase("square-in-square-quick-corners", "square-in-square, a on b", "4", "4", 1)]
    [TestCase("square-in-square-set-in-triangles", "square-in-square, a on b", "4", "4", 1)]
    [TestCase("corners-stitch-and-flip", "corners upper-left, a on b", "4", "4", 1)]
    // 40 in ÷ 6 1/2 in = 6 segments, each a unit.
    [TestCase("rail-strip-sets", "rail upright, a b c", "6", "6", 6)]
    // 40 ÷ 2 1/2 = 16 segments a set; two to a unit.
    [TestCase("four-patch-strip-sets", "four-patch, a b", "4", "4", 8)]
    // Two sets of one kind and one of the other: 32 and 16 segments.
    [TestCase("nine-patch-strip-sets", "nine-patch, a b", "6", "6", 16)]
    // Columns even: both rows come from one kind of set, four to a unit. 40 ÷ 1 1/2 = 26.
    [TestCase("checkerboard-strip-sets", "checkerboard 4 x 4, a b", "4", "4", 6)]
    [TestCase("checkerboard-strip-sets", "checkerboard 5 x 4, a b", "5", "4", 13)]
    public void Batches_yield(
        string technique,
        string unit,
        string width,
        string height,
        int yield
    ) => Recipes.Of(technique, unit, width, height).Yield.ShouldBe(yield);

    [Test]
    public void Strip_sets_are_counted_kind_by_kind()
    {
        Recipe recipe = Recipes.Of("nine-patch-strip-sets", "nine-patch, a b", "6");
        recipe.StripSets.Length.ShouldBe(2);
        recipe.StripSets[0].Roles.ShouldBe([0, 1, 0]);
        recipe.StripSets[0].SegmentsPerUnit.ShouldBe(2);
        recipe.StripSets[1].Roles.ShouldBe([1, 0, 1]);
        recipe.StripSets[1].SegmentsPerUnit.ShouldBe(1);
        recipe.Pieces.Select(p => p.Count).ShouldBe([5, 4]);
        // 20 units: 40 segments of the first kind are 3 sets, 20 of the second 2 sets; whole batches would be 4 and 2.
        recipe.PiecesFor(20).Select(p => p.Count).ShouldBe([3 * 2 + 2, 3 + 2 * 2]);
        recipe.PiecesFor(1).Select(p => p.Count).ShouldBe([3, 3]);
        recipe.BatchesFor(20).ShouldBe(2);
    }

    [Test]
    public void Strip_sets_give_at_least_the_units_they_are_cut_for()
    {
        Gen.Select(Sewn, Gen.Int[1, 500])
            .Sample(
                (sewn, units) =>
                {
                    foreach (Recipe recipe in RecipesOf(sewn.Form, sewn.House))
                    {
                        ImmutableArray<RecipePiece> pieces = recipe.PiecesFor(units);
                        for (int i = 0; i < pieces.Length; i++)
                        {
                            ((long)pieces[i].Count).ShouldBeLessThanOrEqualTo(
                                recipe.Pieces[i].Count * recipe.BatchesFor(units)
                            );
                        }
                        foreach (StripSet set in recipe.StripSets)
                        {
                            int sets = set.SetsFor(units);
                            (sets * set.SegmentsPerSet).ShouldBeGreaterThanOrEqualTo(
                                units * set.SegmentsPerUnit
                            );
                            ((sets - 1) * set.SegmentsPerSet).ShouldBeLessThan(
                                units * set.SegmentsPerUnit
                            );
                        }
                    }
                },
                iter: 100
            );
    }

    // Offcut corners: squares of 2 1/2 in leave pairs that trim to 2.5 − √2/2 = 1.79, down to 1 3/4 in.
    [TestCase("geese-stitch-and-flip", "geese up, a on b", "4", "2", "2 of 1 3/4")]
    [TestCase("square-in-square-quick-corners", "square-in-square, a on b", "4", "4", "4 of 1 3/4")]
    [TestCase("corners-stitch-and-flip", "corners upper-left of 1/2, a on b", "4", "4", "")]
    [TestCase("geese-four-at-a-time", "geese up, a on b", "4", "2", "")]
    public void Leftovers(
        string technique,
        string unit,
        string width,
        string height,
        string left
    ) =>
        string.Join(
                ", ",
                Recipes
                    .Of(technique, unit, width, height)
                    .Leftovers.Select(l => $"{l.Count} of {LengthText.Inches(l.Width)}")
            )
            .ShouldBe(left);

    [TestCase("3", "3 7/8", false)]
    // 2 1/3 + 0.8536 = 3.187: the next mark, 3 1/4, is 0.063 larger.
    [TestCase("2 1/3", "3 1/4", true)]
    public void Units_that_rounding_makes_larger_are_trimmed(string finished, string cut, bool trim)
    {
        Recipe recipe = Recipes.Of(
            "half-square-two-at-a-time",
            "half-square upper-left, a on b",
            finished
        );
        Recipes.Side(recipe, "square").ShouldBe(cut);
        recipe.Trim.ShouldBe(trim);
    }

    [TestCase(
        "quarter-square-two-at-a-time",
        "quarter-square, a b c d",
        "3",
        "3",
        "made two at a time, a quarter-square has one fabric on two opposite sides; this one has four parts"
    )]
    [TestCase(
        "square-in-square-set-in-triangles",
        "square-in-square, a on b",
        "5",
        "5",
        "its center square of 4.036 in is not near a mark of the ruler; the next, 4 1/8 in, would cut off its points"
    )]
    [TestCase(
        "half-square-eight-at-a-time",
        "half-square upper-left, a on b",
        "20",
        "20",
        "its large square of 41 3/4 × 41 3/4 in is longer than a strip of the fabric, 40 in"
    )]
    [TestCase(
        "rail-strip-sets",
        "rail upright, a b",
        "4",
        "42",
        "a segment of 42 1/2 in is longer than a strip of the fabric, 40 in"
    )]
    [TestCase(
        "geese-four-at-a-time",
        "half-square upper-left, a on b",
        "3",
        "3",
        "it makes no half-square triangle unit"
    )]
    public void Refusals(string technique, string unit, string width, string height, string reason)
    {
        Recipes
            .Technique(technique)
            .CanMake(Written.Form(unit, width, height), Recipes.Inches, out string why)
            .ShouldBeFalse();
        why.ShouldBe(reason);
    }

    [Test]
    public void A_narrow_fabric_rules_strip_sets_out()
    {
        UnitForm form = Written.Form("four-patch, a b", "24");
        Technique technique = Recipes.Technique("four-patch-strip-sets");
        technique.CanMake(form, Recipes.Inches, out _).ShouldBeTrue();
        technique
            .CanMake(form, Recipes.Inches, Length.FromInches(12), out string reason)
            .ShouldBeFalse();
        reason.ShouldBe("a segment of 12 1/2 in is longer than a strip of the fabric, 12 in");
    }

    // One segment a set where two are needed for a unit: two sets make one unit.
    [Test]
    public void A_set_may_give_less_than_a_unit()
    {
        Recipe recipe = Recipes.Of("four-patch-strip-sets", "four-patch, a b", "50");
        recipe.StripSets[0].SegmentsPerSet.ShouldBe(1);
        recipe.Yield.ShouldBe(1);
        recipe.Pieces.Select(p => p.Count).ShouldBe([2, 2]);
    }

    [Test]
    public void Every_kind_has_a_technique_that_makes_any_of_its_units()
    {
        Sewn.Sample(
            sewn =>
                // A curve within the seam allowance cannot be sewn at all.
                (
                    (
                        sewn.Form.Kind.Keyword == "quarter-circle"
                        && sewn.Form.Measure <= sewn.House.Seam
                    )
                    // Diamonds that lie between the ruler's marks: nothing would trim them.
                    || sewn.Form.Kind.Keyword is "eight-point-star" or "seminole"
                    || TechniqueCatalog
                        .For(sewn.Form.Kind)
                        .Any(t => t.CanMake(sewn.Form, sewn.House, Length.FromInches(1000), out _))
                ).ShouldBeTrue(),
            iter: 150
        );
    }

    [Test]
    public void Catalog_is_sound()
    {
        TechniqueCatalog.Keywords.ShouldBeUnique();
        TechniqueCatalog.All.Select(t => t.Name).ShouldBeUnique();
        foreach (Technique technique in TechniqueCatalog.All)
        {
            technique.Keyword.ShouldMatch("^[a-z]+(-[a-z]+)+$");
            TechniqueCatalog.TryFind(technique.Keyword, out Technique? found).ShouldBeTrue();
            found.ShouldBeSameAs(technique);
            UnitKindCatalog.TryFind(technique.Kind, out UnitKind? kind).ShouldBeTrue();
            TechniqueCatalog.For(kind!).ShouldContain(technique);
        }
    }

    internal static IEnumerable<Recipe> RecipesOf(UnitForm form, House house)
    {
        foreach (Technique technique in TechniqueCatalog.For(form.Kind))
        {
            if (technique.CanMake(form, house, out _))
            {
                yield return Recipes.Of(technique.Keyword, form, house);
            }
        }
    }

    private static double Double(Length length) => length.Inches.ToDouble();

    // Mitred offset by another library than ours.
    private static Geometry Offset(RolePatch patch, double by)
    {
        Coordinate[] ring =
        [
            .. patch.Shape.Corners.Select(c => new Coordinate(Double(c.X), Double(c.Y))),
        ];
        Polygon polygon = new GeometryFactory().CreatePolygon([.. ring, ring[0]]);
        return BufferOp.Buffer(
            polygon,
            by,
            new BufferParameters
            {
                JoinStyle = NetTopologySuite.Operation.Buffer.JoinStyle.Mitre,
                MitreLimit = 10,
            }
        );
    }
}
