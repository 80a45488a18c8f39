using System.Collections.Immutable;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>
/// The hatches that stand for fabrics: fine enough to be told apart inside patches a few millimetres wide, where those
/// for whole pages are too coarse. All are made of straight lines, dashes and dots only, which a page holds in a few
/// bytes a line: zigzags, bricks and crosses are dashes that meet. No line is thinner than 0.35 pt.
/// </summary>
public static class FabricHatches
{
    private const double Thin = 0.4;

    /// <summary>All hatches, no two of which look alike.</summary>
    public static ImmutableArray<Hatch> All => Catalogue.Entries;

    // Built when first asked for, not when the program starts.
    private static class Catalogue
    {
        public static readonly ImmutableArray<Hatch> Entries =
        [
            .. InFourWays("lines", way => [Lines(way, 4)]),
            .. InFourWays("close lines", way => [Lines(way, 1.9)]),
            .. InFourWays("bold lines", way => [Lines(way, 3.4, 1.2)]),
            .. InFourWays("double lines", way => [Lines(way, 5), Lines(way, 5, Thin, 1.4)]),
            .. InFourWays("dashes", way => [Dashes(way, 2.6, 0.6, 2.6, 2.2)]),
            Of("grid", Lines(0, 4.2), Lines(90, 4.2)),
            Of("close grid", Lines(0, 2), Lines(90, 2)),
            Of("lattice", Lines(45, 4.2), Lines(-45, 4.2)),
            Of("close lattice", Lines(45, 2), Lines(-45, 2)),
            Of("triangle net", Lines(0, 3.8, 0.35), Lines(60, 3.8, 0.35), Lines(-60, 3.8, 0.35)),
            Of("fine dots", Dots(2.6, 0.6)),
            Of("dots", Dots(3.4, 1.2)),
            Of("bold dots", Dots(3.8, 2.2)),
            Of("level zigzags", Zigzags(0, 3)),
            Of("upright zigzags", Zigzags(90, 3)),
            Of("bricks", Bricks(0, 3.2)),
            Of("upright bricks", Bricks(90, 3.2)),
            Of("plus signs", Crosses(0, 2.4, 5)),
            Of("crosses", Crosses(45, 2.4, 5)),
            Of("squares", Dashes(0, 2.1, 1.4, 1.4, 2.8)),
            Of("diamonds", Dashes(45, 2.1, 1.4, 1.4, 2.8)),
            Of("checkerboard", Dashes(0, 2, 2, 2, 2)),
            Of("slanted checkerboard", Dashes(45, 2, 2, 2, 2)),
            Of("basket weave", Basket(0, 3.9)),
            Of("slanted basket weave", Basket(45, 3.9)),
            Of("long and short dashes", DashDot(0)),
            Of("upright long and short dashes", DashDot(90)),
        ];

        private static Hatch Of(string name, params ImmutableArray<HatchLayer> layers) =>
            new(name, layers);

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

        private static HatchLayer.Lines Lines(
            double degrees,
            double spacing,
            double width = Thin,
            double offset = 0
        ) => new(degrees, spacing, width) { Offset = offset };

        private static HatchLayer.Lines Dashes(
            double degrees,
            double spacing,
            double width,
            double dash,
            double gap,
            double offset = 0
        ) =>
            new(degrees, spacing, width)
            {
                Dashes = [dash, gap],
                Stagger = (dash + gap) / 2,
                Offset = offset,
            };

        // Dots in rows moved by half: as far apart in all directions.
        private static HatchLayer.Lines Dots(double apart, double size) =>
            new(0, Math.Round(apart * 0.866, 2), size) { Dashes = [0, apart], Stagger = apart / 2 };

        private static HatchLayer.Lines DashDot(double degrees) =>
            new(degrees, 2.8, 0.6) { Dashes = [4, 1.6, 1, 1.6], Stagger = 4.1 };

        // Dashes as long as their lines are apart fill every other column; those that slant the other way fill the
        // columns between, moved by one line, and meet them end to end.
        private static ImmutableArray<HatchLayer> Zigzags(double degrees, double side) =>
            [
                Dashes(degrees + 45, side, 0.5, side, side),
                Dashes(degrees - 45, side, 0.5, side, side, offset: side),
            ];

        private static ImmutableArray<HatchLayer> Bricks(double degrees, double height) =>
            [Lines(degrees, height), Dashes(degrees + 90, height, Thin, height, height)];

        // Strokes across and strokes down with their middles at the same places. Lines of 90° are counted to the left,
        // hence the offset the other way.
        private static ImmutableArray<HatchLayer> Crosses(
            double degrees,
            double arm,
            double apart
        ) =>
            [
                Dashes(degrees, apart / 2, 0.6, arm, apart - arm, offset: arm / 2),
                Dashes(degrees + 90, apart / 2, 0.6, arm, apart - arm, offset: -arm / 2),
            ];

        // Cells of three strokes across and three strokes down by turns.
        private static ImmutableArray<HatchLayer> Basket(double degrees, double cell) =>
            [
                .. new[] { 1.0 / 6, 0.5, 5.0 / 6 }.SelectMany(share =>
                    new HatchLayer[]
                    {
                        Dashes(degrees, cell, Thin, cell, cell, offset: cell * share),
                        Dashes(degrees + 90, cell, Thin, cell, cell, offset: cell * (1 - share)),
                    }
                ),
            ];
    }
}
