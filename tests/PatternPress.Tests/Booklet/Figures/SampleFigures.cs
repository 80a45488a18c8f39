using System.Collections.Concurrent;
using System.Collections.Immutable;
using PatternPress.Booklet.Figures;
using PatternPress.Quilting.Finishing;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Tables;
using PatternPress.Quilting.Techniques;
using PatternPress.Tests.Quilting.Techniques;
using PlacementChart = PatternPress.Booklet.Figures.PlacementChart;

namespace PatternPress.Tests.Booklet.Figures;

/// <summary>Every figure, drawn from the sample quilts: what holds for one must hold for all.</summary>
internal static class SampleFigures
{
    public sealed record Sample(
        string Name,
        FigureRoom Room,
        Func<FigureStyle, FigureRoom, Picture> Draw
    )
    {
        private readonly ConcurrentDictionary<FigureStyle, Picture> _drawn = new();

        /// <summary>Drawn once and shared by the tests.</summary>
        public Picture In(FigureStyle style) => _drawn.GetOrAdd(style, Anew);

        public Picture Anew(FigureStyle style) => Draw(style, Room);

        public override string ToString() => Name;
    }

    private static readonly Quilt Stars = SampleQuilts.Stars(3, 4);
    private static readonly Quilt ManyStars = SampleQuilts.Stars(7, 8);
    private static readonly Quilt Pinwheels = SampleQuilts.Pinwheels(4, 3);
    private static readonly Quilt Scraps = SampleQuilts.Scraps(9, 8);
    internal static readonly Quilt Medallion = PatternPress
        .Tests.Proofing.Proofs.OfCase("medallion")
        .Drawing[1];

    private static readonly ConcurrentDictionary<(Quilt, FigureStyle), Palette> Palettes = new();

    public static Palette PaletteOf(Quilt quilt, FigureStyle style) =>
        Palettes.GetOrAdd((quilt, style), _ => Palette.Of(quilt.Pattern, [quilt], style));

    public static BackingCell Backing(long panels, BackingSeams seams) =>
        new(
            "D",
            SampleQuilts.In(70),
            SampleQuilts.In(84),
            SampleQuilts.In(4),
            SampleQuilts.In(40),
            panels,
            SampleQuilts.In(84),
            seams,
            SampleQuilts.In(0, 1, 2)
        );

    public static BattingCell Batting { get; } =
        new(SampleQuilts.In(70), SampleQuilts.In(84), SampleQuilts.In(4), null);

    public static StripList Strips { get; } =
        new(
            SampleQuilts.In(40),
            SampleQuilts.In(40),
            [
                new(
                    SampleQuilts.In(8, 1, 2),
                    2,
                    [new(["D1"], 1, SampleQuilts.In(40), SampleQuilts.In(8, 1, 2))],
                    default
                ),
                new(
                    SampleQuilts.In(3, 7, 8),
                    12,
                    [
                        new(["D2", "D3"], 7, SampleQuilts.In(3, 7, 8), SampleQuilts.In(3, 7, 8)),
                        new(["D4"], 3, SampleQuilts.In(2), SampleQuilts.In(3, 1, 2)),
                    ],
                    SampleQuilts.In(6, 7, 8)
                ),
                new(
                    SampleQuilts.In(1, 1, 2),
                    1,
                    [new(["D5"], 20, SampleQuilts.In(1), SampleQuilts.In(1, 1, 2))],
                    SampleQuilts.In(20)
                ),
            ],
            SampleQuilts.In(65)
        );

    private static readonly Lazy<ImmutableArray<Sample>> Samples = new(() => [.. Every()]);

    public static ImmutableArray<Sample> All => Samples.Value;

    private static IEnumerable<Sample> Every()
    {
        yield return Of("quilt picture", Stars, 300, 400, QuiltPicture.Draw);
        yield return Of("quilt picture, thumbnail", ManyStars, 90, 120, QuiltPicture.Draw);
        yield return Of("quilt picture, cover", Scraps, 480, 560, QuiltPicture.Draw);
        yield return Of("quilt picture, no borders", Pinwheels, 200, 200, QuiltPicture.Draw);
        yield return Of("coloring page", Stars, 500, 640, ColoringPage.Draw);
        yield return Of("placement, few blocks", Stars, 504, 640, Chart(PlacementDetail.Fitting));
        yield return Of("placement, blocks", ManyStars, 504, 640, Chart(PlacementDetail.Blocks));
        yield return Of("placement, patches", ManyStars, 504, 640, Chart(PlacementDetail.Patches));
        yield return Of("placement, 25 fabrics", Scraps, 504, 640, Chart(PlacementDetail.Fitting));
        yield return Of(
            "placement, turned blocks",
            Pinwheels,
            300,
            300,
            Chart(PlacementDetail.Blocks)
        );
        yield return Of(
            "legend",
            Scraps,
            504,
            200,
            (q, p, r) => FabricLegend.Draw(FabricLegend.FabricsOf(q), p, r)
        );
        yield return Of(
            "legend, narrow",
            Stars,
            90,
            200,
            (q, p, r) => FabricLegend.Draw(FabricLegend.FabricsOf(q), p, r)
        );
        yield return Of(
            "swatch",
            Stars,
            34,
            13,
            (q, p, r) => FabricSwatch.Draw(p["B"], p.Style, r)
        );
        yield return Of(
            "swatch, square",
            Stars,
            13,
            13,
            (q, p, r) => FabricSwatch.Draw(p["A"], p.Style, r)
        );
        foreach (BlockMarking marking in Enum.GetValues<BlockMarking>())
        {
            yield return Of(
                $"block, {marking}",
                Stars,
                130,
                130,
                (q, p, r) => BlockPicture.Draw(q.Places[0].Block, q.Pattern, p, r, marking)
            );
        }
        yield return Of(
            "block, plain",
            Scraps,
            60,
            60,
            (q, p, r) => BlockPicture.Draw(q.Places[0].Block, q.Pattern, p, r)
        );
        yield return Of(
            "block, outline",
            Stars,
            110,
            110,
            (q, p, r) => BlockOutline.Draw(q.Places[0].Block.Block!, [], p, r)
        );
        yield return Of(
            "exploded star",
            Stars,
            220,
            220,
            Exploded(SampleQuilts.Star(12), PressingStyle.Nested)
        );
        yield return Of(
            "exploded star, pressed open",
            Stars,
            160,
            160,
            Exploded(SampleQuilts.Star(12), PressingStyle.Open)
        );
        yield return Of(
            "exploded whirl",
            Stars,
            200,
            200,
            Exploded(SampleQuilts.Whirl(9), PressingStyle.Nested)
        );
        yield return Of(
            "exploded pinwheel",
            Stars,
            150,
            150,
            Exploded(SampleQuilts.Pinwheel(6), PressingStyle.Nested)
        );
        yield return Of("rows", Stars, 400, 420, RowAssembly.Draw);
        yield return Of("rows, many", ManyStars, 504, 600, RowAssembly.Draw);
        yield return Of("rows, no sashing", Pinwheels, 300, 300, RowAssembly.Draw);
        yield return Of("borders", Stars, 330, 380, InOrder);
        yield return Of("borders of blocks", Medallion, 420, 420, InOrder);
        yield return Of(
            "rows of blocks",
            Medallion,
            420,
            200,
            (quilt, palette, room) =>
                BorderRows.Draw(quilt, quilt.Borders.First(b => b.IsPieced), palette, room)
        );
        yield return Of("borders, top first", Scraps, 240, 300, InOrder);
        yield return Of(
            "border measure",
            Stars,
            240,
            160,
            (q, p, r) => BorderMeasure.Draw(1.2, false, p, r)
        );
        yield return Of(
            "border measure, top first",
            Stars,
            240,
            160,
            (q, p, r) => BorderMeasure.Draw(0.8, true, p, r)
        );
        yield return Of(
            "backing, upright",
            Stars,
            220,
            220,
            (q, p, r) => BackingLayout.Draw(q, Backing(2, BackingSeams.Upright), p, r)
        );
        yield return Of(
            "backing, level",
            Stars,
            220,
            220,
            (q, p, r) => BackingLayout.Draw(q, Backing(3, BackingSeams.Level), p, r)
        );
        yield return Of(
            "backing, one panel",
            Pinwheels,
            140,
            140,
            (q, p, r) => BackingLayout.Draw(q, Backing(1, BackingSeams.NoneDown), p, r)
        );
        yield return Of(
            "layers",
            Stars,
            340,
            240,
            (q, p, r) => LayeringPlan.Draw(q, Backing(2, BackingSeams.Upright), Batting, p, r)
        );
        yield return Of(
            "layers, nothing planned",
            Pinwheels,
            300,
            160,
            (q, p, r) => LayeringPlan.Draw(q, default(BackingCell), null, p, r)
        );
        foreach (CornerTurn turn in Enum.GetValues<CornerTurn>())
        {
            yield return Of(
                $"binding corner, {turn}",
                Stars,
                120,
                120,
                (q, p, r) => BindingCorner.Draw(p["A"], q.House, turn, p, r)
            );
        }
        yield return Of(
            "parts of a block",
            Stars,
            215,
            160,
            (q, p, r) => BlockParts.Draw(q.Places[0].Block, q.Pattern, p, r)
        );
        yield return Of(
            "diagonal join",
            Stars,
            200,
            80,
            (q, p, r) => DiagonalJoin.Draw(p["A"], q.House, p, r)
        );
        yield return Of(
            "tails of the binding",
            Stars,
            200,
            60,
            (q, p, r) => BindingClose.Draw(p["A"], "2 1/2 in", p, r)
        );
        yield return Of(
            "cutting strips",
            Stars,
            504,
            400,
            (q, p, r) => CuttingStrips.Draw(p["D"], Strips, q.House, p, r)
        );
        yield return Of(
            "cutting strips, small",
            Stars,
            250,
            90,
            (q, p, r) => CuttingStrips.Draw(p["A"], Strips, q.House, p, r)
        );
        yield return Of(
            "unit",
            Stars,
            60,
            60,
            (q, p, r) => UnitPicture.Draw(SampleQuilts.Geese(SampleQuilts.In(2)), ["B", "A"], p, r)
        );
        foreach ((string technique, string unit, string width, string height) in Units)
        {
            Recipe recipe = Recipes.Of(technique, Written.Form(unit, width, height));
            for (int i = 0; i < recipe.Steps.Length; i++)
            {
                Step step = recipe.Steps[i];
                yield return Of(
                    $"{technique} {i + 1}, {step.Name}",
                    Stars,
                    280,
                    110,
                    (q, p, r) =>
                        UnitSketch.Draw(step.Sketch, ["B", "A", "C", "D"], MeasuresOf(recipe), p, r)
                );
            }
        }
    }

    public static readonly (string Technique, string Unit, string Width, string Height)[] Units =
    [
        ("half-square-two-at-a-time", "half-square upper-left, ray on sky", "3", "3"),
        ("half-square-eight-at-a-time", "half-square upper-left, ray on sky", "3", "3"),
        ("half-square-single-triangles", "half-square upper-left, ray on sky", "1 1/2", "1 1/2"),
        ("quarter-square-two-at-a-time", "quarter-square, ray sky", "4", "4"),
        ("quarter-square-single-triangles", "quarter-square, ray sky", "4", "4"),
        ("geese-four-at-a-time", "geese up, ray on sky", "6", "3"),
        ("geese-stitch-and-flip", "geese up, ray on sky", "2", "1"),
        ("square-in-square-quick-corners", "square-in-square, ray on sky", "4", "4"),
        ("square-in-square-set-in-triangles", "square-in-square, ray on sky", "4", "4"),
        ("four-patch-strip-sets", "four-patch, ray sky", "6", "6"),
        ("nine-patch-strip-sets", "nine-patch, ray sky", "6", "6"),
    ];

    public static Func<string, string?> MeasuresOf(Recipe recipe) =>
        name =>
            recipe.Measures.TryGetValue(name, out Length length)
                ? LengthText.Inches(length) + " in"
                : null;

    private static Sample Of(
        string name,
        Quilt quilt,
        double width,
        double height,
        Func<Quilt, Palette, FigureRoom, Picture> draw
    ) =>
        new(
            name,
            FigureRoom.Of(width, height),
            (style, room) => draw(quilt, PaletteOf(quilt, style), room)
        );

    private static Func<Quilt, Palette, FigureRoom, Picture> Chart(PlacementDetail detail) =>
        (q, p, r) => PlacementChart.Draw(q, p, r, detail);

    private static Func<Quilt, Palette, FigureRoom, Picture> Exploded(
        Block block,
        PressingStyle pressing
    ) =>
        (q, p, r) =>
        {
            var fabrics = block.Design.Parts.Select(
                (part, i) => (part.Value, q.Pattern.Fabrics[i].Key)
            );
            ColoredBlock colored = SampleQuilts.Colored("X", block, 0, [.. fabrics]);
            string[] labels = [.. block.Units.Select(u => u.Drawn.Form.RoleCount > 1 ? "1a" : "")];
            return BlockExploded.Draw(colored, labels, pressing, q.Pattern, p, r);
        };

    private static Picture InOrder(Quilt quilt, Palette palette, FigureRoom room) =>
        BorderSequence.Draw(quilt, palette, room);
}
