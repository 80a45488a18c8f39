using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Tables;
using PatternPress.Tests.Quilting.Techniques;

namespace PatternPress.Tests.Quilting.Cutting;

public sealed class MakerTests
{
    private static Making Make(
        string blocks,
        string colorings,
        string quilt,
        string sizes,
        string more = ""
    ) =>
        Makings.Of(
            $$"""
            pattern: {title: T, edition: 1.0.0, date: 2026-01-01, designer: D}
            {{more}}
            fabrics:
              A: {name: Ink, color: "#15233b"}
              B: {name: Amber, color: "#f2a71b"}
              C: {name: Rose, color: "#d1495b"}
            blocks: {{blocks}}
            colorings: {{colorings}}
            quilt: {{quilt}}
            sizes: {{sizes}}
            """
        );

    private const string Pinwheel = """
        {pin: {size: 6, map: "h", units: {h: "half-square upper-left, a on b"}}}
        """;

    [Test]
    public void Units_alike_in_every_size_are_made_together()
    {
        const string Blocks = """
            {one: {map: "p", units: {p: "half-square upper-left, a on b"}},
             two: {map: "p", units: {p: "half-square upper-left, a on b"}}}
            """;
        const string Colorings = "{K: one a=A b=B, L: two a=A b=B}";
        Making same = Make(
            Blocks,
            Colorings,
            "{fill: \"K L\"}",
            "{s: {blocks: 2 x 2, block: 3}, t: {blocks: 4 x 4, block: 4}}"
        );
        UnitShape shape = same.Shapes.ShouldHaveSingleItem();
        UnitClass unit = shape.Classes.ShouldHaveSingleItem();
        unit.Label.ShouldBe("1");
        unit.Uses.Select(use => use.Coloring).ShouldBe(["K", "L"]);
        same.Sizes.Select(size => size.Units.Single().Needed).ShouldBe([4L, 16L]);
    }

    [Test]
    public void Units_alike_in_one_size_only_are_rows_of_their_own()
    {
        // A corner of half the side and one of 1 1/2 in are the same on 3 in, not on 6 in.
        Making making = Make(
            """
            {one: {size: 3, map: "p", units: {p: "corners upper-left, a on b"}},
             two: {size: 3, map: "p", units: {p: "corners upper-left of 1 1/2, a on b"}}}
            """,
            "{K: one a=A b=B, L: two a=A b=B}",
            "{fill: \"K L\"}",
            "{s: {blocks: 2 x 2}, t: {blocks: 2 x 2, block: 6}}"
        );
        making
            .Shapes.Select(shape => shape.Classes.Single().Uses.Single().Coloring)
            .ShouldBe(["K", "L"]);
        UnitBatch[] small = [.. making.Sizes[0].Units];
        small[0].Form.ShouldBe(small[1].Form);
        UnitBatch[] large = [.. making.Sizes[1].Units];
        large[0].Form.ShouldNotBe(large[1].Form);
    }

    [Test]
    public void One_shape_in_several_fabrics_shares_its_steps()
    {
        Making making = Make(
            Pinwheel,
            "{K: pin a=A b=B, L: pin a=C b=B, M: pin a=B b=A}",
            "{fill: \"K L M\"}",
            "{s: {blocks: 3 x 3}}"
        );
        UnitShape shape = making.Shapes.ShouldHaveSingleItem();
        // A on B is B on A upside down.
        shape
            .Classes.Select(unit => $"{unit.Label} {string.Join("", unit.Fabrics)}")
            .ShouldBe(["1a AB", "1b BC"]);
        making.Sizes[0].Units.Select(unit => unit.Needed).ShouldBe([6L, 3L]);
    }

    [Test]
    public void A_size_that_lacks_a_block_does_not_split_its_units()
    {
        Making making = Make(
            """
            {one: {size: 6, map: "p", units: {p: "half-square upper-left, a on b"}},
             two: {size: 6, map: "p", units: {p: "half-square upper-right, a on b"}}}
            """,
            "{K: one a=A b=B, L: two a=A b=B}",
            "{fill: \"K L\"}",
            "{s: {blocks: 1 x 2}, t: {blocks: 2 x 2}}"
        );
        making.Shapes.ShouldHaveSingleItem().Classes.ShouldHaveSingleItem();
        making.Sizes.Select(size => size.Units.Single().Needed).ShouldBe([2L, 4L]);
    }

    [Test]
    public void Of_equal_fabric_the_preferred_technique_is_taken_for_all_sizes()
    {
        // 16 and 64 are multiples of 8, so two and eight at a time take the same fabric.
        Making making = Make(
            Pinwheel,
            "{K: pin a=A b=B}",
            "{fill: K}",
            "{s: {blocks: 4 x 4}, t: {blocks: 8 x 8}}"
        );
        making.Shapes.Single().Technique.Keyword.ShouldBe("half-square-two-at-a-time");
        making
            .Sizes.SelectMany(size => size.Units)
            .ShouldAllBe(unit => unit.Recipe.Technique == "half-square-two-at-a-time");
    }

    [Test]
    public void The_thriftiest_technique_is_taken()
    {
        // One goose: from 5 1/4 and four of 2 7/8 in, or from 2 1/2 × 4 1/2 and two of 2 1/2 in, which is less.
        Make(
            """{fly: {size: 4 x 2, map: "G", units: {G: "geese up, a on b"}}}""",
            "{K: fly a=A b=B}",
            "{fill: K}",
            "{s: {blocks: 1 x 1}}"
        )
            .Shapes.Single()
            .Technique.Keyword.ShouldBe("geese-stitch-and-flip");
        // Four of them the other way round.
        Make(
            """{fly: {size: 4 x 2, map: "G", units: {G: "geese up, a on b"}}}""",
            "{K: fly a=A b=B}",
            "{fill: K}",
            "{s: {blocks: 2 x 2}}"
        )
            .Shapes.Single()
            .Technique.Keyword.ShouldBe("geese-four-at-a-time");
    }

    [Test]
    public void What_the_house_leaves_out_is_not_taken()
    {
        Making making = Make(
            Pinwheel,
            "{K: pin a=A b=B}",
            "{fill: K}",
            "{s: {blocks: 4 x 4}}",
            "house: {without: half-square-two-at-a-time}"
        );
        making.Shapes.Single().Technique.Keyword.ShouldBe("half-square-eight-at-a-time");
    }

    [Test]
    public void With_every_technique_left_out_the_unit_is_a_problem()
    {
        Making making = Make(
            Pinwheel,
            "{K: pin a=A b=B}",
            "{fill: K}",
            "{s: {blocks: 4 x 4}, t: {blocks: 5 x 5}}",
            "house: {without: half-square-two-at-a-time half-square-eight-at-a-time half-square-single-triangles}"
        );
        var problem = making
            .Problems.ShouldHaveSingleItem()
            .ShouldBeOfType<MakingProblem.NoTechnique>();
        problem.Reasons.Length.ShouldBe(3);
        problem.Sizes.ShouldBe(["s", "t"]);
        making.Sizes.ShouldAllBe(size => size.Units.IsEmpty);
        Tabulator.Tabulate(making).Units.ShouldBeEmpty();
    }

    [Test]
    public void The_designer_names_a_technique_for_a_kind_or_a_letter()
    {
        const string Blocks = """
            {pin: {size: 12, map: "h k", units: {h: "half-square upper-left, a on b", k: "half-square upper-left, a on b"}, columns: 1 1, rows: 1}}
            """;
        Making making = Make(
            Blocks.Replace("size: 12", "size: 12 x 6", StringComparison.Ordinal),
            "{K: pin a=A b=B}",
            "{fill: K}",
            "{s: {blocks: 4 x 4}}",
            "methods: {half-square: half-square-eight-at-a-time, pin.k: half-square-single-triangles}"
        );
        making
            .Shapes.Select(shape => $"{shape.Number} {shape.Technique.Keyword}")
            .ShouldBe(["1 half-square-eight-at-a-time", "2 half-square-single-triangles"]);
        // Triangles are told apart from squares: their squares are cut once more.
        making
            .Sizes[0]
            .Cuts.Where(cut =>
                cut.After == PatternPress.Quilting.Techniques.PieceCut.OnceDiagonally
            )
            .Sum(cut => cut.Count)
            .ShouldBe(16);
    }

    // teacherscollegesj.org slides "Can You Figure the Amount of Yardage": 70 × 86 with a border cut 6 1/2 in wide gives
    // 82 × 98, and the border's strips are 338 in long together.
    [Test]
    public void A_published_border()
    {
        SizeMaking size = Makings.Plain("70", "86", quilt: "borders: [{width: 6, fabric: B}]");
        size.Quilt.Width.ShouldBe(Length.FromInches(82));
        size.Quilt.Height.ShouldBe(Length.FromInches(98));
        JoinedStrips joined = size.Joined.ShouldHaveSingleItem();
        joined.StripWidth.ShouldBe(Written.Inches("6 1/2"));
        joined.Needed.ShouldBe(Length.FromInches(338));
        joined.Strips.ShouldBe(9);
        joined
            .Pieces.Select(p => $"{p.Count} {p.Part} {LengthText.Inches(p.Length)}")
            .ShouldBe(["2 Sides 86 1/2", "2 TopAndBottom 82 1/2"]);
    }

    [Test]
    public void Border_strips_that_fit_the_fabric_are_cut_in_one_piece()
    {
        SizeMaking size = Makings.Plain("30", "50", quilt: "borders: [{width: 3, fabric: B}]");
        size.Cuts.Where(cut => cut.Purpose is CutPurpose.Border)
            .Select(cut =>
                $"{cut.Count} {LengthText.Inches(cut.Width)} {LengthText.Inches(cut.Height)} {((CutPurpose.Border)cut.Purpose).Part}"
            )
            .ShouldBe(["3 40 3 1/2 Joined", "2 36 1/2 3 1/2 TopAndBottom"]);
        size.Joined.Single()
            .Pieces.Single()
            .ShouldBe(new JoinedPiece(BorderPart.Sides, Written.Inches("50 1/2"), 2));
    }

    // Delaware Quilts Sizes page: 5 × 6 blocks of 12 in are 60 × 72; with 3 in sashing all round 78 × 93.
    [TestCase("", "60", "72")]
    [TestCase(", sashing: {width: 3, fabric: B, around: yes}", "78", "93")]
    public void Published_quilt_sizes(string sashing, string width, string height)
    {
        Making making = Make(
            """{single: {size: 12, map: "s", units: {s: square a}}}""",
            "{K: single a=A}",
            $"{{fill: K{sashing}}}",
            "{s: {blocks: 5 x 6}}"
        );
        SizeColumn size = Tabulator.Tabulate(making).Sizes.Single();
        size.Width.ShouldBe(Written.Inches(width));
        size.Height.ShouldBe(Written.Inches(height));
    }

    // karasews 2011-07-12: 63 × 88 from charm squares of 5 in (finished 4 1/2): 14 × 20 = 280.
    [Test]
    public void A_published_count_of_charm_squares()
    {
        Making making = Make(
            """{charm: {size: 4 1/2, map: "s", units: {s: square a}}}""",
            "{K: charm a=A, L: charm a=B}",
            "{fill: {checkerboard: K L}}",
            "{s: {blocks: 14 x 20}}"
        );
        SizeMaking size = making.Sizes.Single();
        size.Quilt.Width.ShouldBe(Length.FromInches(63));
        size.Cuts.Sum(cut => cut.Count).ShouldBe(280);
        size.Cuts.ShouldAllBe(cut => cut.Width == Length.FromInches(5));
    }

    [Test]
    public void A_patch_too_wide_for_its_fabric_is_a_problem_of_its_size_alone()
    {
        Making making = Make(
            """{whole: {map: "s", units: {s: square a}}}""",
            "{K: whole a=A}",
            "{fill: K}",
            "{s: {blocks: 1 x 1, block: 30}, t: {blocks: 1 x 1, block: 41}}"
        );
        var problem = making
            .Problems.ShouldHaveSingleItem()
            .ShouldBeOfType<MakingProblem.PieceDoesNotFit>();
        problem.Sizes.ShouldBe(["t"]);
        problem.By.ShouldBe(Written.Inches("2"));
        making.Sizes[0].Fabric("A").ShouldNotBeNull();
        making.Sizes[1].Fabric("A").ShouldBeNull();
        // What can be printed still is.
        Tabulator
            .Tabulate(making)
            .Requirements.Fabrics.Single()
            .BySize.Select(cell => cell is not null)
            .ShouldBe([true, false]);
    }

    [Test]
    public void A_directional_patch_is_cut_as_it_lies_in_its_block()
    {
        Making making = Makings.Of(
            """
            pattern: {title: T, edition: 1.0.0, date: 2026-01-01, designer: D}
            fabrics:
              A: {name: Ink, color: "#15233b", directional: yes}
              B: {name: Amber, color: "#f2a71b"}
            blocks:
              bars:
                size: 9
                map: |
                  U L
                  U M
                  U N
                units: {U: rectangle a, L: rectangle a, M: rectangle b, N: rectangle b}
                columns: 1 2
                rows: 1 1 1
            colorings: {K: bars a=A b=B}
            quilt: {fill: K}
            sizes: {s: {blocks: 1 x 1}}
            """
        );
        making
            .Sizes[0]
            .Cuts.Select(cut =>
                $"{cut.Id} {cut.Count} {LengthText.Inches(cut.Width)} × {LengthText.Inches(cut.Height)}"
            )
            .ShouldBe(["A1 1 3 1/2 × 9 1/2", "A2 1 6 1/2 × 3 1/2", "B1 2 6 1/2 × 3 1/2"]);
    }

    [Test]
    public void Ids_of_fabrics_that_end_in_a_digit_cannot_be_mistaken()
    {
        Making making = Makings.Of(
            """
            pattern: {title: T, edition: 1.0.0, date: 2026-01-01, designer: D}
            fabrics:
              A: {name: Ink, color: "#15233b"}
              A1: {name: Amber, color: "#f2a71b"}
            blocks: {pin: {size: 6, map: "h", units: {h: "half-square upper-left, a on b"}}}
            colorings: {K: pin a=A b=A1}
            quilt: {fill: K}
            sizes: {s: {blocks: 2 x 2}}
            """
        );
        making.Sizes[0].Cuts.Select(cut => cut.Id).ShouldBe(["A1", "A1-1"]);
    }

    [Test]
    public void Every_number_has_a_derivation()
    {
        Making making = Make(
            Pinwheel,
            "{K: pin a=A b=B, P: plain C}",
            "{fill: \"K P\", borders: [{width: 2, fabric: C}], binding: A, backing: B}",
            "{s: {blocks: 9 x 9}}"
        );
        SizeMaking size = making.Sizes.Single();
        var derivations = Derivations.Of(making, size).ToDictionary(d => d.Of);
        derivations.ShouldContainKey("fabric A");
        derivations.ShouldContainKey("binding");
        derivations["binding strips"]
            .Terms[^1]
            .Value.ShouldBe(new Quantity.Count(size.Binding!.Strips));
        derivations["backing"].Terms[^1].Value.ShouldBe(new Quantity.Bought(size.Backing!.Yardage));
        derivations.ShouldContainKey("batting");
        derivations["unit 1"].Terms[^1].Value.ShouldBe(new Quantity.Count(size.Units[0].Made));
        foreach (Cut cut in size.Cuts)
        {
            derivations[$"cut {cut.Id}"].Terms[0].Value.ShouldBe(new Quantity.Count(cut.Count));
        }
        foreach (JoinedStrips joined in size.Joined)
        {
            derivations[$"joined {joined.Cut}"]
                .Terms[^1]
                .Value.ShouldBe(new Quantity.Count(joined.Strips));
        }
        Cut plain = size.Cuts.Single(cut => cut.Purpose is CutPurpose.PlainBlock);
        derivations[$"cut {plain.Id}"].Terms[0].How.ShouldBe("36 P × 1");
    }

    [Test]
    public void Sashing_rows_longer_than_the_fabric_are_joined()
    {
        Making making = Make(
            """{single: {size: 12, map: "s", units: {s: square a}}}""",
            "{K: single a=A}",
            "{fill: K, sashing: {width: 2, fabric: B}}",
            "{s: {blocks: 3 x 3}, t: {blocks: 4 x 4}}"
        );
        // 3 × 12 + 2 × 2 + 1/2 = 40 1/2 in; 54 1/2 in.
        making
            .Sizes.Select(size => size.Joined.Single().Pieces.Single().Length)
            .ShouldBe([Written.Inches("40 1/2"), Written.Inches("54 1/2")]);
        SashingRow row = Tabulator
            .Tabulate(making)
            .Sashing.Single(r => r.Kind == PatternPress.Quilting.Resolving.SashKind.Row);
        row.BySize[1]!.Joined!.Strips.ShouldBe(5);
        row.BySize[1]!.CutWidth.ShouldBe(Written.Inches("54 1/2"));
    }
}
