using System.Collections.Immutable;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Finishing;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Tables;
using PatternPress.Quilting.Techniques;

namespace PatternPress.Booklet.Figures;

/// <summary>The English of the figures' alternative texts and labels. Nothing else in Figures holds a sentence.</summary>
internal static class FigureWords
{
    public static string QuiltPicture(Quilt quilt) =>
        Sentences(
            $"The {Name(quilt)} quilt in color, {Size(quilt)}",
            Layout(quilt),
            Sashing(quilt),
            Borders(quilt),
            quilt.Size.Quilt.Binding is { } binding
                ? $"It is bound in {Fabric(quilt, binding.Fabric.Value)}"
                : ""
        );

    public static string ColoringPage(Quilt quilt) =>
        Sentences(
            $"The {Name(quilt)} quilt drawn in outline for coloring, {Size(quilt)}",
            Layout(quilt),
            Sashing(quilt),
            quilt.Borders.IsEmpty
                ? ""
                : $"{Count(quilt.Borders.Length, "border")} around the blocks, also in outline"
        );

    public static string PlacementChart(Quilt quilt, bool patches) =>
        Sentences(
            $"Placement chart of the {Name(quilt)} quilt",
            patches
                ? "Every patch shows its fabric's color, hatch and letter"
                : "Every block is drawn as it lies in the quilt and marked with its key",
            string.Join(" ", Rows(quilt)),
            Sashing(quilt),
            Borders(quilt)
        );

    /// <summary>"Row 1: L1, L2 turned a quarter to the right, L1."</summary>
    public static IEnumerable<string> Rows(Quilt quilt) =>
        quilt.Order is not null ? Sections(quilt)
        : quilt.Places.IsEmpty
            ? quilt
                .Pieces.GroupBy(p => p.Row)
                .OrderBy(row => row.Key)
                .Select(row =>
                    $"Row {row.Key + 1}: {Runs([.. row.OrderBy(p => p.Column).Select(p => p.Fabric)])}."
                )
        : quilt.OnPoint
            ? quilt
                .Rows.Where(row => row.Kind == LayoutRowKind.Blocks)
                .Select(row =>
                    $"Diagonal row {row.Number + 1}: {Runs([.. row.Parts.Where(p => p.Kind == LayoutPartKind.Block).Select(p => quilt.Places[p.Index]).Select(p => p.Block.Key + Turned(p.Turn))])}."
                )
        : quilt
            .Places.GroupBy(p => p.Row)
            .OrderBy(row => row.Key)
            .Select(row =>
                $"Row {row.Key + 1}: {Runs([.. row.OrderBy(p => p.Column).Select(p => p.Block.Key + Turned(p.Turn))])}."
            );

    private static IEnumerable<string> Sections(Quilt quilt)
    {
        var names = new BlockNames(quilt);
        return QuiltSection.Of(quilt).Select(section => $"{Section(quilt, section, names)}.");
    }

    private static string Section(Quilt quilt, QuiltSection section, BlockNames names)
    {
        string made = section.Count > 1 ? $", made {section.Count} times" : "";
        string[] parts =
        [
            .. section.Parts.Select(part =>
                part.Section > 0 ? $"section {part.Section}"
                : part.Piece.Kind == LayoutPartKind.Sash
                    ? $"a strip of {Fabric(quilt, quilt.Sashes[part.Piece.Index].Fabric)}"
                : names[quilt.Places[part.Piece.Index].Block]
                    + Turned(quilt.Places[part.Piece.Index].Turn)
            ),
        ];
        string lie = section.Join switch
        {
            SectionJoin.SideBySide => $"{Runs(parts)} from left to right",
            SectionJoin.OneBelowTheOther => $"{Runs(parts)} from the top down",
            SectionJoin.Clockwise =>
                $"around {parts[0]}, in the order they are sewn on: {parts[1]} above, {parts[2]} on the right, {parts[3]} below and {parts[4]} on the left",
            _ =>
                $"around {parts[0]}, in the order they are sewn on: {parts[1]} above, {parts[2]} on the left, {parts[3]} below and {parts[4]} on the right",
        };
        return $"Section {section.Number}{made}: {lie}";
    }

    public static string SectionAssembly(Quilt quilt, QuiltSection section) =>
        Sentences(
            $"A section of the {Name(quilt)} quilt pulled apart",
            Section(quilt, section, new BlockNames(quilt)),
            section.Join is SectionJoin.Clockwise or SectionJoin.Counterclockwise
                ? "A thick line marks the half of the first seam that is sewn first, a broken line the rest, which is sewn last"
                : ""
        );

    public static string Legend(IEnumerable<FabricLook> looks) =>
        Sentences(
            "Legend",
            List([.. looks.Select(l => $"{l.Key} {l.Name}, {l.Hatch.Hatch.Name}")])
        );

    public static string Swatch(FabricLook look) => $"Swatch of fabric {look.Key}, {look.Name}.";

    public static string Block(ColoredBlock block, Pattern pattern) =>
        Sentences($"Block {block.Key}: {Describe(block, pattern)}");

    public static string BlockOutline(Block block) =>
        Sentences($"Outline of the {block.Design.Name} block, {Count(block.Units.Length, "unit")}");

    public static string BlockExploded(
        ColoredBlock block,
        SewingOrder order,
        IReadOnlyList<string> labels,
        PressingStyle pressing,
        Pattern pattern
    )
    {
        string title = $"Block {block.Key} pulled apart: {Describe(block, pattern)}";
        if (order is not SewingOrder.Group group)
        {
            return order is SewingOrder.Around around
                ? Sentences(
                    title,
                    around.Middle is null
                        ? $"Its units go round each other and are joined with partial seams: {Parts(around.Parts)}"
                        : $"Around {Part(around.Middle)} go, numbered in the order they are sewn on, {Parts(around.Parts)}; the first seam is sewn only halfway and closed last"
                )
                : Sentences(title, "It is a single unit");
        }
        string noun = group.Level ? "Row" : "Column";
        var rows = group.Parts.Select(
            (part, i) =>
            {
                string way =
                    pressing == PressingStyle.Open ? "pressed open"
                    : !group.Level ? "pressed down"
                    : i % 2 == 0 || pressing == PressingStyle.ToOneSide ? "pressed to the left"
                    : "pressed to the right";
                return part is SewingOrder.Unit unit
                    ? $"{noun} {i + 1}: {Unit(unit.Index)}."
                    : $"{noun} {i + 1}: {Parts(part is SewingOrder.Group g ? g.Parts : [part])}, seams {way}.";
            }
        );
        string join =
            pressing == PressingStyle.Open ? "pressed open"
            : group.Level ? "pressed down"
            : "pressed to the right";
        return Sentences(
            title,
            string.Join(" ", rows),
            $"Then the {noun.ToLowerInvariant()}s are joined, seams {join}"
        );

        string Parts(IEnumerable<SewingOrder> parts) => List([.. parts.Select(Part)]);

        string Part(SewingOrder part) =>
            part switch
            {
                SewingOrder.Unit unit => Unit(unit.Index),
                SewingOrder.Group inner =>
                    $"({Parts(inner.Parts)}, {(inner.Level ? "one below the other" : "side by side")})",
                SewingOrder.Around around => $"({Parts(around.Parts)}, around each other)",
                SewingOrder.Inner inside =>
                    $"the {inside.Block.Name} block, sewn first ({Part(inside.Parts)})",
                _ => "",
            };

        string Unit(int index)
        {
            BlockUnit unit = block.Block!.Units[index];
            string fabrics = List([
                .. block.FabricsOf(unit).Distinct().Select(key => Fabric(pattern, key)),
            ]);
            string label = index < labels.Count ? labels[index] : "";
            return label.Length > 0
                ? $"unit {label} of {fabrics}"
                : $"{unit.Drawn.Form.Kind.Name} of {fabrics}";
        }
    }

    public const string QuiltTop = "quilt top";
    public const string First = "first";
    public const string Then = "then";

    public static string Panel(int number) => $"panel {number}";

    public static string Numeral(int number) =>
        number.ToString(System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>a, b … z, aa, ab …</summary>
    public static string LetterOf(int index) =>
        (index < 26 ? "" : LetterOf((index / 26) - 1)) + (char)('a' + (index % 26));

    public static string RowAssembly(Quilt quilt) =>
        Sentences(
            quilt.OnPoint
                ? $"The diagonal rows of the {Name(quilt)} quilt pulled apart, from the lower left to the upper right, numbered from the upper left"
                : $"The rows of the {Name(quilt)} quilt pulled apart, numbered from the top",
            string.Join(" ", Rows(quilt)),
            quilt.Sashes.Any(s => s.Kind != SashKind.Upright)
                ? "A row of sashing, lettered, lies between each two rows of blocks"
                : "",
            quilt.OnPoint ? "The four corner triangles stand off from the rows" : ""
        );

    public static string BorderSequence(Quilt quilt, BorderSteps steps) =>
        Sentences(
            $"The borders of the {Name(quilt)} quilt pulled away from it and numbered in the order they are sewn on",
            string.Join(
                " ",
                quilt.Borders.SelectMany(border =>
                    steps
                        .For(border)
                        .Select(step =>
                            $"{step.Number}: border {border.Number}, {SidesOf(step.Sides)}{WithCorners(border, step.Sides)}."
                        )
                )
            )
        );

    private static string SidesOf(BorderSide[] sides) =>
        string.Join(" and ", sides.Select(side => side.ToString().ToLowerInvariant()));

    private static string WithCorners(Border border, BorderSide[] sides) =>
        sides[0] != BorderSide.Top ? ""
        : border.Pieces.Any(p => p.Side == BorderSide.Corner) ? " with a corner square at each end"
        : border.Blocks.Any(b => b.Side == BorderSide.Corner) ? " with a corner block at each end"
        : "";

    public static string BorderMeasure(bool topFirst)
    {
        (string first, string second) = topFirst ? ("across", "down") : ("down", "across");
        string strips = topFirst ? "top and bottom strips" : "side strips";
        return Sentences(
            $"Two pictures of a quilt. First: an arrow {first} the middle and one near each edge show where to measure for the {strips}",
            $"Then: the {strips} are on; the arrows now run {second}, over the strips too"
        );
    }

    public static string BackingLayout(Quilt quilt, BackingCell plan)
    {
        bool across = plan.Seams is BackingSeams.Level or BackingSeams.NoneAcross;
        Length sewn = Figures.BackingLayout.SewnAcross(plan);
        (Length width, Length height) = across
            ? (plan.PanelLength, sewn)
            : (sewn, plan.PanelLength);
        return Sentences(
            $"The backing of the {Name(quilt)} quilt, {Number(width, quilt.House)} by {Measure(height, quilt.House)} before it is trimmed",
            plan.Panels == 1
                ? "It is one panel"
                : $"It is sewn from {plan.Panels} panels whose {(plan.Panels == 2 ? "seam runs" : "seams run")} {(across ? "across" : "down")} the quilt",
            $"A dash-and-dot line shows where it is trimmed to {Number(plan.Width, quilt.House)} by {Measure(plan.Height, quilt.House)}",
            $"The quilt top lies in the middle, drawn with dashes; the trimmed backing reaches {Measure(plan.Overhang, quilt.House)} beyond it on every side"
        );
    }

    public static string BindingCorner(House house, CornerTurn turn) =>
        turn switch
        {
            CornerTurn.Stop =>
                $"The upper right corner of the quilt. The binding strip is sewn along the upper edge; the seam stops {Measure(house.Seam, house)} before the right edge.",
            CornerTurn.Up =>
                "The same corner. The strip is folded straight up; the fold runs at 45 degrees into the corner, and the strip's raw edge is in line with the right edge.",
            _ =>
                "The same corner. The strip is folded straight down along the right edge, its fold flush with the upper edge; the next seam starts at that fold.",
        };

    public static string DiagonalJoin(House house) =>
        Sentences(
            "Two pictures of a diagonal join",
            "First: one strip lies level, right side up; the end of another lies on its end at a right angle, wrong side up, so that the ends cross",
            $"A seam runs across the square where they overlap, from the corner where the edges cross above to the one where they cross below; a line {Measure(house.Seam, house)} beyond it shows where to trim",
            "Then: the seam is pressed open, and the two strips are one straight strip with a slanting seam"
        );

    public static string BindingClose(string overlap) =>
        Sentences(
            $"The two tails of the binding lie on each other along the edge of the quilt and overlap by {overlap}"
        );

    public static IReadOnlyList<(string Name, string Detail)> Layers(
        Quilt quilt,
        BackingCell? backing,
        BattingCell? batting
    ) =>
        [
            ("Backing", "wrong side up" + At(backing?.Width, backing?.Height, quilt.House)),
            (
                "Batting",
                batting is null
                    ? "smoothed flat"
                    : At(batting.Width, batting.Height, quilt.House)[2..]
            ),
            ("Quilt top", "right side up, " + UnboundSize(quilt)),
        ];

    public static string LayeringPlan(Quilt quilt, BackingCell? backing, BattingCell? batting)
    {
        var layers = Layers(quilt, backing, batting);
        return Sentences(
            $"The three layers of the {Name(quilt)} quilt float one above the other",
            $"At the bottom the backing, {layers[0].Detail}",
            $"On it the batting, {layers[1].Detail}",
            $"On top, in the middle of both, the quilt top, {layers[2].Detail}"
        );
    }

    public static string StripCount(StripRow strip) => Count(strip.Count, "strip");

    public static string CuttingStrips(
        FabricLook fabric,
        string? size,
        StripList strips,
        House house
    ) =>
        Sentences(
            $"Strips cut from fabric {fabric.Key}, {fabric.Name}{(size is null ? "" : $", for the size {size}")}, each {Measure(strips.StripLength, house)} long",
            string.Join(
                " ",
                strips.Strips.Select(strip =>
                    $"{Count(strip.Count, "strip")} {Measure(strip.Height, house)} wide: "
                    + List([
                        .. strip.Pieces.Select(p =>
                            $"{p.PerStrip} × {CutNames.Joined(p.Cuts, " or ")}, {Measure(p.Length, house)} long"
                        ),
                    ])
                    + (strip.End.Sign > 0 ? $"; {Measure(strip.End, house)} is left over." : ".")
                )
            )
        );

    public static string CutAlike(long count) => $"{count} ×";

    public static string CuttingPanels(
        FabricLook fabric,
        string size,
        StripList strips,
        PanelSheet panels,
        House house
    ) =>
        Sentences(
            $"Panels of {Measure(panels.Width, house)} by {Measure(panels.Height, house)} cut from fabric {fabric.Key}, {fabric.Name}, for the size {size}",
            string.Join(
                " ",
                panels.Layouts.Select(
                    (layout, i) =>
                        $"{layout.Count} cut alike, strips {(layout.Up ? "from top to bottom" : "from side to side")}: "
                        + List([
                            .. strips
                                .Strips.Where(s => s.Panel is { } share && share.Layout == i)
                                .Select(s =>
                                    $"{Count(s.Panel!.Strips, "strip")} {Measure(s.Height, house)} wide with "
                                    + List([
                                        .. s.Pieces.Select(p =>
                                            $"{p.PerStrip} × {CutNames.Joined(p.Cuts, " or ")}, {Measure(p.Length, house)} long"
                                        ),
                                    ])
                                ),
                        ])
                        + (
                            layout.Left.Sign > 0
                                ? $"; {Measure(layout.Left, house)} is left over."
                                : "."
                        )
                )
            )
        );

    private static string At(Length? width, Length? height, House house) =>
        width is null || height is null
            ? ""
            : $", {Number(width.Value, house)} by {Measure(height.Value, house)}";

    public static string Times(int count) => $"× {count}";

    public static string UnitSketch(
        Sketch sketch,
        ImmutableArray<string> fabrics,
        Func<string, string?> measure,
        Palette palette
    )
    {
        var frames = sketch.Frames.Select(
            (frame, i) =>
            {
                string link = frame.Link switch
                {
                    _ when i == 0 => "",
                    FrameLink.Then => "Then ",
                    FrameLink.And => "Together with ",
                    _ => "Beside it ",
                };
                string times = frame.Count > 1 ? $", {frame.Count} of these" : "";
                string text = link + List([.. Pieces(frame), .. LinesOf(frame)]) + times;
                return char.ToUpperInvariant(text[0]) + text[1..] + ".";
            }
        );
        return string.Join(" ", frames);

        IEnumerable<string> Pieces(SketchFrame frame) =>
            frame
                .Shapes.GroupBy(s => (Form: Form(s.Shape), s.Role, s.Side))
                .Select(g =>
                {
                    string of =
                        g.Key.Role >= 0 && g.Key.Role < fabrics.Length
                            ? $" of {palette[fabrics[g.Key.Role]].Name}"
                            : "";
                    string side = g.Key.Side == FabricSide.Wrong ? ", wrong side up" : "";
                    return $"{(g.Count() == 1 ? "a" : Few(g.Count()))} {g.Key.Form}{(g.Count() == 1 ? "" : "s")}{of}{side}";
                });

        IEnumerable<string> LinesOf(SketchFrame frame)
        {
            foreach (var kind in frame.Lines.GroupBy(l => l.Kind).OrderBy(g => g.Key))
            {
                int count = kind.Count();
                string? text = kind.Key switch
                {
                    SketchLineKind.Marked => Counted(count, "marked line"),
                    SketchLineKind.Sewn => Counted(count, "seam") + " to sew",
                    SketchLineKind.Cut => Counted(count, "line") + " to cut along",
                    SketchLineKind.Press => Counted(count, "arrow") + " to press along",
                    SketchLineKind.Dimension => Measures(kind),
                    _ => null,
                };
                if (!string.IsNullOrEmpty(text))
                {
                    yield return text;
                }
            }
        }

        string Measures(IEnumerable<SketchLine> lines)
        {
            var texts = lines
                .Select(l => l.Measure is null ? null : measure(l.Measure))
                .Where(t => !string.IsNullOrEmpty(t))
                .Distinct()
                .ToList();
            return texts.Count == 0 ? "" : "measures of " + List(texts!);
        }
    }

    private static string Counted(int count, string noun) =>
        count == 1 ? $"one {noun}" : $"{Few(count)} {noun}s";

    // Small numbers in words: a sentence may start with them.
    private static string Few(int count) =>
        count switch
        {
            2 => "two",
            3 => "three",
            4 => "four",
            5 => "five",
            6 => "six",
            7 => "seven",
            8 => "eight",
            9 => "nine",
            _ => count.ToString(System.Globalization.CultureInfo.InvariantCulture),
        };

    /// <param name="shapes">"T1, quarter circle of unit 1".</param>
    /// <param name="part">"part A1 of 2 across and 1 down", where a shape is divided between pages.</param>
    public static string TrueScale(ImmutableArray<string> shapes, string? part = null) =>
        Sentences(
            $"In true size, to be printed at 100 %: {string.Join("; ", shapes)}{(part is null ? "" : $"; {part}, with marks to join it to the others by")}",
            "At the foot a square of one inch inside one of five centimetres, to check the scale"
        );

    // The trade's word for a piece by its corners.
    private static string Form(Polygon shape)
    {
        Rect bounds = shape.Bounds;
        bool upright = shape.Corners.Length == 4 && shape.Area == bounds.Area;
        Length longer = Length.Max(bounds.Width, bounds.Height),
            shorter = Length.Min(bounds.Width, bounds.Height);
        return !shape.Arcs.IsEmpty
            ? shape.Corners.Length == 3
                ? "quarter circle"
                : "hollow piece"
            : shape.Corners.Length == 3
                ? "triangle"
                : upright && bounds.Width == bounds.Height
                    ? "square"
                    : upright && longer > shorter * 6
                        ? "strip"
                        : upright
                            ? "rectangle"
                            : "piece";
    }

    public static string UnitPicture(
        UnitForm form,
        ImmutableArray<string> fabrics,
        Palette palette
    ) =>
        Sentences(
            $"Finished {form.Kind.Name} of {List([.. fabrics.Distinct().Select(key => palette[key].Name)])}"
        );

    /// <summary>"Lamp block, 12 in square, with sky in Ink and ray in Amber".</summary>
    public static string Describe(ColoredBlock block, Pattern pattern)
    {
        if (block.Block is null)
        {
            return $"plain block of {Fabric(pattern, block.Coloring.Fabrics[Coloring.PlainPart])}";
        }
        var parts = block
            .Block.Design.Parts.Where(p => block.Coloring.Fabrics.ContainsKey(p.Value))
            .Select(p => $"{p.Value} in {Fabric(pattern, block.Coloring.Fabrics[p.Value])}");
        return $"{block.Block.Design.Name} block with {List([.. parts])}";
    }

    public static string Name(Quilt quilt) => quilt.Size.Name.ToLowerInvariant();

    public static string Size(Quilt quilt) =>
        $"{Number(quilt.Width, quilt.House)} by {Measure(quilt.Height, quilt.House)}";

    /// <summary>What the quilt top measures from raw edge to raw edge before it is bound.</summary>
    public static string UnboundSize(Quilt quilt) =>
        $"{Number(quilt.House.Unfinished(quilt.Width), quilt.House)} by {Measure(quilt.House.Unfinished(quilt.Height), quilt.House)}";

    /// <summary>"12 1/2 in" or "30 cm": on the ruler's marks where the exact length lies between.</summary>
    public static string Measure(Length length, House house) =>
        $"{Number(length, house)} {(house.Unit == LengthUnit.Inch ? "in" : "cm")}";

    public static string Number(Length length, House house)
    {
        if (house.Unit != LengthUnit.Inch)
        {
            return LengthText.Centimetres(length);
        }
        bool plain = length.Inches.IsRational && length.Inches.One.Denominator <= 16;
        return LengthText.Inches(plain ? length : house.Ruler.Nearest(length));
    }

    public static string Fabric(Quilt quilt, string key) => Fabric(quilt.Pattern, key);

    public static string Fabric(Pattern pattern, string key) =>
        pattern.Fabric(key) is { } fabric ? fabric.Name : key;

    public static string Turned(Turn turn) =>
        turn.Quarters switch
        {
            1 => " turned a quarter to the right",
            2 => " upside down",
            3 => " turned a quarter to the left",
            _ => "",
        };

    public static string Count(long count, string noun) =>
        count == 1 ? $"1 {noun}" : $"{count} {noun}s";

    public static string List(IReadOnlyList<string> items) =>
        items.Count switch
        {
            0 => "",
            1 => items[0],
            _ => $"{string.Join(", ", items.Take(items.Count - 1))} and {items[^1]}",
        };

    public static string Sentences(params string[] sentences) =>
        string.Join(
            " ",
            sentences.Where(s => s.Length > 0).Select(s => s.EndsWith('.') ? s : s + ".")
        );

    private static string Layout(Quilt quilt)
    {
        if (quilt.Places.IsEmpty)
        {
            return $"{Count(quilt.Size.Rows, "row")} of {PatchNames(quilt)}, {quilt.Size.Columns} in each with the ends cut off: {List([.. quilt.Pieces.GroupBy(p => p.Fabric).Select(g => $"{g.Count()} in {Fabric(quilt, g.Key)}")])}";
        }
        // Blocks of the borders are told with their borders.
        var counts = (quilt with { Borders = [] }).BlockCounts().ToList();
        int rows = quilt.Places.Max(p => p.Row) + 1,
            columns = quilt.Places.Max(p => p.Column) + 1;
        string grid =
            quilt.Order is not null ? "Blocks set in sections"
            : quilt.OnPoint
                ? $"Blocks on point, {columns} across and {(rows + 1) / 2} down, with {columns - 1} across and {(rows - 1) / 2} down in between, and triangles in {Names(quilt, quilt.Pieces.Select(p => p.Fabric))} along the edge"
            : $"{Count(columns, "column")} and {Count(rows, "row")} of blocks";
        // More colorings than that are a list for the table beside the picture.
        const int mostDescribed = 6;
        return counts.Count <= mostDescribed
            ? $"{grid}: {List([.. counts.Select(c => $"{c.Count} of {c.Block.Key} ({Describe(c.Block, quilt.Pattern)})")])}"
            : $"{grid} in {counts.Count} colorings: {List([.. counts.Select(c => $"{c.Count} of {c.Block.Key}")])}";
    }

    private static string PatchNames(Quilt quilt) =>
        quilt.Size.Quilt.Patch?.Shape switch
        {
            PatchShape.Diamond => "diamonds",
            PatchShape.Hexagon => "half hexagons",
            _ => "triangles",
        };

    private static string Sashing(Quilt quilt)
    {
        var strips = quilt.Sashes.Where(s => s.Kind != SashKind.Cornerstone).Select(s => s.Fabric);
        var stones = quilt.Sashes.Where(s => s.Kind == SashKind.Cornerstone).Select(s => s.Fabric);
        string lay = Names(quilt, strips),
            squares = Names(quilt, stones);
        return lay.Length == 0 ? ""
            : squares.Length == 0 ? $"Sashing in {lay} lies between the blocks"
            : $"Sashing in {lay} lies between the blocks, with cornerstones in {squares}";
    }

    private static string Borders(Quilt quilt) =>
        quilt.Borders.IsEmpty
            ? ""
            : "From the inside out: "
                + List([
                    .. quilt.Borders.Select(b =>
                        $"border {b.Number} {Made(quilt, b)}{Width(b, quilt.House)}{InCorners(quilt, b)}"
                    ),
                ]);

    private static string Made(Quilt quilt, Border border) =>
        border.Design.Fabric is { } fabric
            ? $"in {Fabric(quilt, fabric.Value)}"
            : $"of {List([.. border.Blocks.Where(b => b.Side != BorderSide.Corner).CountBy(b => b.Place.Block).Select(b => $"{b.Value} blocks {b.Key.Key} ({Describe(b.Key, quilt.Pattern)})")])}";

    private static string Width(Border border, House house)
    {
        if (border.Widths.Even is { } even)
        {
            return $", {Measure(even, house)} wide";
        }
        (string Side, Length Width)[] sides =
        [
            ("left", border.Widths.Left),
            ("right", border.Widths.Right),
            ("at the top", border.Widths.Top),
            ("at the bottom", border.Widths.Bottom),
        ];
        return ", "
            + List([
                .. sides
                    .Where(s => s.Width.Sign > 0)
                    .Select(s => $"{Measure(s.Width, house)} wide {s.Side}"),
            ]);
    }

    private static string InCorners(Quilt quilt, Border border) =>
        border.Pieces.FirstOrDefault(p => p.Side == BorderSide.Corner) is { } square
            ? $", with corner squares in {Fabric(quilt, square.Fabric)}"
        : border.Blocks.FirstOrDefault(b => b.Side == BorderSide.Corner) is { } block
            ? $", with block {block.Place.Block.Key} in each corner"
        : "";

    /// <summary>Above a row of blocks: which way is out.</summary>
    public const string OuterEdge = "outer edge";

    public const string SideRow = "side row";

    public const string TopRow = "top and bottom row";

    public static string BorderRows(Border border)
    {
        List<string> said = [];
        foreach (
            (BorderSide side, string name) in new[]
            {
                (BorderSide.Left, "Side row"),
                (BorderSide.Top, "Top and bottom row"),
            }
        )
        {
            string[] blocks =
            [
                .. border
                    .Blocks.Where(b => b.Side == side)
                    .Select(b => b.Place.Block.Key + Turned(b.Turn)),
            ];
            if (blocks.Length > 0)
            {
                said.Add($"{name}, outer edge up: {Runs(blocks)}");
            }
        }
        return Sentences([
            $"The rows of blocks of border {border.Number}",
            .. said,
            border.Blocks.FirstOrDefault(b => b.Side == BorderSide.Corner) is { } corner
                ? $"At the ends of the top row stands corner block {corner.Place.Block.Key}"
                : "",
        ]);
    }

    private static string Names(Quilt quilt, IEnumerable<string> keys) =>
        List([.. keys.Distinct().Select(k => Fabric(quilt, k))]);

    // "L1, L1, L1" becomes "3 × L1": long rows stay short.
    /// <summary>Equal items that follow each other taken together: "L1, 3 × L2".</summary>
    public static string Runs(IReadOnlyList<string> items)
    {
        var runs = new List<string>();
        for (int i = 0; i < items.Count; )
        {
            int end = i;
            while (end < items.Count && items[end] == items[i])
            {
                end++;
            }
            runs.Add(end - i == 1 ? items[i] : $"{end - i} × {items[i]}");
            i = end;
        }
        return string.Join(", ", runs);
    }
}
