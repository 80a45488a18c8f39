using System.Collections.Immutable;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Tables;
using PatternPress.Quilting.Techniques;

namespace PatternPress.Tests.Booklet.Words;

/// <summary>Tables of a quilt made up for tests: two sizes, two fabrics, one block.</summary>
internal static class SampleTables
{
    public static PrintedTables Small { get; } =
        new(
            "small",
            "Small",
            "1.0.0",
            LengthUnit.Inch,
            [Size("crib", "Crib", 36, 48, 3, 4), Size("throw", "Throw", 60, 72, 5, 6)],
            [new FabricLabel("A", "Ink *dark*", false), new FabricLabel("B", "Amber", true)],
            new RequirementsTable(
                [
                    new RequirementRow("A", [Buy(50), Buy(100)]),
                    new RequirementRow("B", [Buy(20), null]),
                ],
                [new RequirementRow("B", [Buy(10), Buy(15)])],
                [new RequirementRow(null, [Buy(90), Buy(140)])],
                [new RequirementRow("B", [Buy(30), null])],
                [null, null]
            ),
            [
                new CuttingTable(
                    "A",
                    FabricUse.Top,
                    [
                        new CutRow(
                            "A1",
                            new CutPurpose.BlockPatch(1),
                            PieceCut.None,
                            false,
                            [new BlockUse("lamp", "L1", "s")],
                            [Cut(48), Cut(120)]
                        ),
                    ],
                    [Strips(5), Strips(11)]
                ),
            ],
            [],
            [
                new BlockRow(
                    "L1",
                    1,
                    "lamp",
                    "Lamp",
                    [1],
                    [1],
                    [],
                    [Block(12, 6), Block(30, 12)],
                    []
                ),
            ],
            [],
            [],
            [],
            [],
            [null, null],
            [null, null],
            [],
            [],
            [],
            []
        );

    private static SizeColumn Size(
        string key,
        string name,
        int width,
        int height,
        int across,
        int down
    ) =>
        new(
            key,
            name,
            Length.FromInches(width),
            Length.FromInches(height),
            Length.FromInches(width),
            Length.FromInches(height),
            across,
            down,
            across * down,
            Length.FromInches(0, 1, 4)
        );

    private static RequirementCell Buy(int inches) =>
        new(
            Length.FromInches(40),
            Yardage.RoundUp(Length.FromInches(inches), Length.FromYards(new Rational(1, 8)))
        );

    private static CutCell Cut(int count) =>
        new(count, Length.FromInches(3, 1, 2), Length.FromInches(3, 1, 2));

    private static StripList Strips(int count) =>
        new(
            Length.FromInches(40),
            Length.FromInches(40),
            [
                new StripRow(
                    Length.FromInches(3, 1, 2),
                    count,
                    [
                        new StripPieces(
                            ["A1"],
                            11,
                            Length.FromInches(3, 1, 2),
                            Length.FromInches(3, 1, 2)
                        ),
                    ],
                    Length.FromInches(1, 1, 2)
                ),
            ],
            Length.FromInches(3, 1, 2) * count
        );

    private static BlockCell Block(int count, int inches) =>
        new(
            count,
            Length.FromInches(inches),
            Length.FromInches(inches),
            Length.FromInches(inches, 1, 2),
            Length.FromInches(inches, 1, 2)
        );
}
