using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Rules;

namespace PatternPress.Quilting.Settings;

/// <summary>
/// Square blocks standing on a corner, sewn in diagonal rows; triangles fill the sides and the corners. With sashing the
/// strips run around every block, and the side of the quilt passes through the middle of the outermost cornerstones.
/// </summary>
public sealed class OnPoint : Setting
{
    private static readonly Exact _halfOfRootTwo = new(0, new Rational(1, 2));

    public override string Keyword => "on-point";

    public override bool StandsOnPoint => true;

    public override Field? Lay(Layout layout) =>
        EqualBlocks.Place(layout) is { } blocks && AreSquare(blocks, layout)
            ? new Laying(layout.Design, blocks).Lay()
            : null;

    // A line on point goes through the corners of all its blocks, and so do the sides of the quilt.
    private static bool AreSquare((ColoredBlock Block, Turn Turn)[][] placed, Layout layout)
    {
        ColoredBlock block = placed[0][0].Block;
        if (block.Width == block.Height)
        {
            return true;
        }
        layout.Findings.Add(
            PP0244_OblongBlockOnPoint.Found(
                layout.Cells[0][0].Span,
                block.Key,
                block.Width,
                block.Height,
                layout.Size.Key
            )
        );
        return false;
    }

    /// <summary>
    /// Works in the coordinates of the blocks: u to the upper right, v to the lower right. Diagonal row j lies at v = j
    /// steps, its blocks at u = i steps; block c of line k has i + j = x, j − i = y for its place x = 2c (odd lines 2c + 1),
    /// y = k among the half steps across and down the quilt.
    /// </summary>
    private sealed class Laying
    {
        private readonly TriangleDesign _triangles;
        private readonly SashingDesign? _sashing;
        private readonly (ColoredBlock Block, Turn Turn)[][] _blocks;
        private readonly int _columns;
        private readonly int _rows;
        private readonly Length _side;
        private readonly Length _sash;
        private readonly Length _step;
        private readonly Frame _frame;
        private readonly Slope[] _edges;
        private readonly Length _width;
        private readonly Length _height;
        private readonly List<BlockPlace> _places = [];
        private readonly List<Sash> _sashes = [];
        private readonly List<SettingPiece> _pieces = [];
        private readonly List<LayoutRow> _layout = [];
        private readonly int[] _firstOfLine;

        public Laying(QuiltDesign design, (ColoredBlock Block, Turn Turn)[][] blocks)
        {
            _triangles = design.Triangles!;
            _sashing = design.Sashing;
            _blocks = blocks;
            _columns = blocks[0].Length;
            _rows = (blocks.Length + 1) / 2;
            _side = blocks[0][0].Block.Width;
            _sash = _sashing?.Width ?? Length.Zero;
            _step = _side + _sash;
            // The sides of the quilt: where u + v and v − u are least and greatest.
            Length away = _sash + (_triangles.Float * Exact.SquareRootOfTwo);
            Length left = -away,
                right = (_step * ((2 * _columns) - 2)) + (_side * 2) + away,
                top = -_side - away,
                bottom = (_step * ((2 * _rows) - 2)) + _side + away;
            _edges =
            [
                new Slope(1, 1, left),
                new Slope(-1, -1, -right),
                new Slope(-1, 1, top),
                new Slope(1, -1, -bottom),
            ];
            _width = (right - left) * _halfOfRootTwo;
            _height = (bottom - top) * _halfOfRootTwo;
            _frame = new Frame(new Point(-left * _halfOfRootTwo, -top * _halfOfRootTwo), true);
            _firstOfLine = new int[blocks.Length + 1];
            for (int line = 0; line < blocks.Length; line++)
            {
                _firstOfLine[line + 1] = _firstOfLine[line] + blocks[line].Length;
            }
        }

        private int DiagonalRows => _columns + _rows - 1;

        public Field Lay()
        {
            for (int line = 0; line < _blocks.Length; line++)
            {
                for (int c = 0; c < _blocks[line].Length; c++)
                {
                    int x = (2 * c) + (line % 2);
                    Length u = _step * ((x - line) / 2),
                        v = _step * ((x + line) / 2);
                    (ColoredBlock block, Turn turn) = _blocks[line][c];
                    var place = new Rect(u, v, _side, _side);
                    _places.Add(new BlockPlace(line, c, block, turn, place) { Frame = _frame });
                }
            }
            for (int j = 0; j <= DiagonalRows; j++)
            {
                if (_sashing is not null)
                {
                    SashingRow(_sashing, j);
                }
                if (j < DiagonalRows)
                {
                    BlockRow(j);
                }
            }
            Corners();
            return new Field(
                _width,
                _height,
                [.. _places],
                [.. _sashes],
                [.. _pieces],
                [.. _layout]
            );
        }

        // The first and the last block of a diagonal row, by x.
        private int FirstX(int j) => Math.Max(0, (2 * j) - (2 * _rows) + 2);

        private int LastX(int j) => Math.Min((2 * _columns) - 2, 2 * j);

        private int First(int j) => FirstX(j) - j;

        private int Last(int j) => LastX(j) - j;

        // A line has the places x = 2c, or 2c + 1 in between.
        private int BlockAt(int i, int j) => _firstOfLine[j - i] + ((i + j) / 2);

        private void BlockRow(int j)
        {
            Length v = _step * j;
            int first = First(j),
                last = Last(j);
            var parts = ImmutableArray.CreateBuilder<LayoutPart>();
            // The row that ends in a corner of the quilt gets its corner triangle with the others, last of all.
            if (j != _rows - 1)
            {
                Length end = (_step * first) - _sash;
                Side(new Rect(end - Beyond, v, Beyond, _side), parts);
            }
            for (int i = first; i <= last + 1; i++)
            {
                if (_sashing is not null)
                {
                    var place = new Rect((_step * i) - _sash, v, _sash, _side);
                    Add(SashKind.Upright, j, i - first, place, _sashing.Fabric.Value, parts);
                }
                if (i <= last)
                {
                    parts.Add(new LayoutPart(LayoutPartKind.Block, BlockAt(i, j)));
                }
            }
            if (j != _columns - 1)
            {
                Side(new Rect((_step * last) + _side + _sash, v, Beyond, _side), parts);
            }
            _layout.Add(new LayoutRow(LayoutRowKind.Blocks, j, parts.ToImmutable()));
        }

        // Farther than any triangle reaches.
        private Length Beyond => (_step * 2) + (_triangles.Float * 2);

        private void Side(Rect strip, ImmutableArray<LayoutPart>.Builder parts)
        {
            Polygon? shape = Trim(strip.ToPolygon());
            foreach (Slope edge in CornerSeams())
            {
                shape = shape is null ? null : edge.Keep(shape);
            }
            Length edgeLength = (_side * Exact.SquareRootOfTwo) + (_triangles.Float * 2);
            Add(SettingPieceKind.Side, shape!, _triangles.Sides.Value, edgeLength, parts);
        }

        // The seams that the corner triangles are sewn along, last of all.
        private Slope[] CornerSeams() =>
            [
                new(0, 1, -_sash),
                new(0, -1, -(_step * DiagonalRows)),
                new(1, 0, (_step * First(_rows - 1)) - _sash),
                new(-1, 0, -((_step * Last(_columns - 1)) + _side + _sash)),
            ];

        private void Corners()
        {
            Slope[] seams = CornerSeams();
            foreach (Slope seam in seams)
            {
                // The other side of the seam, as far as the quilt reaches.
                var whole = new Rect(
                    (_step * First(_rows - 1)) - Beyond,
                    -Beyond,
                    (_step * (DiagonalRows + 1)) + (Beyond * 2),
                    (_step * (DiagonalRows + 1)) + (Beyond * 2)
                );
                Polygon shape = Trim(
                    new Slope(-seam.X, -seam.Y, -seam.Least).Keep(whole.ToPolygon())!
                )!;
                if (seam.Y != 0)
                {
                    // Sewn before the other two, which cut its points where a float makes them meet.
                    shape = seams[2].Keep(seams[3].Keep(shape)!)!;
                }
                var parts = ImmutableArray.CreateBuilder<LayoutPart>(1);
                Length edge = (_side * _halfOfRootTwo) + (_triangles.Float * 2);
                Add(SettingPieceKind.Corner, shape, _triangles.Corners.Value, edge, parts);
                _layout.Add(new LayoutRow(LayoutRowKind.Corner, -1, parts.ToImmutable()));
            }
        }

        private void SashingRow(SashingDesign sashing, int j)
        {
            // It runs along the longer of the two rows it lies between.
            int first = j == DiagonalRows ? First(j - 1) : First(j),
                last = j == DiagonalRows ? Last(j - 1) : Last(j);
            if (j > 0)
            {
                first = Math.Min(first, First(j - 1));
                last = Math.Max(last, Last(j - 1));
            }
            Length v = (_step * j) - _sash;
            var parts = ImmutableArray.CreateBuilder<LayoutPart>();
            string fabric = sashing.Fabric.Value;
            if (sashing.Cornerstones is not { } cornerstones)
            {
                var strip = new Rect(
                    (_step * first) - _sash,
                    v,
                    (_step * (last + 1 - first)) + _sash,
                    _sash
                );
                Add(SashKind.Row, j, 0, strip, fabric, parts);
            }
            else
            {
                for (int i = first; i <= last + 1; i++)
                {
                    var stone = new Rect((_step * i) - _sash, v, _sash, _sash);
                    Add(SashKind.Cornerstone, j, i - first, stone, cornerstones.Value, parts);
                    if (i <= last)
                    {
                        var strip = new Rect(_step * i, v, _side, _sash);
                        Add(SashKind.Level, j, i - first, strip, fabric, parts);
                    }
                }
            }
            _layout.Add(new LayoutRow(LayoutRowKind.Sashing, -1, parts.ToImmutable()));
        }

        private void Add(
            SashKind kind,
            int row,
            int column,
            Rect place,
            string fabric,
            ImmutableArray<LayoutPart>.Builder parts
        )
        {
            var whole = place.ToPolygon();
            Polygon trimmed = Trim(whole)!;
            parts.Add(new LayoutPart(LayoutPartKind.Sash, _sashes.Count));
            _sashes.Add(
                new Sash(kind, row, column, place, fabric)
                {
                    Frame = _frame,
                    Trimmed = ReferenceEquals(whole, trimmed) ? null : trimmed,
                }
            );
        }

        private void Add(
            SettingPieceKind kind,
            Polygon shape,
            string fabric,
            Length edge,
            ImmutableArray<LayoutPart>.Builder parts
        )
        {
            parts.Add(new LayoutPart(LayoutPartKind.SettingPiece, _pieces.Count));
            _pieces.Add(new SettingPiece(kind, _frame.ToQuilt(shape), fabric, edge));
        }

        private Polygon? Trim(Polygon shape)
        {
            Polygon? kept = shape;
            foreach (Slope edge in _edges)
            {
                kept = kept is null ? null : edge.Keep(kept);
            }
            return kept;
        }
    }
}
