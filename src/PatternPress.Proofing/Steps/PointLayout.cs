using PatternPress.Proofing.Shapes;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Tables;

namespace PatternPress.Proofing.Steps;

/// <summary>
/// A quilt on point as a maker lays it on the floor: every block by the middle of its place, half a step at a time, measured
/// from the upper left corner of the quilt's middle; strips in the middle between two blocks; triangles in the notches.
/// </summary>
internal sealed class PointLayout
{
    private static readonly Exact _overRootTwo = new(0, new Rational(1, 2));

    private readonly int _across;
    private readonly int _down;
    private readonly Point _at;

    // From the middle of a place to the middle of the next in its row, half across and half down.
    private readonly Length _step;

    // From the middle of a block to its corner, of a cornerstone to its corner.
    private readonly Length _block;
    private readonly Length _stone;
    private readonly Length _float;

    /// <param name="at">Upper left corner of the quilt's middle.</param>
    /// <param name="side">Finished side of a block.</param>
    /// <param name="sash">Finished width of the strips; zero for none.</param>
    /// <param name="away">How far the blocks' points stay inside the edge.</param>
    public PointLayout(int across, int down, Point at, Length side, Length sash, Length away)
    {
        (_across, _down, _at, _float) = (across, down, at, away);
        _block = side * _overRootTwo;
        _stone = sash * _overRootTwo;
        _step = _block + _stone;
    }

    public Length Width => (_step * (2 * _across)) + (_float * 2);

    public Length Height => (_step * (2 * _down)) + (_float * 2);

    /// <summary>Long edge of a side triangle.</summary>
    public Length SideEdge => (_block * 2) + (_float * 2);

    /// <summary>Short edge of a corner triangle.</summary>
    public Length CornerEdge => _block + (_float * 2);

    /// <summary>A block's corners: left, top, right, bottom, which are the upper left and so on of the block itself.</summary>
    public Polygon Block(int line, int place) => Diamond(Middle(line, place), _block);

    /// <summary>Strips between the blocks of a diagonal row and at its ends.</summary>
    public IEnumerable<Polygon> Between() =>
        Strips(new Point(_step / 2, -_step / 2), new Point(_block / 2, _block / 2));

    /// <summary>Strips between diagonal rows, one for each block's edge.</summary>
    public IEnumerable<Polygon> Along() =>
        Strips(new Point(_step / 2, _step / 2), new Point(_block / 2, -_block / 2));

    /// <summary>Where strips meet; those on the edge are cut through the middle.</summary>
    public IEnumerable<Polygon> Stones()
    {
        var seen = new HashSet<Point>();
        foreach (Point middle in Middles())
        {
            foreach (
                Point stone in new[]
                {
                    new Point(middle.X - _step, middle.Y),
                    new Point(middle.X, middle.Y - _step),
                    new Point(middle.X + _step, middle.Y),
                    new Point(middle.X, middle.Y + _step),
                }
            )
            {
                if (seen.Add(stone))
                {
                    yield return Moved(Within(stone));
                }
            }
        }
    }

    /// <summary>Strips across whole rows, their ends cut off by the edge of the quilt; with their extent along the row.</summary>
    public IEnumerable<(Polygon Shape, Length Extent)> Rows()
    {
        for (int row = 0; row <= _across + _down - 1; row++)
        {
            // The strip's middle line: x + y is the same all along.
            Length line = _step * ((2 * row) + 1);
            (Point low1, Point low2) =
                line < Height
                    ? (new Point(Length.Zero, line - _stone), new Point(Length.Zero, line + _stone))
                    : (
                        new Point(line - _stone - Height, Height),
                        new Point(line + _stone - Height, Height)
                    );
            (Point high1, Point high2) =
                line < Width
                    ? (new Point(line - _stone, Length.Zero), new Point(line + _stone, Length.Zero))
                    : (
                        new Point(Width, line - _stone - Width),
                        new Point(Width, line + _stone - Width)
                    );
            Length from = Length.Min(low1.X - low1.Y, low2.X - low2.Y),
                to = Length.Max(high1.X - high1.Y, high2.X - high2.Y);
            yield return (
                Moved(new Polygon([low1, high1, high2, low2])),
                (to - from) * _overRootTwo
            );
        }
    }

    public IEnumerable<Polygon> Sides()
    {
        // Each is drawn as on the left edge: the distance down the edge and the distance in from it.
        for (int k = 1; k < _down; k++)
        {
            bool last = k == _down - 1,
                first = k == 1;
            yield return Side(k, 1, 1, first: false, last, p => new Point(p.X, p.Y), turned: false);
            yield return Side(
                k,
                -1,
                1,
                first,
                last: false,
                p => new Point(Width - p.X, p.Y),
                turned: true
            );
        }
        for (int k = 1; k < _across; k++)
        {
            bool last = k == _across - 1,
                first = k == 1;
            yield return Side(k, 1, 1, first: false, last, p => new Point(p.Y, p.X), turned: true);
            yield return Side(
                k,
                -1,
                1,
                first,
                last: false,
                p => new Point(p.Y, Height - p.X),
                turned: false
            );
        }
    }

    public IEnumerable<Polygon> Corners()
    {
        Length o = Length.Zero,
            c = CornerEdge,
            w = Width,
            h = Height;
        // The first two run from the upper edge to the left one and from the lower edge to the right one. Where there is only
        // one block across or down, the last two cut off their points beyond the point of the block.
        yield return Moved(
            new Polygon([
                new(o, o),
                .. _across > 1 || _float.Sign == 0
                    ? (Point[])[new(c, o)]
                    : [new((w / 2) - _float, o), new(w / 2, _float)],
                .. _down > 1 || _float.Sign == 0
                    ? (Point[])[new(o, c)]
                    : [new(_float, h / 2), new(o, (h / 2) - _float)],
            ])
        );
        yield return Moved(
            new Polygon([
                new(w, h),
                .. _across > 1 || _float.Sign == 0
                    ? (Point[])[new(w - c, h)]
                    : [new((w / 2) + _float, h), new(w / 2, h - _float)],
                .. _down > 1 || _float.Sign == 0
                    ? (Point[])[new(w, h - c)]
                    : [new(w - _float, h / 2), new(w, (h / 2) + _float)],
            ])
        );
        yield return Moved(new Polygon([new(w, o), new(w, c), new(w - c, o)]));
        yield return Moved(new Polygon([new(o, h), new(o, h - c), new(c, h)]));
    }

    // The seams at both ends of a floating triangle go on past the blocks' points to the edge: those of the rows all one
    // way, that of a corner triangle, sewn last, the other way.
    private Polygon Side(
        int notch,
        int way,
        int cornerWay,
        bool first,
        bool last,
        Func<Point, Point> lie,
        bool turned
    )
    {
        Length middle = _float + (_step * (2 * notch)),
            above = middle - _block,
            below = middle + _block;
        Point[] corners =
        [
            new(_float, above),
            new(_float + _block, middle),
            new(_float, below),
            new(Length.Zero, below + (_float * (last ? -cornerWay : way))),
            new(Length.Zero, above + (_float * (first ? cornerWay : way))),
        ];
        IEnumerable<Point> lying = corners.Select(lie);
        // A mirrored shape has its corners the other way round.
        Point[] clockwise = turned ? [.. lying.Reverse()] : [.. lying];
        return Moved(new Polygon([.. Distinct(clockwise)]));
    }

    private static IEnumerable<Point> Distinct(Point[] corners)
    {
        for (int i = 0; i < corners.Length; i++)
        {
            if (corners[i] != corners[(i + corners.Length - 1) % corners.Length])
            {
                yield return corners[i];
            }
        }
    }

    private IEnumerable<Polygon> Strips(Point off, Point half)
    {
        var seen = new HashSet<Point>();
        // Across the strip: at a right angle to its length.
        Length side = _stone / 2;
        var broad = new Point(side, half.Y.Sign > 0 ? -side : side);
        foreach (Point middle in Middles())
        {
            foreach (Point strip in new[] { middle + off, middle - off })
            {
                if (seen.Add(strip))
                {
                    Point[] corners =
                    [
                        strip - half + broad,
                        strip + half + broad,
                        strip + half - broad,
                        strip - half - broad,
                    ];
                    yield return Moved(new Polygon([.. Clockwise(corners)]));
                }
            }
        }
    }

    private static Point[] Clockwise(Point[] corners) =>
        new Polygon([.. corners]).Area.SquareInches.Sign > 0 ? corners : [.. corners.Reverse()];

    private Polygon Within(Point stone)
    {
        Length o = Length.Zero,
            d = _stone;
        var corners = new List<Point>(4);
        // Left, top, right, bottom; the one that lies outside is cut off with half of the stone.
        Add(stone.X != o, new Point(stone.X - d, stone.Y));
        Add(stone.Y != o, new Point(stone.X, stone.Y - d));
        Add(stone.X != Width, new Point(stone.X + d, stone.Y));
        Add(stone.Y != Height, new Point(stone.X, stone.Y + d));
        return new Polygon([.. corners]);

        void Add(bool kept, Point corner)
        {
            if (kept)
            {
                corners.Add(corner);
            }
        }
    }

    private IEnumerable<Point> Middles()
    {
        for (int line = 0; line < (2 * _down) - 1; line++)
        {
            for (int place = 0; place < _across - (line % 2); place++)
            {
                yield return MiddleHere(line, place);
            }
        }
    }

    private Point MiddleHere(int line, int place) =>
        new(_float + (_step * ((2 * place) + (line % 2) + 1)), _float + (_step * (line + 1)));

    private Point Middle(int line, int place) => MiddleHere(line, place) + _at;

    private static Polygon Diamond(Point middle, Length half) =>
        new([
            new(middle.X - half, middle.Y),
            new(middle.X, middle.Y - half),
            new(middle.X + half, middle.Y),
            new(middle.X, middle.Y + half),
        ]);

    private Polygon Moved(Polygon shape) => new([.. shape.Corners.Select(c => c + _at)]);
}
