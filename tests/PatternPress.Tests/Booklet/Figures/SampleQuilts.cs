using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Techniques;
using PatternPress.Source;

namespace PatternPress.Tests.Booklet.Figures;

/// <summary>Small quilts put together by hand, so that figures are tested without reading a source file.</summary>
internal static class SampleQuilts
{
    private static readonly (string Key, string Name, string Color, string? Print)[] FewFabrics =
    [
        ("A", "Ink", "#15233b", null),
        ("B", "Amber", "#f2a71b", "dot"),
        ("C", "Foam", "#dfeeea", "blender"),
        ("D", "Brick", "#a8402c", "stripe"),
        ("E", "Moss", "#5e7d4a", "check"),
    ];

    /// <summary>Five fabrics from nearly black to nearly white.</summary>
    public static ImmutableArray<Fabric> Fabrics() =>
        [.. FewFabrics.Select((f, i) => MakeFabric(f.Key, f.Name, ColorOf(f.Color), f.Print, i))];

    /// <summary>Five prints in five colours each.</summary>
    public static ImmutableArray<Fabric> TwentyFive()
    {
        string[] prints = ["solid", "dot", "stripe", "check", "blender"];
        string[] colors = ["#1f3b63", "#8e2f3c", "#d79b2d", "#4d7f5b", "#cbb7d6"];
        return
        [
            .. Enumerable
                .Range(0, 25)
                .Select(i =>
                    MakeFabric(
                        ((char)('A' + i)).ToString(),
                        $"{prints[i % 5]} {i / 5 + 1}",
                        Lighter(ColorOf(colors[i / 5]), (i % 5) * 18),
                        prints[i % 5],
                        i
                    )
                ),
        ];
    }

    public static Color ColorOf(string text) =>
        Color.TryParse(text, out Color color) ? color : throw new ArgumentException(text);

    private static Color Lighter(Color c, int by) =>
        new(
            (byte)Math.Min(255, c.Red + by),
            (byte)Math.Min(255, c.Green + by),
            (byte)Math.Min(255, c.Blue + by)
        );

    public static Fabric MakeFabric(
        string key,
        string name,
        Color color,
        string? print,
        int order
    ) => new(key, name, color, print, null, null, false, null, null, order, Span.None);

    public static Length In(long whole, long numerator = 0, long denominator = 1) =>
        Length.FromInches(whole, numerator, denominator);

    /// <summary>A 4 × 4 star: corner squares, geese around a square center of two cells.</summary>
    public static Block Star(long size)
    {
        Length cell = In(size) / 4;
        var units = new List<BlockUnit>
        {
            UnitAt("s", Square(cell), 0, ["sky"], 0, 0, 1, 1),
            UnitAt("G", Geese(cell), 0, ["ray", "sky"], 1, 0, 2, 1),
            UnitAt("s", Square(cell), 0, ["sky"], 3, 0, 1, 1),
            UnitAt("E", Geese(cell), 3, ["ray", "sky"], 0, 1, 1, 2),
            UnitAt("C", Square(cell * 2), 0, ["core"], 1, 1, 2, 2),
            UnitAt("W", Geese(cell), 1, ["ray", "sky"], 3, 1, 1, 2),
            UnitAt("s", Square(cell), 0, ["sky"], 0, 3, 1, 1),
            UnitAt("F", Geese(cell), 2, ["ray", "sky"], 1, 3, 2, 1),
            UnitAt("s", Square(cell), 0, ["sky"], 3, 3, 1, 1),
        };
        return MakeBlock("star", "Star", In(size), 4, ["sky", "ray", "core"], units);

        BlockUnit UnitAt(
            string letter,
            UnitForm form,
            int turn,
            string[] parts,
            int column,
            int row,
            int columns,
            int rows
        ) => Unit(letter, form, turn, parts, column, row, columns, rows, cell);
    }

    /// <summary>Four half-square triangle units that pinwheel.</summary>
    public static Block Pinwheel(long size)
    {
        Length cell = In(size) / 2;
        return MakeBlock(
            "pinwheel",
            "Pinwheel",
            In(size),
            2,
            ["vane", "air"],
            [
                Unit("a", HalfSquare(cell), 1, ["vane", "air"], 0, 0, 1, 1, cell),
                Unit("b", HalfSquare(cell), 2, ["vane", "air"], 1, 0, 1, 1, cell),
                Unit("d", HalfSquare(cell), 0, ["vane", "air"], 0, 1, 1, 1, cell),
                Unit("c", HalfSquare(cell), 3, ["vane", "air"], 1, 1, 1, 1, cell),
            ]
        );
    }

    /// <summary>Four rectangles around a square: no seam runs from edge to edge.</summary>
    public static Block Whirl(long size)
    {
        Length cell = In(size) / 3;
        UnitForm bar = Bar(cell * 2, cell);
        return MakeBlock(
            "whirl",
            "Whirl",
            In(size),
            3,
            ["bar", "eye"],
            [
                Unit("a", bar, 0, ["bar"], 0, 0, 2, 1, cell),
                Unit("b", bar, 1, ["bar"], 2, 0, 1, 2, cell),
                Unit("d", bar, 1, ["bar"], 0, 1, 1, 2, cell),
                Unit("e", Square(cell), 0, ["eye"], 1, 1, 1, 1, cell),
                Unit("c", bar, 0, ["bar"], 1, 2, 2, 1, cell),
            ]
        );
    }

    public static ColoredBlock Colored(
        string key,
        Block block,
        int order,
        params (string Part, string Fabric)[] fabrics
    ) =>
        new(
            new Coloring(
                key,
                block.Key,
                fabrics.ToImmutableDictionary(f => f.Part, f => f.Fabric),
                order,
                Span.None
            ),
            block,
            block.Width,
            block.Height
        );

    public static ColoredBlock Plain(string key, string fabric, long size, int order) =>
        new(
            new Coloring(
                key,
                null,
                ImmutableDictionary<string, string>.Empty.Add(Coloring.PlainPart, fabric),
                order,
                Span.None
            ),
            null,
            In(size),
            In(size)
        );

    /// <summary>Stars in two colorings set with sashing, cornerstones and two borders.</summary>
    public static Quilt Stars(int columns, int rows)
    {
        Block star = Star(12);
        ColoredBlock one = Colored("L1", star, 0, ("sky", "A"), ("ray", "B"), ("core", "C"));
        ColoredBlock two = Colored("L2", star, 1, ("sky", "A"), ("ray", "C"), ("core", "D"));
        return Set(
            Fabrics(),
            columns,
            rows,
            (column, row) => ((column + row) % 2 == 0 ? one : two, new Turn(0)),
            In(1, 1, 2),
            ("A", "B"),
            [(In(2), "C", BorderCorners.SidesFirst), (In(5), "D", BorderCorners.Squares)]
        );
    }

    /// <summary>Pinwheels edge to edge, each turned a quarter further, no borders.</summary>
    public static Quilt Pinwheels(int columns, int rows, long size = 6)
    {
        Block block = Pinwheel(size);
        ColoredBlock one = Colored("P", block, 0, ("vane", "D"), ("air", "C"));
        ColoredBlock plain = Plain("Q", "E", size, 1);
        return Set(
            Fabrics(),
            columns,
            rows,
            (column, row) =>
                (column + row) % 3 == 2 ? (plain, new Turn(0)) : (one, new Turn(column + row)),
            null,
            null,
            []
        );
    }

    /// <summary>Plain squares of 25 fabrics.</summary>
    public static Quilt Scraps(int columns, int rows)
    {
        ColoredBlock[] blocks = [.. TwentyFive().Select((f, i) => Plain("S" + f.Key, f.Key, 4, i))];
        return Set(
            TwentyFive(),
            columns,
            rows,
            (column, row) => (blocks[((column * 7) + (row * 3)) % 25], new Turn(0)),
            null,
            null,
            [(In(3), "A", BorderCorners.TopFirst)]
        );
    }

    /// <summary>Places blocks of one size row by row, with sashing between them and borders around.</summary>
    public static Quilt Set(
        ImmutableArray<Fabric> fabrics,
        int columns,
        int rows,
        Func<int, int, (ColoredBlock Block, Turn Turn)> at,
        Length? sashing,
        (string Strips, string Cornerstones)? sashes,
        (Length Width, string Fabric, BorderCorners Corners)[] borders
    )
    {
        Length edge = borders.Aggregate(Length.Zero, (sum, b) => sum + b.Width);
        Length sash = sashing ?? Length.Zero;
        Length size = at(0, 0).Block.Width;
        Length pitch = size + sash;
        var center = new Rect(
            edge,
            edge,
            (pitch * (long)columns) - sash,
            (pitch * (long)rows) - sash
        );
        var places = new List<BlockPlace>();
        var strips = new List<Sash>();
        for (int row = 0; row < rows; row++)
        {
            for (int column = 0; column < columns; column++)
            {
                Length x = edge + (pitch * (long)column),
                    y = edge + (pitch * (long)row);
                (ColoredBlock block, Turn turn) = at(column, row);
                places.Add(new(row, column, block, turn, new Rect(x, y, size, size)));
                if (sashes is null)
                {
                    continue;
                }
                bool more = column + 1 < columns,
                    below = row + 1 < rows;
                if (more)
                {
                    strips.Add(
                        new(
                            SashKind.Upright,
                            row,
                            column,
                            new(x + size, y, sash, size),
                            sashes.Value.Strips
                        )
                    );
                }
                if (below)
                {
                    strips.Add(
                        new(
                            SashKind.Level,
                            row,
                            column,
                            new(x, y + size, size, sash),
                            sashes.Value.Strips
                        )
                    );
                }
                if (more && below)
                {
                    strips.Add(
                        new(
                            SashKind.Cornerstone,
                            row,
                            column,
                            new(x + size, y + size, sash, sash),
                            sashes.Value.Cornerstones
                        )
                    );
                }
            }
        }
        var drawn = new List<Border>();
        Rect inside = center;
        for (int i = 0; i < borders.Length; i++)
        {
            (Length width, string fabric, BorderCorners corners) = borders[i];
            var design = new BorderDesign(
                new BorderWidths(width),
                new(fabric, Span.None),
                corners,
                corners == BorderCorners.Squares ? new(fabrics[0].Key, Span.None) : null,
                null,
                Span.None
            );
            var border = new Border(i + 1, design, inside, new BorderWidths(width), []);
            drawn.Add(border with { Pieces = PiecesOf(border, corners, fabric, fabrics[0].Key) });
            inside = border.Outside;
        }
        var quilt = new QuiltDesign(
            new("straight", Span.None),
            null,
            new Fill(FillKind.Repeat, [], 0, Span.None),
            [.. drawn.Select(b => b.Design)],
            new BindingDesign(new(fabrics[0].Key, Span.None), null, Span.None),
            null,
            true,
            Span.None
        );
        var sizeDesign = new SizeDesign(
            "throw",
            "Throw",
            columns,
            rows,
            null,
            quilt,
            House.Default,
            0,
            Span.None
        );
        var pattern = new Pattern(
            "sample",
            "sample.quilt.yaml",
            new PatternInfo(
                new("Sample", Span.None),
                null,
                new("1.0.0", Span.None),
                new DateOnly(2026, 11, 1),
                "Tern & Tide Patterns",
                null,
                null,
                null,
                null,
                null,
                "en-US",
                ImmutableDictionary<string, Sourced<string>>.Empty
            ),
            House.Default,
            fabrics,
            [],
            [.. places.Select(p => p.Block.Coloring).Distinct().OrderBy(c => c.Order)],
            ImmutableDictionary<string, Sourced<string>>.Empty,
            [sizeDesign]
        );
        return new Quilt(
            pattern,
            sizeDesign,
            inside.Width,
            inside.Height,
            center,
            [.. places],
            [.. strips],
            [.. drawn]
        )
        {
            Rows = PatternPress.Quilting.Settings.StraightRows.Of(places, strips),
        };
    }

    private static ImmutableArray<BorderPiece> PiecesOf(
        Border border,
        BorderCorners corners,
        string fabric,
        string square
    )
    {
        Rect i = border.Inside,
            o = border.Outside;
        Length w = border.Widths.Left;
        bool sidesFull = corners == BorderCorners.TopFirst,
            topFull = corners == BorderCorners.SidesFirst;
        Length sideY = sidesFull ? o.Y : i.Y,
            sideHeight = sidesFull ? o.Height : i.Height;
        Length topX = topFull ? o.X : i.X,
            topWidth = topFull ? o.Width : i.Width;
        var pieces = new List<BorderPiece>
        {
            new(BorderSide.Left, new(o.X, sideY, w, sideHeight), fabric),
            new(BorderSide.Right, new(i.Right, sideY, w, sideHeight), fabric),
            new(BorderSide.Top, new(topX, o.Y, topWidth, w), fabric),
            new(BorderSide.Bottom, new(topX, i.Bottom, topWidth, w), fabric),
        };
        if (corners == BorderCorners.Squares)
        {
            foreach (Length x in new[] { o.X, i.Right })
            {
                foreach (Length y in new[] { o.Y, i.Bottom })
                {
                    pieces.Add(new(BorderSide.Corner, new(x, y, w, w), square));
                }
            }
        }
        return [.. pieces];
    }

    private static Block MakeBlock(
        string key,
        string name,
        Length size,
        int grid,
        string[] parts,
        IReadOnlyList<BlockUnit> units
    ) =>
        new(
            new BlockDesign(
                key,
                name,
                size,
                size,
                true,
                [.. parts.Select(p => new Sourced<string>(p, Span.None))],
                [.. Enumerable.Repeat(Rational.One, grid)],
                [.. Enumerable.Repeat(Rational.One, grid)],
                [.. units.Select(u => u.Region)],
                null,
                Span.None
            ),
            size,
            size,
            [.. units]
        );

    private static BlockUnit Unit(
        string letter,
        UnitForm form,
        int turn,
        string[] parts,
        int column,
        int row,
        int columns,
        int rows,
        Length cell
    )
    {
        var design = new UnitDesign(
            letter,
            new(form.Kind.Keyword, Span.None),
            [],
            null,
            null,
            [.. parts.Select(p => new Sourced<string>(p, Span.None))],
            null,
            Span.None
        );
        return new BlockUnit(
            new UnitRegion(design, column, row, columns, rows, Span.None),
            new DrawnUnit(form, new Turn(turn), [.. parts]),
            new Rect(cell * (long)column, cell * (long)row, cell * (long)columns, cell * (long)rows)
        );
    }

    public static UnitForm Square(Length side) => Bar(side, side);

    public static UnitForm Bar(Length width, Length height) =>
        Form("square", width, height, 1, (0, [(0, 0), (1, 0), (1, 1), (0, 1)]));

    public static UnitForm HalfSquare(Length side) =>
        Form(
            "half-square",
            side,
            side,
            2,
            (0, [(0, 0), (1, 0), (0, 1)]),
            (1, [(1, 0), (1, 1), (0, 1)])
        );

    /// <summary>A goose pointing up, twice as wide as <paramref name="height"/>.</summary>
    public static UnitForm Geese(Length height) =>
        Form(
            "geese",
            height * 2,
            height,
            2,
            (0, [(1, 0), (2, 2), (0, 2)]),
            (1, [(0, 0), (1, 0), (0, 2)]),
            (1, [(1, 0), (2, 0), (2, 2)])
        );

    // Corners are given as shares of the unit's bounds.
    private static UnitForm Form(
        string keyword,
        Length width,
        Length height,
        int roles,
        params (int Role, (int X, int Y)[] Corners)[] patches
    )
    {
        int maxX = patches.Max(p => p.Corners.Max(c => c.X)),
            maxY = patches.Max(p => p.Corners.Max(c => c.Y));
        return new UnitForm(
            new HandKind(keyword),
            "",
            width,
            height,
            Length.Zero,
            [
                .. patches.Select(p => new RolePatch(
                    new Polygon([
                        .. p.Corners.Select(c => new Point(
                            width * new Rational(c.X, maxX),
                            height * new Rational(c.Y, maxY)
                        )),
                    ]),
                    p.Role,
                    []
                )),
            ],
            roles
        );
    }

    private sealed class HandKind(string keyword) : UnitKind
    {
        public override string Keyword => keyword;

        public override string Name => keyword + " unit";

        public override string Example => keyword;

        public override bool TryDraw(
            UnitDesign design,
            Length width,
            Length height,
            [NotNullWhen(true)] out DrawnUnit? drawn,
            [NotNullWhen(false)] out UnitProblem? problem
        ) => throw new NotSupportedException("Sample units are drawn by hand.");
    }
}
