using System.Collections.Immutable;
using PatternPress.Booklet.Figures;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Settings;
using PatternPress.Quilting.Tables;
using PatternPress.Quilting.Techniques;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Inlines;

namespace PatternPress.Booklet.Sections;

/// <summary>
/// The drawings that sections place, as blocks with their words for those who cannot see them. The one place where
/// sections and figures meet. Null where a drawing does not exist.
/// </summary>
public sealed class SectionFigures
{
    private readonly SectionContext context;
    private readonly Lazy<Palette> palette;
    private BorderSteps? borderSteps;

    internal SectionFigures(SectionContext context, Lazy<Palette> palette)
    {
        this.context = context;
        this.palette = palette;
    }

    /// <summary>A swatch of a fabric that stands in a line of text.</summary>
    public InlineDrawing Swatch(string fabric)
    {
        Picture picture = FabricSwatch.Draw(
            palette.Value[fabric],
            palette.Value.Style,
            FigureRoom.Of(34, 12)
        );
        // The name of the fabric stands beside it.
        return new InlineDrawing(picture.Drawing, 12.Pt, "") { Drop = 2.5.Pt };
    }

    /// <summary>A size in colour.</summary>
    public Figure? Quilt(int size, Points width, Points height) =>
        QuiltOf(size) is { } quilt
            ? Set(QuiltPicture.Draw(quilt, palette.Value, new FigureRoom(width, height)))
            : null;

    /// <summary>A size in outline.</summary>
    public Figure? ColoringPage(int size, Points width, Points height) =>
        QuiltOf(size) is { } quilt
            ? Set(Figures.ColoringPage.Draw(quilt, palette.Value, new FigureRoom(width, height)))
            : null;

    /// <summary>A size with letters and hatches.</summary>
    public Figure? Placement(int size, Points width, Points height) =>
        QuiltOf(size) is { } quilt
            ? Set(
                Figures.PlacementChart.Draw(
                    quilt,
                    palette.Value,
                    new FigureRoom(width, height),
                    uses: key => string.Join(", ", FabricUses.Of(key, context, size))
                )
            )
            : null;

    /// <summary>A size's rows drawn apart.</summary>
    public Figure? Rows(int size, Points width, Points height) =>
        QuiltOf(size) is { } quilt
            ? Set(RowAssembly.Draw(quilt, palette.Value, new FigureRoom(width, height)))
            : null;

    /// <summary>Whether a drawing of a size's rows in this room tells which block is which.</summary>
    public bool RowsTellBlocks(int size, Points width, Points height) =>
        QuiltOf(size) is not { } quilt
        || RowAssembly.TellsBlocks(quilt, palette.Value, new FigureRoom(width, height));

    /// <summary>Whether the rows of two sizes are drawn alike.</summary>
    public bool HaveSameRows(int one, int other) =>
        QuiltOf(one) is { } a && QuiltOf(other) is { } b && RowAssembly.AreAlike(a, b);

    /// <summary>The sections of a size pulled apart, in the order of sewing, all at one scale if that leaves them large enough.
    /// </summary>
    /// <param name="whole">The room of the last, the whole field.</param>
    /// <param name="least">What the shorter side of a block measures at least, if the others' scale makes it smaller.</param>
    public IEnumerable<(QuiltSection Section, Figure Figure)> SectionsOf(
        int size,
        FigureRoom whole,
        Points least
    )
    {
        if (QuiltOf(size) is not { Order: not null } quilt)
        {
            yield break;
        }
        var assembly = new SectionAssembly(quilt, palette.Value);
        if (assembly.Sections.IsEmpty)
        {
            yield break;
        }
        double common = assembly.ScaleFor(assembly.Sections[^1], whole);
        foreach (QuiltSection section in assembly.Sections)
        {
            double floor = assembly.ScaleToName(section, least),
                most = assembly.ScaleFor(
                    section,
                    whole with
                    {
                        Width = Points.Max(whole.Width, context.TextWidth),
                    }
                );
            yield return (
                section,
                Set(assembly.Draw(section, Math.Min(most, Math.Max(common, floor))))
            );
        }
    }

    /// <summary>The borders in the order they are sewn on.</summary>
    public Figure? Borders(int size, Points width, Points height) =>
        QuiltOf(size) is { Borders.IsEmpty: false } quilt
            ? Set(
                BorderSequence.Draw(
                    quilt,
                    palette.Value,
                    new FigureRoom(width, height),
                    BorderSteps
                )
            )
            : null;

    /// <summary>The numbers of the steps in which borders are sewn on, the same for all sizes.</summary>
    public BorderSteps BorderSteps => borderSteps ??= BorderSteps.Of(context.Manuscript.Quilts);

    /// <summary>The rows of blocks of a border.</summary>
    public Figure? BorderRows(int size, int number, Points width) =>
        QuiltOf(size) is { } quilt
        && quilt.Borders.FirstOrDefault(b => b.Number == number) is { IsPieced: true } border
            ? Set(
                Figures.BorderRows.Draw(
                    quilt,
                    border,
                    palette.Value,
                    new FigureRoom(width, context.TextHeight)
                )
            )
            : null;

    /// <summary>Where to measure a quilt before a border is cut.</summary>
    public Figure? BorderMeasuring(int size, Points width, Points height) =>
        QuiltOf(size) is { Borders.IsEmpty: false } quilt
            ? Set(
                BorderMeasure.Draw(
                    quilt.Center.Height.Inches.ToDouble() / quilt.Center.Width.Inches.ToDouble(),
                    quilt.Borders[0].Design.Corners == BorderCorners.TopFirst,
                    palette.Value,
                    new FigureRoom(width, height)
                )
            )
            : null;

    /// <summary>How the panels of a backing are sewn and lie under the quilt.</summary>
    public Figure? Backing(int size, Points width, Points height) =>
        QuiltOf(size) is { } quilt && context.Tables.Backing[size] is { } backing
            ? Set(BackingLayout.Draw(quilt, backing, palette.Value, new FigureRoom(width, height)))
            : null;

    /// <summary>Backing, batting and top laid on each other.</summary>
    public Figure? Layers(int size, Points width, Points height) =>
        QuiltOf(size) is { } quilt && context.Tables.Backing[size] is { } backing
            ? Set(
                LayeringPlan.Draw(
                    quilt,
                    backing,
                    context.Tables.Requirements.Batting[size],
                    palette.Value,
                    new FigureRoom(width, height)
                )
            )
            : null;

    /// <summary>How the ends of two strips of a fabric are joined on the diagonal.</summary>
    public Figure DiagonalJoin(string fabric, Points width, Points height) =>
        Set(
            Figures.DiagonalJoin.Draw(
                palette.Value[fabric],
                context.Pattern.House,
                palette.Value,
                new FigureRoom(width, height)
            )
        );

    /// <summary>How the ends of the binding meet; the overlap as it is printed.</summary>
    public Figure BindingClose(string fabric, string overlap, Points width, Points height) =>
        Set(
            Figures.BindingClose.Draw(
                palette.Value[fabric],
                overlap,
                palette.Value,
                new FigureRoom(width, height)
            )
        );

    /// <summary>A box to tick.</summary>
    public InlineDrawing TickBox() =>
        new(Figures.TickBox.Draw(palette.Value.Style).Drawing, 9.Pt, "") { Drop = 1.Pt };

    /// <summary>How binding turns a corner.</summary>
    public Figure? BindingTurn(CornerTurn turn, Points width, Points height) =>
        context.Tables.Binding.FirstOrDefault(b => b is not null) is { } binding
            ? Set(
                BindingCorner.Draw(
                    palette.Value[binding.Fabric],
                    context.Pattern.House,
                    turn,
                    palette.Value,
                    new FigureRoom(width, height)
                )
            )
            : null;

    /// <summary>The strips that a size cuts from a fabric.</summary>
    public Figure? Cutting(CuttingTable cutting, int size, Points width, Points height) =>
        cutting.BySize[size] is { Strips.IsEmpty: false } strips
            ? Set(
                CuttingStrips.Draw(
                    palette.Value[cutting.Fabric],
                    strips,
                    context.Pattern.House,
                    palette.Value,
                    new FigureRoom(width, height)
                )
            )
            : null;

    /// <summary>Of the strips that a size cuts from a fabric those that give several kinds of piece.</summary>
    public Figure? MixedCutting(CuttingTable cutting, int size, Points width, Points height) =>
        cutting.BySize[size] is { } strips
            ? Set(
                CuttingStrips.DrawMixed(
                    palette.Value[cutting.Fabric],
                    context.Sizes[size].Name,
                    strips,
                    context.Pattern.House,
                    palette.Value,
                    new FigureRoom(width, height)
                )
            )
            : null;

    /// <summary>How the panels of a fabric are cut.</summary>
    public Figure? PanelCutting(
        string fabric,
        string size,
        StripList strips,
        Points width,
        Points height
    ) =>
        strips.Panels is { } panels
            ? Set(
                CuttingPanels.Draw(
                    palette.Value[fabric],
                    size,
                    strips,
                    panels,
                    context.Pattern.House,
                    palette.Value,
                    new FigureRoom(width, height)
                )
            )
            : null;

    /// <summary>A block in one coloring.</summary>
    public Figure? Block(BlockRow row, Points side) =>
        ColoredOf(row) is { } block
            ? Set(
                BlockPicture.Draw(
                    block,
                    context.Pattern,
                    palette.Value,
                    new FigureRoom(side, side),
                    side < 60.Pt ? BlockMarking.None : BlockMarking.Letters
                )
            )
            : null;

    /// <summary>A block in one coloring, the names of its parts beside it.</summary>
    public Figure? BlockParts(BlockRow row, Points width, Points height) =>
        ColoredOf(row) is { } block
            ? Set(
                Figures.BlockParts.Draw(
                    block,
                    context.Pattern,
                    palette.Value,
                    new FigureRoom(width, height)
                )
            )
            : null;

    /// <summary>A block taken apart into its rows, each unit with its label.</summary>
    public Figure? BlockApart(BlockRow row, Points width, Points height) =>
        ColoredOf(row) is { Block: { Units.Length: > 1 } block } colored
            ? Set(
                BlockExploded.Draw(
                    colored,
                    [.. block.Units.Select(u => LabelOf(u.Region, row))],
                    context.Pattern.House.Pressing,
                    context.Pattern,
                    palette.Value,
                    new FigureRoom(width, height)
                )
            )
            : null;

    /// <summary>A unit in one combination of fabrics, as it looks when it is sewn.</summary>
    public Figure Unit(UnitTable unit, UnitRow row, Points side) =>
        Set(
            UnitPicture.Draw(
                unit.Picture,
                row.Fabrics,
                palette.Value,
                new FigureRoom(side, side),
                BlockMarking.None
            )
        );

    /// <summary>The scale at which all of some steps fit a room.</summary>
    internal Points StepScale(
        IEnumerable<Step> steps,
        UnitWords words,
        Points width,
        Points height
    ) =>
        UnitSketch.ScaleFor(
            steps.Select(s => s.Sketch),
            words.MeasureLabel,
            palette.Value,
            new FigureRoom(width, height)
        );

    /// <summary>The diagram of a step, in the fabrics of the unit's first combination.</summary>
    /// <param name="scale">From <see cref="StepScale"/>.</param>
    internal Figure? Step(UnitTable unit, Step step, UnitWords words, Points scale) =>
        step.Sketch.Frames.IsEmpty
            ? null
            : Set(
                UnitSketch.Draw(
                    step.Sketch,
                    unit.Rows[0].Fabrics,
                    words.MeasureLabel,
                    palette.Value,
                    new FigureRoom(context.TextWidth, context.TextHeight),
                    scale
                )
            );

    /// <summary>How a block's parts are sewn together.</summary>
    public BlockSewing SewingOf(BlockRow row)
    {
        if (ColoredOf(row)?.Block is not { } block)
        {
            return new BlockSewing("rows", row.Rows.Length, [], false, false);
        }
        SewingOrder order = SewingOrder.Of(block);
        // Seams of two blocks meet where no sashing lies between them.
        bool nests =
            block.Units.Length > 1
            && context.Pattern.House.Pressing == PressingStyle.Nested
            && context.Tables.Sashing.IsEmpty
            && context.Tables.Placement.Any(p =>
                p.Rows.Length > 1 || p.Rows.Any(r => r.Length > 1)
            );
        return new BlockSewing(
            order switch
            {
                SewingOrder.Around => "around",
                SewingOrder.Group { Level: false } => "columns",
                _ => "rows",
            },
            order.Rows().Length,
            [.. GroupsOf(order, block, row)],
            nests,
            nests && TurnsOver(block)
        );
    }

    private static IEnumerable<SewingGroups> GroupsOf(
        SewingOrder order,
        Quilting.Resolving.Block block,
        BlockRow row
    )
    {
        ImmutableArray<SewingOrder> rows = order.Rows();
        for (int i = 0; i < rows.Length; i++)
        {
            ImmutableArray<ImmutableArray<string>> groups =
            [
                .. (rows[i] as SewingOrder.Group)
                    ?.Parts.OfType<SewingOrder.Group>()
                    .Select(g =>
                        (ImmutableArray<string>)
                            [.. g.Units().Select(u => LabelOf(block.Units[u].Region, row))]
                    )
                    ?? [],
            ];
            if (!groups.IsEmpty)
            {
                yield return new SewingGroups(i + 1, groups);
            }
        }
    }

    /// <summary>
    /// Whether a block turned upside down is the same block in any coloring: its patches fall on patches of the same part.
    /// </summary>
    private static bool TurnsOver(Quilting.Resolving.Block block)
    {
        var upright = new HashSet<(string, string)>(PatchesOf(Turn.None));
        return PatchesOf(new Turn(2)).All(upright.Contains);

        IEnumerable<(string, string)> PatchesOf(Turn turn) =>
            block
                .Units.SelectMany(u =>
                    u.Patches(u.Drawn.Parts.Distinct().ToDictionary(part => part, part => part))
                )
                .Select(p => (Written(p.Shape.Turned(turn, block.Width, block.Height)), p.Fabric));

        // The same polygon may begin at any of its corners.
        static string Written(Polygon shape)
        {
            int first = 0;
            for (int i = 1; i < shape.Corners.Length; i++)
            {
                Point a = shape.Corners[i],
                    b = shape.Corners[first];
                if (a.Y < b.Y || (a.Y == b.Y && a.X < b.X))
                {
                    first = i;
                }
            }
            return string.Join(
                ' ',
                shape
                    .Corners[first..]
                    .Concat(shape.Corners[..first])
                    .Select(c => $"{c.X.Inches},{c.Y.Inches}")
                    .Concat(shape.Arcs.Select(a => $"{a.Center.X.Inches},{a.Center.Y.Inches}"))
            );
        }
    }

    /// <summary>The unit's label or the patch's id, as the tables name them.</summary>
    private static string LabelOf(UnitRegion region, BlockRow row)
    {
        BlockPart? part = row.Parts.FirstOrDefault(p =>
            p.Column == region.Column && p.Row == region.Row
        );
        return part?.Unit ?? part?.Cut ?? region.Design.Letter;
    }

    /// <summary>How the pieces of a one-patch quilt are cut.</summary>
    internal Figure PatchCutting(PatchRow row, int size, Points width, Points height) =>
        Set(
            UnitSketch.Draw(
                PatchSketches.Cutting(
                    row.Kind,
                    row.Reversed,
                    row.BySize[size]!.Finished,
                    context.Sizes[size].Seam,
                    context.Pattern.House.Ruler
                ),
                [row.Fabric],
                _ => null,
                palette.Value,
                new FigureRoom(width, height)
            )
        );

    /// <summary>A paper foundation in true size.</summary>
    internal TrueScaleShape Foundation(
        string name,
        string told,
        UnitCell cell,
        Quilting.Measures.Length seam,
        ImmutableArray<FoundationArea> areas,
        Func<int, string> letters,
        string below
    ) =>
        FoundationShape.Draw(
            name,
            told,
            cell.FinishedWidth,
            cell.FinishedHeight,
            seam,
            areas,
            letters,
            below,
            palette.Value.Style
        );

    /// <summary>An appliqué shape in true size.</summary>
    internal TrueScaleShape Applique(
        string name,
        string told,
        Polygon shape,
        string fabric,
        string sizes
    ) => AppliqueShapeDrawing.Draw(name, told, shape, fabric, sizes, palette.Value.Style);

    /// <summary>A template in true size.</summary>
    internal TrueScaleShape Template(
        string name,
        string told,
        PieceTemplate template,
        ImmutableArray<string> lines
    ) => TemplateShape.Draw(name, told, template, lines, palette.Value.Style);

    /// <summary>Sheets of shapes in true size.</summary>
    internal ImmutableArray<TrueScaleSheet.Sheet> TrueScale(
        IEnumerable<TrueScaleShape> shapes,
        TrueScaleSheet.SheetWords words,
        Points width,
        Points height
    ) => TrueScaleSheet.Draw(shapes, palette.Value.Style, words, new FigureRoom(width, height));

    private static Figure Set(Picture picture) => new(picture.Drawing, picture.AltText);

    private Quilt? QuiltOf(int size) =>
        size < context.Manuscript.Quilts.Length ? context.Manuscript.Quilts[size] : null;

    /// <summary>The block of a row as it is drawn in the first size that uses it.</summary>
    private ColoredBlock? ColoredOf(BlockRow row)
    {
        for (int i = 0; i < row.BySize.Length; i++)
        {
            if (row.BySize[i] is null || QuiltOf(i) is not { } quilt)
            {
                continue;
            }
            ImmutableArray<ColoredBlock> same =
            [
                .. quilt.BlockCounts().Select(b => b.Block).Where(b => b.Key == row.Coloring),
            ];
            if (row.Number <= same.Length)
            {
                return same[row.Number - 1];
            }
        }
        return null;
    }
}

/// <summary>How a block goes together.</summary>
/// <param name="Way">"rows", "columns" or "around" (with partial seams).</param>
/// <param name="Rows">How many rows or columns.</param>
/// <param name="Groups">Groups within rows that are sewn before their row.</param>
/// <param name="Nests">Whether its seams meet those of the next block, so that they should be pressed to lock.</param>
/// <param name="Turns">Whether every second block may be turned upside down for that.</param>
public sealed record BlockSewing(
    string Way,
    int Rows,
    ImmutableArray<SewingGroups> Groups,
    bool Nests,
    bool Turns
);

/// <summary>The groups of one row: the labels of the parts of each, in order.</summary>
/// <param name="Row">From 1.</param>
public sealed record SewingGroups(int Row, ImmutableArray<ImmutableArray<string>> Parts);
