using System.Collections.Immutable;

namespace PatternPress.Typesetting.Drawings;

/// <summary>
/// The textures that tell areas apart in black and white, made for this purpose. The order matters: each differs from
/// its neighbours in direction, shape or weight, so that the first few are the easiest to tell apart.
/// </summary>
public static class Hatches
{
    /// <summary>All textures, the most distinct first.</summary>
    public static ImmutableArray<Hatch> All => Catalogue.Entries;

    /// <summary>The texture of a name, or none.</summary>
    public static Hatch? Find(string name) => All.FirstOrDefault(hatch => hatch.Name == name);

    // Built when first asked for, not when the program starts.
    static class Catalogue
    {
        public static readonly ImmutableArray<Hatch> Entries =
        [
            Of("rising lines", Lines(-45, 5, 0.6)),
            Of("dots", Dots(5, 1.3)),
            Of("level lines", Lines(0, 4, 0.6)),
            Of("square net", Lines(0, 6, 0.5), Lines(90, 6, 0.5)),
            Of("rings", Shapes(HatchShape.Ring, 4, 7, 0.5)),
            Of("falling lines", Lines(45, 5, 0.6)),
            Of("waves", Waves(0, 6, 0.6, 12, 4, round: true)),
            Of("plus signs", Shapes(HatchShape.Plus, 4, 7, 0.6)),
            Of("upright lines", Lines(90, 4, 0.6)),
            Of("slanted net", Lines(45, 6, 0.5), Lines(-45, 6, 0.5)),
            Of("triangles", Shapes(HatchShape.Triangle, 3.6, 8, 0, filled: true)),
            Of("zigzag", Waves(0, 6.5, 0.6, 6, 4, round: false)),
            Of("level dashes", Dashes(0, 4, 0.7, 5, 4)),
            Of("large dots", Dots(9, 3.2)),
            Of("steep rising lines", Lines(-68, 4.5, 0.6)),
            Of("squares", Shapes(HatchShape.Square, 3.4, 7, 0.5)),
            Of("double level lines", Lines(0, 8, 0.5), Lines(0, 8, 0.5, 2)),
            Of("crosses", Shapes(HatchShape.Cross, 3.2, 7, 0.6)),
            Of("rising dashes", Dashes(-45, 4, 0.7, 5, 4)),
            Of("bows", Shapes(HatchShape.Bow, 6, 7, 0.6)),
            Of("bold rising bars", Lines(-45, 8, 2.4)),
            Of("fine dots", Dots(3, 0.7)),
            Of("upright waves", Waves(90, 6, 0.6, 12, 4, round: true)),
            Of("diamonds", Shapes(HatchShape.Diamond, 5, 8, 0.5)),
            Of("double rising lines", Lines(-45, 9, 0.5), Lines(-45, 9, 0.5, 2.2)),
            Of("net with dots", Lines(0, 9, 0.4, 4.5), Lines(90, 9, 0.4, 4.5), GridDots(9, 1.8)),
            Of("shallow falling lines", Lines(22, 4.5, 0.6)),
            Of("chevrons", Shapes(HatchShape.Chevron, 5, 7, 0.6)),
            Of("bold level bars", Lines(0, 8, 2.4)),
            Of("filled squares", Shapes(HatchShape.Square, 2.6, 7, 0, filled: true)),
            Of("upright zigzag", Waves(90, 6.5, 0.6, 6, 4, round: false)),
            Of("upright dashes", Dashes(90, 4, 0.7, 5, 4)),
            Of("triangle net", Lines(0, 7, 0.4), Lines(60, 7, 0.4), Lines(-60, 7, 0.4)),
            Of("dash and dot", DashDot(0, 5, 0.8)),
            Of("bold falling bars", Lines(45, 8, 2.4)),
            Of("ring and dot", Shapes(HatchShape.Ring, 5, 9, 0.5), StaggeredDots(9, 1.4)),
            Of("fine square net", Lines(0, 3, 0.35), Lines(90, 3, 0.35)),
            Of("double upright lines", Lines(90, 8, 0.5), Lines(90, 8, 0.5, 2)),
            Of("falling dashes", Dashes(45, 4, 0.7, 5, 4)),
            Of("filled diamonds", Shapes(HatchShape.Diamond, 4, 8, 0, filled: true)),
        ];

        static Hatch Of(string name, params ImmutableArray<HatchLayer> layers) => new(name, layers);

        static HatchLayer.Lines Lines(
            double degrees,
            double spacing,
            double width,
            double offset = 0
        ) => new(degrees, spacing, width) { Offset = offset };

        static HatchLayer.Lines Dashes(
            double degrees,
            double spacing,
            double width,
            double dash,
            double gap
        ) => new(degrees, spacing, width) { Dashes = [dash, gap], Stagger = (dash + gap) / 2 };

        static HatchLayer.Lines DashDot(double degrees, double spacing, double width) =>
            new(degrees, spacing, width) { Dashes = [0, 2.5, 4, 2.5], Stagger = 4.5 };

        // Dots in rows moved by half: as far apart in all directions.
        static HatchLayer.Lines Dots(double spacing, double size) =>
            new(0, spacing * 0.866, size) { Dashes = [0, spacing], Stagger = spacing / 2 };

        static HatchLayer.Lines GridDots(double spacing, double size) =>
            new(0, spacing, size) { Dashes = [0, spacing] };

        static HatchLayer.Shapes StaggeredDots(double spacing, double size) =>
            new(HatchShape.Ring, size, spacing, 0) { Filled = true };

        static HatchLayer.Waves Waves(
            double degrees,
            double spacing,
            double width,
            double length,
            double height,
            bool round
        ) => new(degrees, spacing, width, length, height) { Round = round };

        static HatchLayer.Shapes Shapes(
            HatchShape shape,
            double size,
            double spacing,
            double width,
            bool filled = false
        ) => new(shape, size, spacing, width) { Filled = filled };
    }
}
