using System.Collections.Immutable;
using PatternPress.Proofing;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Tables;

namespace PatternPress.Tests.Proofing;

/// <summary>Published cutting lists of classic blocks, retyped as numbers and put in place of the tables' own.</summary>
public sealed class WorkedExampleTests
{
    private const string OhioStar = """
            map: |
              c q c
              w m w
              c q c
            units: {c: square a, m: square b, q: "quarter-square top, b a", w: "quarter-square left, b a"}
        """;

    private const string FriendshipStar = """
            map: |
              c p c
              r m q
              c t c
            units: {c: square a, m: square b, p: "half-square lower-right, b on a", q: "half-square lower-left, b on a", t: "half-square upper-left, b on a", r: "half-square upper-right, b on a"}
        """;

    private const string Geese = """
            map: |
              G G H H
              F F K K
            units: {G: "geese up, b on a", H: "geese up, b on a", F: "geese down, b on a", K: "geese down, b on a"}
        """;

    private const string QuarterSquares = "quarter-square: quarter-square-single-triangles";
    private const string HalfSquares = "half-square: half-square-two-at-a-time";
    private const string FourGeese = "geese: geese-four-at-a-time";

    // quiltcg.com, block of the month, April 2015: Ohio Star, 12 in: 4 corners and a center of 4 1/2, 2 and 2 squares
    // of 5 1/4 cut twice diagonally.
    [TestCase("ohio-star", QuarterSquares, "12", "square", "5 1/4", 2)]
    // The same block at other sizes by the rule of finished + 1 1/4 (karencombs.com, Formulas for Quilters, 2002).
    [TestCase("ohio-star", QuarterSquares, "9", "square", "4 1/4", 2)]
    [TestCase("ohio-star", QuarterSquares, "6", "square", "3 1/4", 2)]
    // ukqu.co.uk, what size do I cut triangles: star on a nine-patch grid, 6 in: squares of 2 7/8; 9 in: 3 7/8.
    [TestCase("friendship-star", HalfSquares, "6", "square", "2 7/8", 2)]
    [TestCase("friendship-star", HalfSquares, "9", "square", "3 7/8", 2)]
    // American Patchwork & Quilting, Striking Stars: one of 5 1/4 and four of 2 7/8 make four units of 4 1/2 x 2 1/2.
    [TestCase("geese", FourGeese, "8 x 4", "large square", "5 1/4", 1)]
    [TestCase("geese", FourGeese, "8 x 4", "small square", "2 7/8", 4)]
    public void A_published_block_is_proved(
        string block,
        string method,
        string size,
        string piece,
        string cut,
        int count
    )
    {
        (PrintedTables tables, ImmutableArray<Quilt> drawing) = Made(block, method, size);
        PrintedTables retyped = Retyped(tables, piece, Inches(cut));
        Proof.Prove(retyped, drawing).Mistakes.Select(mistake => mistake.Text).ShouldBeEmpty();
        UnitCell unit = retyped.Units[0].Rows[0].BySize[0]!;
        unit.Pieces.Where(p => p.Name == piece).ShouldAllBe(p => p.Count * unit.Batches == count);
    }

    // delawarequilts.com, Ohio Star Variation: squares 1/8 in larger than the geometry asks for. Sewn as printed and not
    // trimmed the units come out too large.
    [TestCase("12", "5 3/8")]
    [TestCase("9", "4 3/8")]
    [TestCase("6", "3 3/8")]
    public void A_published_oversize_is_refuted_unless_it_is_trimmed(string size, string cut)
    {
        (PrintedTables tables, ImmutableArray<Quilt> drawing) = Made(
            "ohio-star",
            QuarterSquares,
            size
        );
        Mistake first = Proof
            .Prove(Retyped(tables, "square", Inches(cut)), drawing)
            .Sizes[0]
            .FirstWrongStep.ShouldNotBeNull();
        first.Text.ShouldContain(cut);
        first.Size.ShouldBe("only");
    }

    // The commonest slip with half squares: finished + 3/4 in place of + 7/8.
    [Test]
    public void A_square_too_small_for_its_half_squares_is_refuted()
    {
        (PrintedTables tables, ImmutableArray<Quilt> drawing) = Made(
            "friendship-star",
            HalfSquares,
            "6"
        );
        Mistake first = Proof
            .Prove(Retyped(tables, "square", Inches("2 3/4")), drawing)
            .Sizes[0]
            .Shortages.First(m => m.Step == ProofStep.SewUnits);
        first.Text.ShouldContain("2 3/4 in printed, but to come out at size it needs 2.854 in");
    }

    private static (PrintedTables Tables, ImmutableArray<Quilt> Drawing) Made(
        string block,
        string method,
        string size
    ) =>
        Proofs
            .Of(
                $$"""
                pattern: {title: T, edition: 1.0.0, date: 2026-01-01, designer: D}
                fabrics:
                  A: {name: Ink, color: "#15233b"}
                  B: {name: Amber, color: "#f2a71b"}
                blocks:
                  one:
                    size: {{size}}
                {{Block(block)}}
                colorings: {K: one a=A b=B}
                methods: {{{method}}}
                quilt: {fill: K, binding: B}
                sizes: {only: {blocks: 1 x 1} }
                """
            )!
            .Value;

    private static string Block(string name) =>
        name switch
        {
            "ohio-star" => OhioStar,
            "friendship-star" => FriendshipStar,
            _ => Geese,
        };

    private static Length Inches(string text) =>
        LengthText.TryParse(text, LengthUnit.Inch, out Length length, out string problem)
            ? length
            : throw new FormatException(problem);

    // The side of a square in every table that prints it; strips keep their pieces and end where these end.
    private static PrintedTables Retyped(PrintedTables tables, string piece, Length side)
    {
        UnitCell unit = tables.Units[0].Rows[0].BySize[0]!;
        var ids = unit.Pieces.Where(p => p.Name == piece).Select(p => p.Cut).ToHashSet();
        ids.ShouldNotBeEmpty();
        UnitCell changed = unit with
        {
            Pieces =
            [
                .. unit.Pieces.Select(p =>
                    p.Name == piece ? p with { Width = side, Height = side } : p
                ),
            ],
            Measures =
            [
                .. unit.Measures.Select(m => m.Name == piece ? m with { Value = side } : m),
            ],
        };
        return tables with
        {
            Units =
            [
                tables.Units[0] with
                {
                    Rows = [tables.Units[0].Rows[0] with { BySize = [changed] }],
                },
                .. tables.Units[1..],
            ],
            Cutting = [.. tables.Cutting.Select(Cut)],
        };

        CuttingTable Cut(CuttingTable table) =>
            table with
            {
                Rows =
                [
                    .. table.Rows.Select(row =>
                        ids.Contains(row.Id)
                            ? row with
                            {
                                BySize = [row.BySize[0]! with { Width = side, Height = side }],
                            }
                            : row
                    ),
                ],
                BySize = [table.BySize[0] is { } list ? Strips(list) : null],
            };

        StripList Strips(StripList list) =>
            list with
            {
                Strips =
                [
                    .. list.Strips.Select(strip =>
                    {
                        ImmutableArray<StripPieces> pieces =
                        [
                            .. strip.Pieces.Select(p =>
                                p.Cuts.Any(ids.Contains)
                                    ? p with
                                    {
                                        Length = side,
                                        Height = side,
                                    }
                                    : p
                            ),
                        ];
                        return strip with
                        {
                            Pieces = pieces,
                            End = pieces.Aggregate(
                                list.StripLength,
                                (left, p) => left - (p.Length * p.PerStrip)
                            ),
                        };
                    }),
                ],
            };
    }
}
