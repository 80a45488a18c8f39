using PatternPress.Proofing.Shapes;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Tables;

namespace PatternPress.Proofing.Steps;

/// <summary>Sews the borders on, part by part in the order printed, from the inside out.</summary>
internal sealed class BorderStep
{
    private readonly Workbench _bench;
    private readonly List<SewnPatch> _sewn = [];
    private int _number;

    // The quilt as it is so far, and its upper left corner as the drawing has it.
    private Rect _quilt;

    private BorderStep(Workbench bench, Rect field)
    {
        _bench = bench;
        _quilt = field;
    }

    public static void Do(Workbench bench)
    {
        if (bench.Field is not { } field)
        {
            return;
        }
        Point at = bench.Drawn.Quilt.Center.UpperLeft;
        new BorderStep(bench, new Rect(at.X, at.Y, field.Width, field.Height)).Sew();
    }

    private Notes Notes => _bench.Notes;

    private string Row() => $"border {_number}";

    private void Sew()
    {
        int sewn = 0;
        Quilt drawn = _bench.Drawn.Quilt;
        foreach (BorderRow row in _bench.Tables.Borders)
        {
            if (row.BySize[_bench.Size] is not { } cell)
            {
                continue;
            }
            _number = row.Number;
            Border? border = sewn < drawn.Borders.Length ? drawn.Borders[sewn] : null;
            sewn++;
            Notes.Same(
                ProofStep.AddBorders,
                "borders",
                Row(),
                "number",
                row.Number,
                border?.Number ?? 0,
                "the drawing has"
            );
            if (!Notes.Ok(cell.IsCoping == border?.IsCoping))
            {
                Wrong(
                    "kind of border",
                    cell.IsCoping ? "a coping strip" : "a border",
                    "the drawing has the other"
                );
            }
            Notes.Same(
                ProofStep.AddBorders,
                "borders",
                Row(),
                "name",
                cell.Name,
                border?.Design.Name,
                "the drawing says"
            );
            _sewn.Clear();
            Add(cell);
            Compare(border is null ? [] : _bench.Drawn.Borders[sewn - 1]);
        }
        Notes.Same(
            ProofStep.AddBorders,
            "borders",
            "",
            "borders",
            sewn,
            drawn.Borders.Length,
            "the drawing has"
        );
        Outside("width", _bench.Column.Width, _quilt.Width, drawn.Width);
        Outside("height", _bench.Column.Height, _quilt.Height, drawn.Height);
    }

    private void Add(BorderCell cell)
    {
        Measure("width inside", cell.InsideWidth, _quilt.Width);
        Measure("height inside", cell.InsideHeight, _quilt.Height);
        BorderWidths widths = cell.Widths;
        var outside = new Rect(
            _quilt.X - widths.Left,
            _quilt.Y - widths.Top,
            _quilt.Width + widths.Left + widths.Right,
            _quilt.Height + widths.Top + widths.Bottom
        );
        BorderPart[] order = [.. OrderOf(cell.Corners, widths)];
        BorderPart[] strips = [.. cell.Parts.Select(part => part.Part)],
            rows = [.. cell.Rows.Select(row => row.Part)];
        // Each part is strips or blocks, and each table has its own in the order they are sewn.
        bool whole =
            strips.Length + rows.Length == order.Length
            && order.Where(strips.Contains).SequenceEqual(strips)
            && order.Where(rows.Contains).SequenceEqual(rows)
            && order.All(part => strips.Contains(part) != rows.Contains(part));
        if (!Notes.Ok(whole))
        {
            Wrong(
                "order",
                string.Join(", ", strips.Concat(rows).Select(Word)),
                $"it is sewn {string.Join(", ", order.Select(Word))}"
            );
            _quilt = outside;
            return;
        }
        bool meet =
            (widths.Left.Sign > 0 || widths.Right.Sign > 0)
            && (widths.Top.Sign > 0 || widths.Bottom.Sign > 0);
        if (!Notes.Ok(meet || cell.Corners == BorderCorners.SidesFirst))
        {
            Wrong("corners", $"{cell.Corners}", "its strips meet in none");
            _quilt = outside;
            return;
        }
        bool square = cell.Corners is BorderCorners.Squares or BorderCorners.Blocks;
        if (
            !Notes.Ok(widths.Even is not null || !(square || cell.Corners == BorderCorners.Mitered))
        )
        {
            Wrong("corners", "of unlike widths", "such a corner is a square");
            _quilt = outside;
            return;
        }
        Rect quilt = _quilt;
        foreach (BorderPart part in order)
        {
            if (cell.Parts.FirstOrDefault(p => p.Part == part) is not { } strip)
            {
                quilt = Row(cell.Rows.First(r => r.Part == part), quilt, outside, widths, square);
            }
            else if (cell.Corners == BorderCorners.Mitered)
            {
                quilt = Miter(strip, outside, widths.Left);
            }
            else
            {
                quilt = Strip(strip, quilt, outside, widths, square);
            }
        }
        Joined(cell);
        Measure("width with it", cell.OutsideWidth, outside.Width);
        Measure("height with it", cell.OutsideHeight, outside.Height);
        _quilt = outside;
    }

    private static IEnumerable<BorderPart> OrderOf(BorderCorners corners, BorderWidths widths)
    {
        BorderPart[] sides = Pair(
                widths.Left,
                widths.Right,
                BorderPart.Sides,
                BorderPart.Left,
                BorderPart.Right
            ),
            ends = Pair(
                widths.Top,
                widths.Bottom,
                BorderPart.TopAndBottom,
                BorderPart.Top,
                BorderPart.Bottom
            );
        return corners switch
        {
            BorderCorners.TopFirst => ends.Concat(sides),
            BorderCorners.SidesFirst or BorderCorners.Mitered => sides.Concat(ends),
            // What is in the corners goes to the ends of top and bottom before these are sewn on.
            _ => sides.Append(BorderPart.Corners).Concat(ends),
        };

        static BorderPart[] Pair(
            Length one,
            Length other,
            BorderPart both,
            BorderPart first,
            BorderPart second
        ) =>
            one == other ? (one.Sign > 0 ? [both] : [])
            : one.Sign == 0 ? [second]
            : other.Sign == 0 ? [first]
            : [first, second];
    }

    private static BorderSide[] SidesOf(BorderPart part) =>
        part switch
        {
            BorderPart.Sides => [BorderSide.Left, BorderSide.Right],
            BorderPart.TopAndBottom => [BorderSide.Top, BorderSide.Bottom],
            BorderPart.Left => [BorderSide.Left],
            BorderPart.Right => [BorderSide.Right],
            BorderPart.Top => [BorderSide.Top],
            BorderPart.Bottom => [BorderSide.Bottom],
            _ => [],
        };

    /// <summary>Where a strip or row is sewn to the quilt as it is by then.</summary>
    private Rect PlaceOf(
        BorderSide side,
        Rect quilt,
        Rect outside,
        BorderWidths widths,
        bool square
    )
    {
        // Top and bottom of a border with squares or blocks in its corners run between these.
        Rect along = square ? _quilt : quilt;
        return side switch
        {
            BorderSide.Left => new(outside.X, along.Y, widths.Left, along.Height),
            BorderSide.Right => new(
                outside.Right - widths.Right,
                along.Y,
                widths.Right,
                along.Height
            ),
            BorderSide.Top => new(along.X, outside.Y, along.Width, widths.Top),
            _ => new(along.X, outside.Bottom - widths.Bottom, along.Width, widths.Bottom),
        };
    }

    private static Rect With(BorderPart part, Rect quilt, Rect outside)
    {
        foreach (BorderSide side in SidesOf(part))
        {
            quilt = side switch
            {
                BorderSide.Left => quilt with { X = outside.X, Width = quilt.Right - outside.X },
                BorderSide.Right => quilt with { Width = outside.Right - quilt.X },
                BorderSide.Top => quilt with { Y = outside.Y, Height = quilt.Bottom - outside.Y },
                _ => quilt with { Height = outside.Bottom - quilt.Y },
            };
        }
        return quilt;
    }

    // Clockwise from the upper left.
    private static Rect[] CornersOf(Rect outside, Length width) =>
        [
            new(outside.X, outside.Y, width, width),
            new(outside.Right - width, outside.Y, width, width),
            new(outside.Right - width, outside.Bottom - width, width, width),
            new(outside.X, outside.Bottom - width, width, width),
        ];

    // Gives back the quilt with these strips on.
    private Rect Strip(
        BorderPartRow part,
        Rect quilt,
        Rect outside,
        BorderWidths widths,
        bool square
    )
    {
        string what = Word(part.Part);
        BorderSide[] sides = SidesOf(part.Part);
        Rect[] places =
            part.Part == BorderPart.Corners
                ? CornersOf(outside, widths.Left)
                : [.. sides.Select(side => PlaceOf(side, quilt, outside, widths, square))];
        bool level = sides.Length > 0 && sides[0] is BorderSide.Top or BorderSide.Bottom;
        (Length width, Length length) = level
            ? (places[0].Height, places[0].Width)
            : (places[0].Width, places[0].Height);
        Notes.Enough(
            ProofStep.AddBorders,
            "borders",
            Row(),
            what,
            part.Count,
            places.Length,
            "the quilt takes"
        );
        bool fits = _bench.Fits(part.Width, width) & _bench.Fits(part.Length, length);
        if (!fits)
        {
            Wrong(
                $"{what}, cut size",
                Notes.Told(part.Width, part.Length),
                $"sewn they must show {Notes.Told(width, length)}"
            );
        }
        if (!part.Joined)
        {
            Pieces(part, what, level);
        }
        foreach (Rect place in places)
        {
            _sewn.Add(DrawnQuilt.PatchOf(place, part.Fabric));
        }
        return With(part.Part, quilt, outside);
    }

    // Sews blocks end to end and the row to the quilt: it must be exactly as long as the edge it is sewn to.
    private Rect Row(
        BorderBlocksRow row,
        Rect quilt,
        Rect outside,
        BorderWidths widths,
        bool square
    )
    {
        string what = Word(row.Part);
        BorderSide[] sides = SidesOf(row.Part);
        bool corners = row.Part == BorderPart.Corners;
        Notes.Enough(
            ProofStep.AddBorders,
            "borders",
            Row(),
            what,
            row.Count,
            corners ? 4 : sides.Length,
            "the quilt takes"
        );
        Length width = widths.Left,
            length = Length.Zero;
        var sewn = new List<(Polygon Shape, string Fabric)>();
        foreach (PlacementCell cell in row.Blocks)
        {
            if (!_bench.Blocks.TryGetValue((cell.Coloring, cell.Number), out SewnBlock? block))
            {
                return With(row.Part, quilt, outside);
            }
            (Length along, Length high) = cell.Turn.SwapsSides
                ? (block.Height, block.Width)
                : (block.Width, block.Height);
            if (!Notes.Ok(high == width))
            {
                Wrong(
                    $"{what}, block {cell.Coloring}",
                    Notes.Told(along, high),
                    $"the border is {Notes.Told(width)} wide"
                );
            }
            var by = new Point(length, Length.Zero);
            sewn.AddRange(
                block.Patches.Select(patch =>
                    (
                        patch.Shape.Turned(cell.Turn, block.Width, block.Height).MoveBy(by),
                        patch.Fabric
                    )
                )
            );
            length += along;
        }
        MeasureRow($"{what}, width of the row", row.Width, width);
        MeasureRow($"{what}, length of the row", row.Length, length);
        Rect[] places = corners
            ? CornersOf(outside, width)
            : [.. sides.Select(side => PlaceOf(side, quilt, outside, widths, square))];
        for (int i = 0; i < places.Length; i++)
        {
            // The row lies as at the top, and goes round clockwise: right, bottom, left.
            int quarters = corners
                ? i
                : sides[i] switch
                {
                    BorderSide.Right => 1,
                    BorderSide.Bottom => 2,
                    BorderSide.Left => 3,
                    _ => 0,
                };
            var turn = new Turn(quarters);
            Length edge = turn.SwapsSides ? places[i].Height : places[i].Width;
            if (!Notes.Ok(edge == length))
            {
                Wrong(
                    $"{what}, blocks end to end",
                    Notes.Told(length),
                    $"the edge they are sewn to measures {Notes.Told(edge)}"
                );
            }
            foreach ((Polygon shape, string fabric) in sewn)
            {
                _sewn.Add(
                    SewnPatch.Of(
                        fabric,
                        shape.Turned(turn, length, width).MoveBy(places[i].UpperLeft).Corners
                    )
                );
            }
        }
        return With(row.Part, quilt, outside);
    }

    private void MeasureRow(string what, Length printed, Length finished) =>
        Notes.Same(
            ProofStep.AddBorders,
            "borders",
            Row(),
            what,
            printed,
            finished + (_bench.Seam * 2),
            "with its seams it measures"
        );

    // A strip reaches from outer corner to outer corner and is folded over at 45°: what lies beyond the fold is cut off.
    private Rect Miter(BorderPartRow part, Rect outside, Length width)
    {
        string what = Word(part.Part);
        bool sides = part.Part == BorderPart.Sides;
        Length length = sides ? outside.Height : outside.Width;
        Notes.Enough(
            ProofStep.AddBorders,
            "borders",
            Row(),
            what,
            part.Count,
            2,
            "the quilt takes"
        );
        Length points =
            length + (_bench.Seam * 2 * Exact.SquareRootOfTwo) + _bench.House.MiterAllowance;
        bool fits = _bench.Fits(part.Width, width) & _bench.Fits(part.Length, points);
        if (!fits)
        {
            Wrong(
                $"{what}, cut size",
                Notes.Told(part.Width, part.Length),
                $"mitered they must show {Notes.Told(width, length)} along their outer edge"
            );
        }
        if (!part.Joined)
        {
            Pieces(part, what, !sides);
        }
        // From the upper left corner, along the strip and into the quilt; the other strip of the pair is its mirror image.
        foreach (bool far in new[] { false, true })
        {
            Point[] corners =
            [
                At(Length.Zero, Length.Zero),
                At(length, Length.Zero),
                At(length - width, width),
                At(width, width),
            ];
            if (sides != far)
            {
                Array.Reverse(corners);
            }
            _sewn.Add(SewnPatch.Of(part.Fabric, corners));

            Point At(Length along, Length inward) =>
                (sides, far) switch
                {
                    (true, false) => new(outside.X + inward, outside.Y + along),
                    (true, true) => new(outside.Right - inward, outside.Y + along),
                    (false, false) => new(outside.X + along, outside.Y + inward),
                    _ => new(outside.X + along, outside.Bottom - inward),
                };
        }
        return outside;
    }

    private void Pieces(BorderPartRow part, string what, bool level)
    {
        _bench.Use(part.Cut, part.Count);
        if (
            _bench.Take(ProofStep.AddBorders, "borders", Row(), part.Cut, part.Fabric)
            is not { } cut
        )
        {
            return;
        }
        // The table of cuts gives a piece as it lies in the quilt.
        (Length width, Length length) = level ? (cut.Height, cut.Width) : (cut.Width, cut.Height);
        if (!Notes.Ok(width == part.Width && length == part.Length))
        {
            Wrong(
                $"{what}, cut size",
                Notes.Told(part.Width, part.Length),
                $"{part.Cut} is cut {Notes.Told(width, length)}"
            );
        }
        if (
            !Notes.Ok(
                _bench.Index.Cuts[part.Cut].Row is { WholeStrip: false, After: PieceCut.None }
            )
        )
        {
            Wrong(what, part.Cut, "the cutting table has it otherwise than as a piece");
        }
    }

    // Each joined strip gives all parts that name it.
    private void Joined(BorderCell cell)
    {
        foreach (JoinedRow joined in cell.Joined)
        {
            Length needed = Length.Zero;
            BorderPartRow? first = null;
            foreach (BorderPartRow part in cell.Parts)
            {
                if (part.Joined && part.Cut == joined.Cut)
                {
                    first ??= part;
                    needed += part.Length * part.Count;
                    if (!Notes.Ok(part.Width == first.Width && part.Fabric == first.Fabric))
                    {
                        Wrong(
                            Word(part.Part),
                            $"{part.Fabric} {Notes.Told(part.Width)}",
                            $"{joined.Cut} is joined of {first.Fabric} {Notes.Told(first.Width)}"
                        );
                    }
                }
            }
            if (!Notes.Ok(first is not null))
            {
                Wrong("strips to join", joined.Cut, "no part of the border is cut from them");
                continue;
            }
            JoinStep.Do(_bench, "borders", Row(), first!.Fabric, joined, first.Width, needed);
        }
        foreach (BorderPartRow part in cell.Parts)
        {
            if (part.Joined && !Notes.Ok(cell.Joined.Count(joined => joined.Cut == part.Cut) == 1))
            {
                Wrong(Word(part.Part), part.Cut, "it is not told once how these strips are joined");
            }
        }
    }

    private void Compare(IReadOnlyList<SewnPatch> drawn)
    {
        (SewnPatch? extra, SewnPatch? missing) = PatchSet.Difference(_sewn, drawn);
        if (!Notes.Ok(extra is null && missing is null))
        {
            Wrong(
                "layout",
                extra is null ? "fewer strips" : $"a strip of {Told(extra)}",
                missing is null ? "the drawing has none there" : $"the drawing has {Told(missing)}"
            );
        }
    }

    private static string Told(SewnPatch patch) =>
        $"{patch.Fabric} with corners {string.Join(" ", patch.Corners)}";

    private static string Word(BorderPart part) =>
        part switch
        {
            BorderPart.Sides => "sides",
            BorderPart.TopAndBottom => "top and bottom",
            BorderPart.Corners => "corners",
            BorderPart.Left => "left",
            BorderPart.Right => "right",
            BorderPart.Top => "top",
            BorderPart.Bottom => "bottom",
            _ => "joined strips",
        };

    private void Outside(string what, Length printed, Length sewn, Length drawn)
    {
        Notes.Same(ProofStep.AddBorders, "sizes", "", what, printed, sewn, "sewn it measures");
        if (!Notes.Ok(sewn == drawn))
        {
            Wrong(what, Notes.Told(sewn), $"the drawing measures {Notes.Told(drawn)}");
        }
    }

    private void Measure(string what, Length printed, Length sewn) =>
        Notes.Same(ProofStep.AddBorders, "borders", Row(), what, printed, sewn, "it measures");

    private void Wrong(string what, string printed, string expected) =>
        Notes.Wrong(ProofStep.AddBorders, "borders", Row(), what, printed, expected);
}
