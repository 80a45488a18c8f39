using System.Collections.Immutable;
using PatternPress.Booklet.Words;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Inlines;

namespace PatternPress.Booklet.Sections;

/// <summary>
/// A table with a column for each size, in the pattern's order. Where there are more sizes than fit side by side, it
/// becomes several tables, each with all the leading columns.
/// </summary>
internal sealed class SizeTable(SectionContext context, params ImmutableArray<string> heads)
{
    /// <summary>Sizes side by side that leave a readable column each on a Letter page.</summary>
    private const int MostSizes = 6;

    /// <summary>A table of so few rows is never divided between pages.</summary>
    private const int SmallTable = 7;

    private static readonly Points Below = 12.Pt;

    private readonly List<(ImmutableArray<TableCell> Lead, ImmutableArray<Block?> BySize)> rows =
    [];
    private readonly Dictionary<int, string> groups = [];

    public bool IsEmpty => rows.Count == 0;

    /// <summary>Whether its rows stand close, so that many of them stay on a page.</summary>
    public bool Dense { get; init; }

    /// <summary>What the table holds, for those who hear it.</summary>
    public string? Summary { get; init; }

    /// <summary>Starts a group of rows with a line of its own.</summary>
    public void Group(string title) => groups[rows.Count] = title;

    /// <summary>Adds a row; a null cell shows a dash, a row of nothing but dashes is left out.</summary>
    public void Add(ImmutableArray<TableCell> lead, Func<int, Block?> bySize) =>
        rows.Add((lead, [.. context.Sizes.Select((_, i) => bySize(i))]));

    /// <summary>Adds a row whose heading runs through all leading columns.</summary>
    public void Add(string lead, Func<int, Block?> bySize) =>
        Add([new TableCell(new Text(lead, "table"), heads.Length) { IsHeader = true }], bySize);

    public void Add(string lead, Func<int, string?> bySize) =>
        Add(lead, i => bySize(i) is { } words ? new Text(words, "table") : null);

    public void Add(ImmutableArray<TableCell> lead, Func<int, string?> bySize) =>
        Add(lead, i => bySize(i) is { } words ? new Text(words, "table") : null);

    public ImmutableArray<Block> ToBlocks()
    {
        var blocks = ImmutableArray.CreateBuilder<Block>();
        int count = context.Sizes.Length;
        int tables = (count + MostSizes - 1) / MostSizes;
        while (tables < count && !Enumerable.Range(0, tables).All(table => Fits(table, tables)))
        {
            tables++;
        }

        for (int table = 0; table < tables; table++)
        {
            int from = table * count / tables,
                to = (table + 1) * count / tables;
            if (Part(from, to) is { } part)
            {
                blocks.Add(
                    rows.Count <= SmallTable ? new KeepTogether(part) { MostEmpty = 0.3 } : part
                );
                blocks.Add(new Gap(Below));
            }
        }
        return blocks.ToImmutable();
    }

    /// <summary>An estimate is not a measure.</summary>
    private const double Safety = 1.03;

    /// <summary>Whether one of several tables stands in the measure, by the width of the words that are not divided.</summary>
    private bool Fits(int table, int tables)
    {
        int count = context.Sizes.Length;
        int from = table * count / tables,
            to = (table + 1) * count / tables;
        double padding = StyleFor(heads.Length + to - from).Padding.Across.Value;
        double leading = heads.Sum(head =>
            WordWidths.Widest(head, "table-head", context) + padding
        );
        if (rows.Any(row => row.Lead.Length == heads.Length))
        {
            leading = Enumerable
                .Range(0, heads.Length)
                .Sum(column =>
                    rows.Where(row => row.Lead.Length == heads.Length)
                        .Select(row => WordWidths.Widest(row.Lead[column].Content, context))
                        .Append(WordWidths.Widest(heads[column], "table-head", context))
                        .Max() + padding
                );
        }
        foreach ((ImmutableArray<TableCell> lead, _) in rows)
        {
            // A heading through all leading columns.
            if (lead.Length < heads.Length)
            {
                leading = Math.Max(leading, WordWidths.Widest(lead[0].Content, context) + padding);
            }
        }
        double width = leading;
        for (int i = from; i < to; i++)
        {
            double widest = WordWidths.Widest(context.Sizes[i].Name, "table-head", context);
            foreach ((_, ImmutableArray<Block?> bySize) in rows)
            {
                widest = Math.Max(
                    widest,
                    bySize[i] is { } cell ? WordWidths.Widest(cell, context) : 0
                );
            }
            width += widest + padding;
        }
        return width * Safety <= context.TextWidth.Value;
    }

    private Block? Part(int from, int to)
    {
        var made = ImmutableArray.CreateBuilder<TableRow>();
        string? group = null;
        for (int i = 0; i < rows.Count; i++)
        {
            group = groups.GetValueOrDefault(i, group!);
            (ImmutableArray<TableCell> lead, ImmutableArray<Block?> bySize) = rows[i];
            ReadOnlySpan<Block?> cells = bySize.AsSpan(from, to - from);
            if (cells.IndexOfAnyExcept((Block?)null) < 0)
            {
                continue;
            }
            if (group is not null)
            {
                made.Add(
                    new TableRow([
                        new TableCell(new Text(group, "table-group"), heads.Length + to - from)
                        {
                            IsHeader = true,
                        },
                    ])
                    {
                        KeepWithNext = true,
                        RuleAbove = made.Count > 0,
                    }
                );
                group = null;
            }
            var all = ImmutableArray.CreateBuilder<TableCell>();
            all.AddRange(lead);
            foreach (Block? cell in cells)
            {
                all.Add(new TableCell(cell ?? new Text(context.Labels["none"], "table")));
            }
            made.Add(new TableRow(all.ToImmutable()));
        }
        if (made.Count == 0)
        {
            return null;
        }
        // A table is not begun at the foot of a page with a single row.
        if (made.Count > 2 && !made[0].KeepWithNext)
        {
            made[0] = made[0] with { KeepWithNext = true };
        }
        return new Table(Columns(made, to - from), made.ToImmutable())
        {
            Header = [Header(from, to)],
            Style = StyleFor(heads.Length + to - from),
            Summary = Summary,
        };
    }

    /// <summary>As many columns as this stand closer side by side.</summary>
    private const int ManyColumns = 8;

    private TableStyle StyleFor(int columns)
    {
        TableStyle style = Dense ? TableLooks.Dense(context.Theme) : TableLooks.Of(context.Theme);
        return columns < ManyColumns
            ? style
            : style with
            {
                Padding = new Insets(3.5.Pt, style.Padding.Top, 3.5.Pt, style.Padding.Bottom),
            };
    }

    /// <summary>All columns stand at the left; one of nothing but counts or measures, so that whole numbers end below one another.</summary>
    private ImmutableArray<TableColumn> Columns(IReadOnlyList<TableRow> made, int sizes)
    {
        int count = heads.Length + sizes;
        var numbers = new bool[count];
        Array.Fill(numbers, true);
        foreach (TableRow row in made)
        {
            int column = 0;
            foreach (TableCell cell in row.Cells)
            {
                if (cell.ColumnSpan == 1)
                {
                    numbers[column] &= IsNumber(cell.Content);
                }
                column += cell.ColumnSpan;
            }
        }
        return
        [
            .. numbers.Select(number =>
                TableColumn.Natural(number ? CellAlignment.NumberLeft : CellAlignment.Left)
            ),
        ];
    }

    /// <summary>Whether a cell says nothing but a count or a measure, or that there is none.</summary>
    private bool IsNumber(Block content)
    {
        if (content is not Text text)
        {
            return false;
        }
        string words = FractionText.Plain(text.Content);
        if (words == context.Labels["none"])
        {
            return true;
        }
        string[] parts = words.Split(' ');
        return parts[0].All(c => char.IsAsciiDigit(c) || c is '/' or ',' or '.')
            && parts[0].Any(char.IsAsciiDigit)
            && parts.Length <= 3
            && parts[1..]
                .All(part =>
                    part.All(c => char.IsAsciiDigit(c) || c == '/') || part.All(char.IsAsciiLetter)
                );
    }

    private TableRow Header(int from, int to)
    {
        var cells = ImmutableArray.CreateBuilder<TableCell>();
        foreach (string head in heads)
        {
            cells.Add(new TableCell(new Text(head, "table-head")));
        }
        for (int i = from; i < to; i++)
        {
            cells.Add(new TableCell(new Text(context.Sizes[i].Name, "table-head")));
        }
        return new TableRow(cells.ToImmutable());
    }
}
