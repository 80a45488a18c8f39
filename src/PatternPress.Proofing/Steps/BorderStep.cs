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

    private string Row => $"border {_number}";

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
                Row,
                "number",
                row.Number,
                sewn,
                "the border before it was"
            );
            Notes.Same(
                ProofStep.AddBorders,
                "borders",
                Row,
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
        Length width = cell.FinishedWidth;
        var outside = new Rect(
            _quilt.X - width,
            _quilt.Y - width,
            _quilt.Width + (width * 2),
            _quilt.Height + (width * 2)
        );
        BorderPart[] order = cell.Corners switch
        {
            BorderCorners.SidesFirst or BorderCorners.Mitered =>
            [
                BorderPart.Sides,
                BorderPart.TopAndBottom,
            ],
            BorderCorners.TopFirst => [BorderPart.TopAndBottom, BorderPart.Sides],
            // Corner squares go to the ends of top and bottom before these are sewn on.
            _ => [BorderPart.Sides, BorderPart.Corners, BorderPart.TopAndBottom],
        };
        if (!Notes.Ok(cell.Parts.Select(part => part.Part).SequenceEqual(order)))
        {
            Wrong(
                "order",
                string.Join(", ", cell.Parts.Select(part => Word(part.Part))),
                $"it is sewn {string.Join(", ", order.Select(Word))}"
            );
            _quilt = outside;
            return;
        }
        Rect quilt = _quilt;
        foreach (BorderPartRow part in cell.Parts)
        {
            quilt =
                cell.Corners == BorderCorners.Mitered
                    ? Miter(part, outside, width)
                    : Add(part, quilt, outside, width, cell.Corners == BorderCorners.Squares);
        }
        Joined(cell);
        Measure("width with it", cell.OutsideWidth, outside.Width);
        Measure("height with it", cell.OutsideHeight, outside.Height);
        _quilt = outside;
    }

    // Gives back the quilt with these strips on.
    private Rect Add(BorderPartRow part, Rect quilt, Rect outside, Length width, bool squares)
    {
        string what = Word(part.Part);
        bool corners = part.Part == BorderPart.Corners,
            sides = part.Part == BorderPart.Sides;
        Length length =
            corners ? width
            : sides ? quilt.Height
            : squares ? _quilt.Width
            : quilt.Width;
        Notes.Enough(
            ProofStep.AddBorders,
            "borders",
            Row,
            what,
            part.Count,
            corners ? 4 : 2,
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
            Pieces(part, what, sides);
        }
        switch (part.Part)
        {
            case BorderPart.Sides:
                Put(part.Fabric, outside.X, quilt.Y, width, length);
                Put(part.Fabric, outside.Right - width, quilt.Y, width, length);
                return quilt with { X = outside.X, Width = outside.Width };
            case BorderPart.TopAndBottom:
                Length x = squares ? _quilt.X : quilt.X;
                Put(part.Fabric, x, outside.Y, length, width);
                Put(part.Fabric, x, outside.Bottom - width, length, width);
                return quilt with { Y = outside.Y, Height = outside.Height };
            default:
                Put(part.Fabric, outside.X, outside.Y, width, width);
                Put(part.Fabric, outside.Right - width, outside.Y, width, width);
                Put(part.Fabric, outside.X, outside.Bottom - width, width, width);
                Put(part.Fabric, outside.Right - width, outside.Bottom - width, width, width);
                return quilt;
        }
    }

    // A strip reaches from outer corner to outer corner and is folded over at 45°: what lies beyond the fold is cut off.
    private Rect Miter(BorderPartRow part, Rect outside, Length width)
    {
        string what = Word(part.Part);
        bool sides = part.Part == BorderPart.Sides;
        Length length = sides ? outside.Height : outside.Width;
        Notes.Enough(ProofStep.AddBorders, "borders", Row, what, part.Count, 2, "the quilt takes");
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
            Pieces(part, what, sides);
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

    private void Put(string fabric, Length x, Length y, Length width, Length height) =>
        _sewn.Add(DrawnQuilt.PatchOf(new Rect(x, y, width, height), fabric));

    private void Pieces(BorderPartRow part, string what, bool sides)
    {
        _bench.Use(part.Cut, part.Count);
        if (_bench.Take(ProofStep.AddBorders, "borders", Row, part.Cut, part.Fabric) is not { } cut)
        {
            return;
        }
        // The table of cuts gives a piece as it lies in the quilt.
        (Length width, Length length) =
            part.Part == BorderPart.TopAndBottom
                ? (cut.Height, cut.Width)
                : (cut.Width, cut.Height);
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
            JoinStep.Do(_bench, "borders", Row, first!.Fabric, joined, first.Width, needed);
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
            BorderPart.Corners => "corner squares",
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
        Notes.Same(ProofStep.AddBorders, "borders", Row, what, printed, sewn, "it measures");

    private void Wrong(string what, string printed, string expected) =>
        Notes.Wrong(ProofStep.AddBorders, "borders", Row, what, printed, expected);
}
