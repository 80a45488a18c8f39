using PatternPress.Proofing.Shapes;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Tables;

namespace PatternPress.Proofing.Steps;

/// <summary>
/// Lays the blocks out by the placement chart, sews sashing and cornerstones between them, and compares every patch
/// with the drawing.
/// </summary>
internal sealed class LayoutStep
{
    private const string Chart = "placement chart";
    private const string OnPoint = "on-point";
    private static readonly string[] InSections = ["in-sections", "strippy", "staggered", "free"];

    private readonly Workbench _bench;
    private readonly PlacementChart _chart;
    private readonly Dictionary<(string, int, Turn), List<SewnPatch>> _sewn = [];

    // What has been compared already: the same block turned the same way against the same drawing.
    private readonly HashSet<(string, int, Turn, IReadOnlyList<SewnPatch>)> _alike = [];

    private LayoutStep(Workbench bench, PlacementChart chart)
    {
        _bench = bench;
        _chart = chart;
    }

    public static void Do(Workbench bench) =>
        new LayoutStep(bench, bench.Tables.Placement[bench.Size]).LayOut();

    private Notes Notes => _bench.Notes;

    private void LayOut()
    {
        SizeColumn column = _bench.Column;
        Quilt drawn = _bench.Drawn.Quilt;
        Same(Chart, "", "size", _chart.Size, column.Key, "the column is");
        Same(
            Chart,
            "",
            "setting",
            _chart.Setting,
            drawn.Size.Quilt.FieldSetting.Value,
            "the drawing is"
        );
        if (InSections.Contains(_chart.Setting))
        {
            LayInSections();
            return;
        }
        if (!Notes.Ok(_chart.Sections.IsEmpty))
        {
            Wrong(Chart, "", "sections", $"{_chart.Sections.Length}", "the quilt is sewn in rows");
        }
        bool onPoint = _chart.Setting == OnPoint;
        // On point a line of places lies in between each two.
        int down = onPoint ? (_chart.Rows.Length + 1) / 2 : _chart.Rows.Length;
        Notes.Same(
            ProofStep.LayOut,
            "sizes",
            "",
            "blocks down",
            column.Down,
            down,
            "the placement chart has"
        );
        int across = _chart.Rows.IsEmpty ? 0 : _chart.Rows[0].Length;
        Notes.Same(
            ProofStep.LayOut,
            "sizes",
            "",
            "blocks across",
            column.Across,
            across,
            "the placement chart has"
        );
        Notes.Same(
            ProofStep.LayOut,
            "sizes",
            "",
            "blocks",
            column.Blocks,
            _chart.Rows.Sum(row => row.Length),
            "the placement chart has"
        );
        bool even = across > 0 && (!onPoint || _chart.Rows.Length % 2 == 1);
        for (int r = 0; r < _chart.Rows.Length; r++)
        {
            even &= _chart.Rows[r].Length == (onPoint && r % 2 == 1 ? across - 1 : across);
        }
        if (!Notes.Ok(even))
        {
            Wrong(Chart, "", "rows", "of unequal length", "rows must be alike to be sewn");
            return;
        }
        bool onePatch = _chart.Setting == "one-patch";
        if (
            !Notes.Ok(onePatch || _bench.Tables.Patches.All(row => row.BySize[_bench.Size] is null))
        )
        {
            Wrong("patches", "", "setting", _chart.Setting, "blocks leave no room for patches");
        }
        if (onePatch)
        {
            if (!Notes.Ok(_chart.Sashing is null))
            {
                Wrong(Chart, "", "sashing", "between the patches", "there is none");
            }
            if (PatchStep.Do(_bench, _chart, across) is { } patched)
            {
                Center(patched.Width, patched.Height);
            }
            return;
        }
        if (!Notes.Ok(onPoint || _chart.Setting == "straight"))
        {
            Wrong(Chart, "", "setting", _chart.Setting, "the proof knows no such setting");
            return;
        }
        if (PlaceSize() is not { } place)
        {
            return;
        }
        Length sash = SashWidth();
        if (onPoint)
        {
            LayOnPoint(place, sash, across, down);
            return;
        }
        if (!Notes.Ok(_bench.Tables.Triangles.All(row => row.BySize[_bench.Size] is null)))
        {
            Wrong(
                "triangles",
                "",
                "setting",
                _chart.Setting,
                "only blocks on point have triangles"
            );
        }
        bool around = _chart.Sashing is { Around: true };
        Length edge = around ? sash : Length.Zero;
        // What lies outside the field is known from the drawing; the borders are measured when they are sewn on.
        Point at = drawn.Center.UpperLeft;
        Length[] x = Lines(at.X + edge, place.Width + sash, across),
            y = Lines(at.Y + edge, place.Height + sash, _chart.Rows.Length);
        for (int r = 0; r < _chart.Rows.Length; r++)
        {
            for (int c = 0; c < across; c++)
            {
                Place(r, c, new Rect(x[c], y[r], place.Width, place.Height));
            }
        }
        Length width = (edge * 2) + ((place.Width + sash) * across) - sash,
            height = (edge * 2) + ((place.Height + sash) * _chart.Rows.Length) - sash;
        Sashing(place, sash, edge, across, width);
        Center(width, height);
    }

    /// <summary>Every block and strip must come to lie where one is drawn, and all drawn ones must be laid.</summary>
    private void LayInSections()
    {
        SizeColumn column = _bench.Column;
        if (
            !Notes.Ok(
                _chart.Rows.IsEmpty
                    && _chart.Sashing is null
                    && _bench.Tables.Triangles.All(row => row.BySize[_bench.Size] is null)
            )
        )
        {
            Wrong(Chart, "", "layout", _chart.Setting, "sections have no rows or triangles");
        }
        Notes.Same(ProofStep.LayOut, "sizes", "", "blocks across", column.Across, 0, "rows");
        Notes.Same(ProofStep.LayOut, "sizes", "", "blocks down", column.Down, 0, "columns");
        if (SectionLayout.Of(_bench, _chart.Sections) is not { } layout)
        {
            return;
        }
        Notes.Same(
            ProofStep.LayOut,
            "sizes",
            "",
            "blocks",
            column.Blocks,
            layout.Pieces.Count(piece => piece.Part.Block is not null),
            "the sections have"
        );
        Point at = _bench.Drawn.Quilt.Center.UpperLeft;
        var drawn = _bench.Drawn.Quilt.Places.ToDictionary(place => place.Place);
        var strips = new List<SewnPatch>();
        var laid = new Dictionary<SectionStrip, long>();
        foreach ((Rect lain, SectionPart part) in layout.Pieces)
        {
            Rect place = lain.MoveBy(at);
            if (part.Strip is { } strip)
            {
                strips.Add(DrawnQuilt.PatchOf(place, strip.Fabric));
                laid[strip] = laid.GetValueOrDefault(strip) + 1;
            }
            else if (!Notes.Ok(drawn.Remove(place, out BlockPlace? block)))
            {
                Wrong(
                    Chart,
                    $"{place}",
                    "block",
                    part.Block!.Coloring,
                    "the drawing has no block there"
                );
            }
            else
            {
                Compare($"{place}", part.Block!, block!);
            }
        }
        if (!Notes.Ok(drawn.Count == 0))
        {
            Wrong(
                Chart,
                "",
                "blocks",
                $"{layout.Pieces.Count}",
                $"the drawing has one {drawn.Keys.First()} too"
            );
        }
        foreach (SashingRow row in _bench.Tables.Sashing)
        {
            if (row.BySize[_bench.Size] is { } cell)
            {
                string name = $"{Word(row.Kind)} of {row.Fabric}";
                Notes.Enough(
                    ProofStep.LayOut,
                    "sashing",
                    name,
                    "strips",
                    cell.Count,
                    laid.GetValueOrDefault(new SectionStrip(row.Kind, row.Fabric, row.Number)),
                    "the sections take"
                );
                Pieces(row, cell, name);
            }
        }
        CompareSashes(strips);
        Center(layout.Width, layout.Height);
    }

    private void Center(Length width, Length height)
    {
        SizeColumn column = _bench.Column;
        Quilt drawn = _bench.Drawn.Quilt;
        Measure("center width", column.CenterWidth, width);
        Measure("center height", column.CenterHeight, height);
        if (!Notes.Ok(width == drawn.Center.Width && height == drawn.Center.Height))
        {
            Wrong(
                Chart,
                "",
                "center",
                Notes.Told(width, height),
                $"the drawing measures {Notes.Told(drawn.Center.Width, drawn.Center.Height)}"
            );
        }
        _bench.Field = (width, height);
    }

    // Where columns or rows begin; one more than there are, for what lies after the last.
    private static Length[] Lines(Length first, Length step, int count)
    {
        var lines = new Length[count + 1];
        for (int i = 0; i <= count; i++)
        {
            lines[i] = i == 0 ? first : lines[i - 1] + step;
        }
        return lines;
    }

    // All places of a straight setting are of one size.
    private (Length Width, Length Height)? PlaceSize()
    {
        (Length Width, Length Height)? common = null;
        for (int r = 0; r < _chart.Rows.Length; r++)
        {
            for (int c = 0; c < _chart.Rows[r].Length; c++)
            {
                PlacementCell cell = _chart.Rows[r][c];
                if (
                    !_bench.Index.Blocks.TryGetValue(
                        (cell.Coloring, cell.Number),
                        out BlockRow? row
                    ) || row.BySize[_bench.Size] is not { } block
                )
                {
                    return null;
                }
                (Length, Length) size = cell.Turn.SwapsSides
                    ? (block.FinishedHeight, block.FinishedWidth)
                    : (block.FinishedWidth, block.FinishedHeight);
                common ??= size;
                if (!Notes.Ok(common == size))
                {
                    Wrong(
                        Chart,
                        Named(r, c),
                        $"block {TableIndex.Named(row)}",
                        Notes.Told(size.Item1, size.Item2),
                        $"its row is sewn of blocks of {Notes.Told(common.Value.Width, common.Value.Height)}"
                    );
                    return null;
                }
            }
        }
        return common;
    }

    private void Place(int row, int column, Rect place)
    {
        PlacementCell cell = _chart.Rows[row][column];
        if (_bench.Drawn.Place(row, column) is not { } drawn)
        {
            Notes.Ok(false);
            Wrong(
                Chart,
                Named(row, column),
                "block",
                cell.Coloring,
                "the drawing has no block there"
            );
            return;
        }
        if (!Notes.Ok(drawn.Place == place))
        {
            Wrong(
                Chart,
                Named(row, column),
                "place",
                $"{place}",
                $"the drawing has it {drawn.Place}"
            );
        }
        Compare(Named(row, column), cell, drawn);
    }

    private void Compare(string where, PlacementCell cell, BlockPlace drawn)
    {
        if (!Notes.Ok(cell.Turn == drawn.Turn))
        {
            Wrong(
                Chart,
                where,
                "turn",
                $"{cell.Turn.Degrees}°",
                $"the drawing has it turned {drawn.Turn.Degrees}°"
            );
        }
        if (!_bench.Blocks.TryGetValue((cell.Coloring, cell.Number), out SewnBlock? block))
        {
            return;
        }
        IReadOnlyList<SewnPatch> patches = _bench.Drawn.PatchesOf(drawn);
        Notes.Ok(true);
        if (_alike.Contains((cell.Coloring, cell.Number, cell.Turn, patches)))
        {
            return;
        }
        var key = (cell.Coloring, cell.Number, cell.Turn);
        if (!_sewn.TryGetValue(key, out List<SewnPatch>? sewn))
        {
            _sewn.Add(key, sewn = [.. block.Turned(cell.Turn)]);
        }
        (SewnPatch? extra, SewnPatch? missing) = PatchSet.Difference(sewn, patches);
        if (Notes.Ok(extra is null && missing is null))
        {
            _alike.Add((cell.Coloring, cell.Number, cell.Turn, patches));
            return;
        }
        Wrong(
            Chart,
            where,
            $"block {cell.Coloring}",
            extra is null ? "fewer patches" : $"a patch of {Told(extra)}",
            missing is null ? "the drawing has none there" : $"the drawing has {Told(missing)}"
        );
    }

    private void LayOnPoint((Length Width, Length Height) block, Length sash, int across, int down)
    {
        if (!Notes.Ok(block.Width == block.Height))
        {
            Wrong(
                Chart,
                "",
                "blocks",
                Notes.Told(block.Width, block.Height),
                "on point they must be square"
            );
            return;
        }
        Quilt drawn = _bench.Drawn.Quilt;
        // The long edges of the side triangles tell how far from the edge the blocks' points stay.
        Length away = Length.Zero;
        foreach (TriangleRow row in _bench.Tables.Triangles)
        {
            if (row.BySize[_bench.Size] is { } cell)
            {
                Length point =
                    row.Kind == SettingPieceKind.Side
                        ? block.Width * Exact.SquareRootOfTwo
                        : block.Width * new Exact(0, new Rational(1, 2));
                away = (cell.Edge - point) / 2;
                break;
            }
        }
        if (!Notes.Ok(away.Sign >= 0 && (away.Sign == 0 || sash.Sign == 0)))
        {
            Wrong(
                "triangles",
                "",
                "finished edge",
                Notes.Told(away),
                "the triangles do not fill the notches between the blocks"
            );
            return;
        }
        var layout = new PointLayout(across, down, drawn.Center.UpperLeft, block.Width, sash, away);
        for (int line = 0; line < _chart.Rows.Length; line++)
        {
            for (int c = 0; c < _chart.Rows[line].Length; c++)
            {
                PlacementCell cell = _chart.Rows[line][c];
                if (_bench.Drawn.Place(line, c) is not { } place)
                {
                    Notes.Ok(false);
                    Wrong(
                        Chart,
                        Named(line, c),
                        "block",
                        cell.Coloring,
                        "the drawing has no block there"
                    );
                    continue;
                }
                if (!Notes.Ok(place.Outline == layout.Block(line, c)))
                {
                    Wrong(
                        Chart,
                        Named(line, c),
                        "place",
                        $"{layout.Block(line, c)}",
                        $"the drawing has it {place.Outline}"
                    );
                }
                Compare(Named(line, c), cell, place);
            }
        }
        SashingOnPoint(layout, block.Width, sash);
        TriangleStep.Do(_bench, layout, across, down);
        Center(layout.Width, layout.Height);
        _bench.Field = (layout.Width, layout.Height);
    }

    private void SashingOnPoint(PointLayout layout, Length side, Length sash)
    {
        bool stones = _chart.Sashing is { Cornerstones: true };
        if (!Notes.Ok(_chart.Sashing is null or { Around: true }))
        {
            Wrong(Chart, "", "sashing", "between the blocks", "on point it runs around them too");
        }
        var shapes = new Dictionary<SashKind, List<(Polygon Shape, Length Width, Length Height)>>();
        if (_chart.Sashing is not null)
        {
            shapes[SashKind.Upright] = [.. layout.Between().Select(s => (s, sash, side))];
            if (stones)
            {
                shapes[SashKind.Level] = [.. layout.Along().Select(s => (s, side, sash))];
                shapes[SashKind.Cornerstone] = [.. layout.Stones().Select(s => (s, sash, sash))];
            }
            else
            {
                shapes[SashKind.Row] = [.. layout.Rows().Select(s => (s.Shape, s.Extent, sash))];
            }
        }
        var sewn = new List<SewnPatch>();
        foreach (SashingRow row in _bench.Tables.Sashing)
        {
            if (row.BySize[_bench.Size] is not { } cell)
            {
                continue;
            }
            string name = $"{Word(row.Kind)} of {row.Fabric}";
            if (!shapes.TryGetValue(row.Kind, out var of))
            {
                Notes.Ok(false);
                Wrong("sashing", name, "strips", $"{cell.Count}", "the layout takes none");
                continue;
            }
            // The strips across rows are of several lengths, each a row of the table.
            List<(Polygon Shape, Length Width, Length Height)> alike =
            [
                .. of.Where(s => row.Kind != SashKind.Row || s.Width == cell.FinishedWidth),
            ];
            Notes.Enough(
                ProofStep.LayOut,
                "sashing",
                name,
                "strips",
                cell.Count,
                alike.Count,
                "the layout takes"
            );
            if (alike.Count > 0)
            {
                Measure(name, "finished width", cell.FinishedWidth, alike[0].Width);
                Measure(name, "finished height", cell.FinishedHeight, alike[0].Height);
            }
            sewn.AddRange(alike.Select(s => SewnPatch.Of(row.Fabric, s.Shape.Corners)));
            Pieces(
                row,
                cell,
                name,
                // A strip cut off at 45° needs its seam allowance to the point, at both ends.
                row.Kind == SashKind.Row
                    ? _bench.Seam * 2 * Exact.SquareRootOfTwo
                    : Length.Zero
            );
        }
        CompareSashes(sewn);
    }

    private void CompareSashes(IReadOnlyCollection<SewnPatch> sewn)
    {
        (SewnPatch? extra, SewnPatch? missing) = PatchSet.Difference(sewn, _bench.Drawn.Sashes);
        if (!Notes.Ok(extra is null && missing is null))
        {
            Wrong(
                "sashing",
                "",
                "layout",
                extra is null ? "fewer strips" : $"a strip of {Told(extra)}",
                missing is null ? "the drawing has none there" : $"the drawing has {Told(missing)}"
            );
        }
    }

    // The width that the sashing table gives all strips; the strips themselves are looked at below.
    private Length SashWidth()
    {
        if (_chart.Sashing is null)
        {
            return Length.Zero;
        }
        foreach (SashingRow row in _bench.Tables.Sashing)
        {
            if (row.BySize[_bench.Size] is { } cell)
            {
                return Length.Min(cell.FinishedWidth, cell.FinishedHeight);
            }
        }
        return Length.Zero;
    }

    private void Sashing(
        (Length Width, Length Height) place,
        Length sash,
        Length edge,
        int across,
        Length width
    )
    {
        int down = _chart.Rows.Length;
        bool around = _chart.Sashing is { Around: true },
            stones = _chart.Sashing is { Cornerstones: true };
        int first = around ? 0 : 1,
            lastColumn = around ? across : across - 1,
            lastRow = around ? down : down - 1;
        int lines = Math.Max(0, lastColumn - first + 1),
            rows = Math.Max(0, lastRow - first + 1);
        var fabrics = new Dictionary<SashKind, string>();
        foreach (SashingRow row in _bench.Tables.Sashing)
        {
            if (row.BySize[_bench.Size] is not { } cell)
            {
                continue;
            }
            string name = $"{Word(row.Kind)} of {row.Fabric}";
            if (!Notes.Ok(_chart.Sashing is not null))
            {
                Wrong(
                    "sashing",
                    name,
                    "strips",
                    $"{cell.Count}",
                    "the placement chart has no sashing"
                );
                continue;
            }
            if (!Notes.Ok(fabrics.TryAdd(row.Kind, row.Fabric)))
            {
                Wrong(
                    "sashing",
                    name,
                    "fabric",
                    row.Fabric,
                    $"{Word(row.Kind)} is of {fabrics[row.Kind]} already"
                );
                continue;
            }
            (long count, Length w, Length h) = row.Kind switch
            {
                SashKind.Upright => ((long)lines * down, sash, place.Height),
                SashKind.Level => (stones ? (long)rows * across : 0, place.Width, sash),
                SashKind.Row => (stones ? 0 : rows, width, sash),
                _ => (stones ? (long)lines * rows : 0, sash, sash),
            };
            Notes.Enough(
                ProofStep.LayOut,
                "sashing",
                name,
                "strips",
                cell.Count,
                count,
                "the layout takes"
            );
            Measure(name, "finished width", cell.FinishedWidth, w);
            Measure(name, "finished height", cell.FinishedHeight, h);
            Pieces(row, cell, name);
        }
        Compare(place, sash, edge, across, width, fabrics, (first, lastColumn, lastRow), stones);
    }

    private void Pieces(SashingRow row, SashingCell cell, string name, Length slant = default)
    {
        bool fits =
            _bench.Fits(cell.CutWidth, cell.FinishedWidth + slant)
            & _bench.Fits(cell.CutHeight, cell.FinishedHeight);
        if (!fits)
        {
            Wrong(
                "sashing",
                name,
                "cut size",
                Notes.Told(cell.CutWidth, cell.CutHeight),
                $"sewn it must show {Notes.Told(cell.FinishedWidth, cell.FinishedHeight)}"
            );
        }
        if (cell.Joined is { } joined)
        {
            Length length = Length.Max(cell.CutWidth, cell.CutHeight),
                width = Length.Min(cell.CutWidth, cell.CutHeight);
            Same("sashing", name, "strips to join", joined.Cut, cell.Cut, "the row's pieces are");
            JoinStep.Do(_bench, "sashing", name, row.Fabric, joined, width, length * cell.Count);
            return;
        }
        _bench.Use(cell.Cut, cell.Count);
        if (_bench.Take(ProofStep.LayOut, "sashing", name, cell.Cut, row.Fabric) is not { } cut)
        {
            return;
        }
        if (!Notes.Ok(cut.Width == cell.CutWidth && cut.Height == cell.CutHeight))
        {
            Wrong(
                "sashing",
                name,
                "cut size",
                Notes.Told(cell.CutWidth, cell.CutHeight),
                $"{cell.Cut} is cut {Notes.Told(cut.Width, cut.Height)}"
            );
        }
        if (
            !Notes.Ok(
                _bench.Index.Cuts[cell.Cut].Row is { WholeStrip: false, After: PieceCut.None }
            )
        )
        {
            Wrong(
                "sashing",
                name,
                "pieces",
                cell.Cut,
                "the cutting table has it otherwise than as a piece"
            );
        }
    }

    private void Compare(
        (Length Width, Length Height) place,
        Length sash,
        Length edge,
        int across,
        Length width,
        Dictionary<SashKind, string> fabrics,
        (int First, int LastColumn, int LastRow) lines,
        bool stones
    )
    {
        if (_chart.Sashing is null && _bench.Drawn.Sashes.Count == 0)
        {
            return;
        }
        Point at = _bench.Drawn.Quilt.Center.UpperLeft;
        var sewn = new List<SewnPatch>(_bench.Drawn.Sashes.Count);
        // Line k lies before block k.
        Length[] x = Lines(at.X + edge - sash, place.Width + sash, across),
            y = Lines(at.Y + edge - sash, place.Height + sash, _chart.Rows.Length);
        for (int line = lines.First; line <= lines.LastColumn; line++)
        {
            for (int r = 0; r < _chart.Rows.Length; r++)
            {
                Add(SashKind.Upright, new Rect(x[line], y[r] + sash, sash, place.Height));
            }
        }
        for (int line = lines.First; line <= lines.LastRow; line++)
        {
            if (!stones)
            {
                Add(SashKind.Row, new Rect(at.X, y[line], width, sash));
                continue;
            }
            for (int c = 0; c < across; c++)
            {
                Add(SashKind.Level, new Rect(x[c] + sash, y[line], place.Width, sash));
            }
            for (int column = lines.First; column <= lines.LastColumn; column++)
            {
                Add(SashKind.Cornerstone, new Rect(x[column], y[line], sash, sash));
            }
        }
        CompareSashes(sewn);

        void Add(SashKind kind, Rect strip)
        {
            if (fabrics.TryGetValue(kind, out string? fabric))
            {
                sewn.Add(DrawnQuilt.PatchOf(strip, fabric));
            }
            else if (!Notes.Ok(fabrics.ContainsKey(kind)))
            {
                Notes.Add(
                    MistakeKind.Short,
                    ProofStep.LayOut,
                    "sashing",
                    Word(kind),
                    "strips",
                    "none",
                    "the layout takes some"
                );
                fabrics.Add(kind, "");
            }
        }
    }

    private static string Told(SewnPatch patch) =>
        $"{patch.Fabric} with corners {string.Join(" ", patch.Corners)}";

    private static string Word(SashKind kind) =>
        kind switch
        {
            SashKind.Upright => "upright strips",
            SashKind.Level => "level strips",
            SashKind.Row => "row strips",
            SashKind.Column => "column strips",
            _ => "cornerstones",
        };

    private static string Named(int row, int column) => $"row {row + 1}, block {column + 1}";

    private void Measure(string what, Length printed, Length sewn) =>
        Notes.Same(ProofStep.LayOut, "sizes", "", what, printed, sewn, "sewn it measures");

    private void Measure(string row, string what, Length printed, Length sewn) =>
        Notes.Same(ProofStep.LayOut, "sashing", row, what, printed, sewn, "the layout takes");

    private void Same(
        string table,
        string row,
        string what,
        string printed,
        string expected,
        string why
    ) => Notes.Same(ProofStep.LayOut, table, row, what, printed, expected, why);

    private void Wrong(string table, string row, string what, string printed, string expected) =>
        Notes.Wrong(ProofStep.LayOut, table, row, what, printed, expected);
}
