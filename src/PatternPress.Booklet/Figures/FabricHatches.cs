using System.Collections.Immutable;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>
/// The hatches that stand for fabrics, drawn to be told apart inside patches a few millimetres wide: open, close and
/// bold lines in four directions, double lines, grids, dashes, dots, waves and small shapes. No line is thinner than
/// 0.35 pt.
/// </summary>
public static class FabricHatches
{
    private const double Thin = 0.4;
    private const double Thick = 1.1;

    /// <summary>All hatches, no two of which look alike.</summary>
    public static ImmutableArray<Hatch> All { get; } =
    [
        .. Lines("lines", 4, Thin),
        .. Lines("close lines", 1.9, Thin),
        .. Lines("bold lines", 3.2, Thick),
        .. InFourWays(
            "double lines",
            degrees =>
                [
                    new HatchLayer.Lines(degrees, 4.8, Thin),
                    new HatchLayer.Lines(degrees, 4.8, Thin) { Offset = 1.3 },
                ]
        ),
        .. InFourWays(
            "dashes",
            degrees =>
                [new HatchLayer.Lines(degrees, 2.6, 0.55) { Dashes = [2.6, 2.2], Stagger = 2.4 }]
        ),
        new("open grid", [new HatchLayer.Lines(0, 4.2, Thin), new HatchLayer.Lines(90, 4.2, Thin)]),
        new(
            "close grid",
            [new HatchLayer.Lines(0, 2.1, Thin), new HatchLayer.Lines(90, 2.1, Thin)]
        ),
        new(
            "open lattice",
            [new HatchLayer.Lines(45, 4.2, Thin), new HatchLayer.Lines(-45, 4.2, Thin)]
        ),
        new(
            "close lattice",
            [new HatchLayer.Lines(45, 2.1, Thin), new HatchLayer.Lines(-45, 2.1, Thin)]
        ),
        Dots("fine dots", 3, 0.6),
        Dots("dots", 3.4, 1.1),
        Dots("bold dots", 3.6, 1.9),
        new("level waves", [new HatchLayer.Waves(0, 3, Thin, 5, 1.3) { Round = true }]),
        new("upright waves", [new HatchLayer.Waves(90, 3, Thin, 5, 1.3) { Round = true }]),
        new("level zigzags", [new HatchLayer.Waves(0, 3, 0.5, 3.4, 1.8)]),
        new("upright zigzags", [new HatchLayer.Waves(90, 3, 0.5, 3.4, 1.8)]),
        Shapes("rings", HatchShape.Ring, 2.4, 4.2),
        Shapes("plus signs", HatchShape.Plus, 2.4, 4),
        Shapes("crosses", HatchShape.Cross, 2, 3.4),
        Shapes("squares", HatchShape.Square, 2.2, 4.2),
        Shapes("diamonds", HatchShape.Diamond, 2.8, 3.8, filled: true),
        Shapes("triangles", HatchShape.Triangle, 2.4, 3.8, filled: true),
        Shapes("chevrons", HatchShape.Chevron, 2.4, 3.4),
    ];

    private static IEnumerable<Hatch> Lines(string name, double spacing, double width) =>
        InFourWays(name, degrees => [new HatchLayer.Lines(degrees, spacing, width)]);

    private static IEnumerable<Hatch> InFourWays(
        string name,
        Func<double, ImmutableArray<HatchLayer>> layers
    )
    {
        yield return new($"level {name}", layers(0));
        yield return new($"upright {name}", layers(90));
        yield return new($"rising {name}", layers(-45));
        yield return new($"falling {name}", layers(45));
    }

    private static Hatch Dots(string name, double apart, double size) =>
        new(
            name,
            [
                new HatchLayer.Lines(0, apart * 0.7, size)
                {
                    Dashes = [0, apart],
                    Stagger = apart / 2,
                },
            ]
        );

    private static Hatch Shapes(
        string name,
        HatchShape shape,
        double size,
        double spacing,
        bool filled = false
    ) => new(name, [new HatchLayer.Shapes(shape, size, spacing, Thin) { Filled = filled }]);
}
