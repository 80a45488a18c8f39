using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Rules;
using PatternPress.Source.Syntax;

namespace PatternPress.Quilting.Reading;

/// <summary>
/// Reads a block inside a block, <c>block star/90, ray=sky core=water</c>, and lays its map into the outer one's: the grid gets the
/// lines of both.
/// </summary>
internal static class InnerBlockReader
{
    public const string Keyword = "block";

    private static readonly string[] _turns = ["0", "90", "180", "270"];

    /// <param name="words">What stands behind the keyword.</param>
    /// <param name="find">The inner block; reports and returns null where there is none.</param>
    public static UnitDesign? Read(
        string block,
        string letter,
        Slice keyword,
        ImmutableArray<Slice> words,
        ScalarNode text,
        Func<Slice, BlockDesign?> find,
        ReadContext context
    )
    {
        if (words.IsEmpty)
        {
            context.Report(PP0275_UnusableInnerBlock.WithoutName(text.Span, letter, block));
            return null;
        }
        Slice name = WithoutComma(words[0]);
        int stroke = name.Characters.IndexOf('/'),
            quarters = 0;
        if (stroke >= 0)
        {
            Slice turn = name.From(stroke + 1);
            quarters = Array.IndexOf(_turns, turn.Text);
            if (quarters < 0)
            {
                context.Report(PP0221_UnknownWord.Found(turn.Span, turn.Text, "turn", _turns));
                return null;
            }
            name = name.Sub(0, stroke);
        }
        if (find(name) is not { } inner)
        {
            return null;
        }
        var own = inner.Parts.ToDictionary(
            part => part.Value,
            part => new Sourced<string>(part.Value, name.Span)
        );
        foreach (Slice word in words[1..].Select(WithoutComma).Where(w => !w.IsEmpty))
        {
            int equals = word.Characters.IndexOf('=');
            string part = equals < 0 ? word.Text : word.Sub(0, equals).Text;
            if (equals < 0 || !own.ContainsKey(part))
            {
                context.Report(
                    PP0275_UnusableInnerBlock.UnknownPart(
                        word.Span,
                        part,
                        inner.Key,
                        block,
                        inner.Parts.Select(p => p.Value)
                    )
                );
                return null;
            }
            own[part] = ReadContext.Sourced(word.From(equals + 1));
        }
        return new UnitDesign(
            letter,
            ReadContext.Sourced(keyword),
            [],
            null,
            null,
            [.. own.Values.DistinctBy(p => p.Value)],
            null,
            text.Span
        )
        {
            Inner = new InnerUse(
                inner,
                new Turn(quarters),
                own.ToImmutableDictionary(p => p.Key, p => p.Value.Value)
            ),
        };
    }

    private static Slice WithoutComma(Slice word) =>
        word.Text.EndsWith(',') ? word.Sub(0, word.Length - 1) : word;

    /// <summary>The block with the units of its inner blocks in their places; null where one does not fit its region.</summary>
    public static BlockDesign? Expand(BlockDesign block, ReadContext context)
    {
        if (block.Units.All(u => u.Design.Inner is null))
        {
            return block;
        }
        Length[] x = Lines(block.Columns, block.Width),
            y = Lines(block.Rows, block.Height);
        var units = new List<(UnitRegion Region, Rect Place)>();
        var inner = new List<(InnerBlock Block, Rect Place)>();
        bool fits = true;
        foreach (UnitRegion region in block.Units)
        {
            Rect place = Between(x, y, region.Column, region.Row, region.Columns, region.Rows);
            if (region.Design.Inner is not { } use)
            {
                units.Add((region, place));
                continue;
            }
            BlockDesign design = use.Design;
            (Length width, Length height) = use.Turn.SwapsSides
                ? (place.Height, place.Width)
                : (place.Width, place.Height);
            if (
                width.Inches.One * design.Height.Inches.One
                != height.Inches.One * design.Width.Inches.One
            )
            {
                fits = false;
                context.Report(
                    PP0275_UnusableInnerBlock.AnotherShape(
                        region.Span,
                        design.Key,
                        block.Key,
                        design.Width,
                        design.Height,
                        width,
                        height
                    )
                );
                continue;
            }
            Length[] across = Lines(design.Columns, width),
                down = Lines(design.Rows, height);
            Rect Lay(int column, int row, int columns, int rows) =>
                Between(across, down, column, row, columns, rows)
                    .Turned(use.Turn, width, height)
                    .MoveBy(place.UpperLeft);

            inner.Add((new InnerBlock(design.Key, design.Name, 0, 0, 0, 0), place));
            inner.AddRange(design.Inner.Select(b => (b, Lay(b.Column, b.Row, b.Columns, b.Rows))));
            units.AddRange(
                design.Units.Select(u =>
                    (
                        u with
                        {
                            Design = Renamed(u.Design, region.Design.Letter, use),
                            Span = region.Span,
                            Turn = u.Turn + use.Turn,
                        },
                        Lay(u.Column, u.Row, u.Columns, u.Rows)
                    )
                )
            );
        }
        return fits ? Regridded(block, x, y, units, inner) : null;
    }

    private static BlockDesign Regridded(
        BlockDesign block,
        Length[] x,
        Length[] y,
        List<(UnitRegion Region, Rect Place)> units,
        List<(InnerBlock Block, Rect Place)> inner
    )
    {
        Length[] across = Sorted(x.Concat(units.SelectMany(u => Sides(u.Place)))),
            down = Sorted(y.Concat(units.SelectMany(u => Ends(u.Place))));
        UnitRegion[] regions =
        [
            .. units.Select(u =>
            {
                (int column, int row, int columns, int rows) = Cells(u.Place);
                return u.Region with { Column = column, Row = row, Columns = columns, Rows = rows };
            }),
        ];
        Array.Sort(
            regions,
            (a, b) => a.Row != b.Row ? a.Row.CompareTo(b.Row) : a.Column.CompareTo(b.Column)
        );
        return block with
        {
            Columns = Shares(across),
            Rows = Shares(down),
            Units = [.. regions],
            Inner =
            [
                .. inner.Select(b =>
                {
                    (int column, int row, int columns, int rows) = Cells(b.Place);
                    return b.Block with
                    {
                        Column = column,
                        Row = row,
                        Columns = columns,
                        Rows = rows,
                    };
                }),
            ],
        };

        (int, int, int, int) Cells(Rect place)
        {
            int column = Array.BinarySearch(across, place.X),
                row = Array.BinarySearch(down, place.Y);
            return (
                column,
                row,
                Array.BinarySearch(across, place.Right) - column,
                Array.BinarySearch(down, place.Bottom) - row
            );
        }

        static IEnumerable<Length> Sides(Rect place) => [place.X, place.Right];

        static IEnumerable<Length> Ends(Rect place) => [place.Y, place.Bottom];

        static Length[] Sorted(IEnumerable<Length> lines)
        {
            Length[] sorted = [.. lines.Distinct()];
            Array.Sort(sorted);
            return sorted;
        }

        static ImmutableArray<Rational> Shares(Length[] lines) =>
            [.. lines.Zip(lines.Skip(1), (from, to) => (to - from).Inches.One)];
    }

    private static UnitDesign Renamed(UnitDesign unit, string letter, InnerUse use)
    {
        return unit with
        {
            Letter = $"{letter}.{unit.Letter}",
            Parts = [.. unit.Parts.Select(Mapped)],
            Ground = unit.Ground is { } ground ? Mapped(ground) : null,
        };

        Sourced<string> Mapped(Sourced<string> part) =>
            use.Parts.TryGetValue(part.Value, out string? outer)
                ? part with
                {
                    Value = outer,
                }
                : part;
    }

    private static Length[] Lines(ImmutableArray<Rational> shares, Length whole)
    {
        Rational sum = shares.Aggregate(Rational.Zero, (a, b) => a + b),
            reached = Rational.Zero;
        var lines = new Length[shares.Length + 1];
        lines[0] = Length.Zero;
        for (int i = 0; i < shares.Length; i++)
        {
            reached += shares[i];
            lines[i + 1] = whole * (reached / sum);
        }
        return lines;
    }

    private static Rect Between(
        Length[] x,
        Length[] y,
        int column,
        int row,
        int columns,
        int rows
    ) => new(x[column], y[row], x[column + columns] - x[column], y[row + rows] - y[row]);
}
