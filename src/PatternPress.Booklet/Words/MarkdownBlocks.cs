using System.Collections.Immutable;
using Markdig;
using Markdig.Extensions.Alerts;
using Markdig.Parsers;
using Markdig.Syntax;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Inlines;
using Block = PatternPress.Typesetting.Blocks.Block;
using Columns = Markdig.Extensions.Tables.TableColumnAlign;
using MarkdownTable = Markdig.Extensions.Tables.Table;
using MarkdownTableCell = Markdig.Extensions.Tables.TableCell;
using MarkdownTableRow = Markdig.Extensions.Tables.TableRow;

namespace PatternPress.Booklet.Words;

/// <summary>
/// Sets Markdown: headings, paragraphs, lists, quotes as notes, warnings, tables, and places that a section fills.
/// HTML is text like any other.
/// </summary>
public sealed class MarkdownBlocks
{
    /// <summary>Quotes in lists in quotes: deeper than this nothing is meant.</summary>
    private const int DeepestNesting = 24;

    private static readonly Lazy<MarkdownPipeline> Pipeline = new(BuildPipeline);

    private readonly MarkdownSetting setting;
    private readonly ImmutableArray<MarkdownFault>.Builder faults =
        ImmutableArray.CreateBuilder<MarkdownFault>();
    private readonly MarkdownInlines inlines;
    private int headings;

    private MarkdownBlocks(MarkdownSetting setting)
    {
        this.setting = setting;
        inlines = new MarkdownInlines(setting, faults);
    }

    /// <summary>Turns a text into blocks; never fails.</summary>
    public static ImmutableArray<Block> Read(
        string markdown,
        MarkdownSetting setting,
        out ImmutableArray<MarkdownFault> faults
    )
    {
        if (IsIntricate(markdown))
        {
            faults = [new(MarkdownFaultKind.TooDeep, "")];
            return [];
        }
        var reader = new MarkdownBlocks(setting);
        ImmutableArray<Block> blocks;
        try
        {
            blocks = reader.ReadAll(Markdown.Parse(markdown, Pipeline.Value), setting.Style);
        }
        catch (ArgumentException)
        {
            // How the parser says that a text is nested beyond its limit.
            reader.faults.Add(new(MarkdownFaultKind.TooDeep, ""));
            blocks = [];
        }
        faults = reader.faults.ToImmutable();
        return blocks;
    }

    /// <summary>
    /// Whether a text has more signs of one kind than any that is meant to be read: the parser would take a time that
    /// grows with their square.
    /// </summary>
    private static bool IsIntricate(string markdown)
    {
        const int mostBrackets = 500,
            mostStars = 2_000,
            mostTicks = 1_000,
            mostBars = 4_000,
            mostMarks = 60;
        int brackets = 0,
            stars = 0,
            ticks = 0,
            bars = 0,
            marks = 0;
        bool atStart = true;
        char last = '\n';
        foreach (char c in markdown)
        {
            // Dashes in a row are a rule, not a nest of lists.
            char before = last;
            last = c;
            switch (c)
            {
                case '\n':
                    atStart = true;
                    marks = 0;
                    continue;
                case '[' or ']' or '<':
                    brackets++;
                    break;
                case '*' or '_' or '~':
                    stars++;
                    break;
                case '`':
                    ticks++;
                    break;
                case '|':
                    bars++;
                    break;
            }
            if (atStart)
            {
                if (c is '>' or '+' or '*' || (c == '-' && before != '-'))
                {
                    marks++;
                }
                else if (c != ' ')
                {
                    atStart = false;
                }
                if (marks > mostMarks)
                {
                    return true;
                }
            }
        }
        return brackets > mostBrackets || stars > mostStars || ticks > mostTicks || bars > mostBars;
    }

    private static MarkdownPipeline BuildPipeline()
    {
        var builder = new MarkdownPipelineBuilder { MaximumNestingDepth = DeepestNesting };
        builder.UsePipeTables();
        builder.UseAlertBlocks();
        builder.DisableHtml();
        // An indented paragraph is a slip of the space bar, not a program.
        builder.BlockParsers.TryRemove<IndentedCodeBlockParser>();
        return builder.Build();
    }

    private ImmutableArray<Block> ReadAll(ContainerBlock container, string style)
    {
        var blocks = ImmutableArray.CreateBuilder<Block>();
        for (int i = 0; i < container.Count; i++)
        {
            if (
                container[i] is ListBlock list
                && i + 1 < container.Count
                && FigureAt(container[i + 1]) is { } figure
            )
            {
                blocks.AddRange(Beside(ReadList(list), figure));
                i++;
            }
            else
            {
                bool announces = container[i] is ParagraphBlock && Announces(container, i);
                blocks.AddRange(
                    ReadOne(container[i], style)
                        .Select(b => announces && b is Text ? new KeepWithNext(b) : b)
                );
            }
        }
        return blocks.DrainToImmutable();
    }

    /// <summary>Whether what follows a paragraph belongs to it: a note, a list, or a place with no heading of its own; empty places do not count.</summary>
    private bool Announces(ContainerBlock container, int paragraph)
    {
        for (int i = paragraph + 1; i < container.Count; i++)
        {
            if (container[i] is AlertBlock or ListBlock)
            {
                return true;
            }
            if (
                container[i] is not ParagraphBlock { Inline: { } inline }
                || inlines.PlaceIn(inline) is not { } place
                || !setting.Places!.TryGetValue(place, out ImmutableArray<Block> filled)
            )
            {
                return false;
            }
            if (!filled.IsEmpty)
            {
                return !BeginsWithHeading(filled[0]);
            }
        }
        return false;
    }

    private static bool BeginsWithHeading(Block block) =>
        block is Heading
        || block.Children.FirstOrDefault(child => child is not Anchor) is { } first
            && BeginsWithHeading(first);

    /// <summary>The figure that a place alone in its paragraph is filled with; null where it is filled with anything else.</summary>
    private Figure? FigureAt(Markdig.Syntax.Block block) =>
        block is ParagraphBlock { Inline: { } inline }
        && inlines.PlaceIn(inline) is { } place
        && setting.Places!.TryGetValue(place, out ImmutableArray<Block> filled)
        && filled is [Figure figure]
            ? figure
            : null;

    /// <summary>A figure wider than this share of the measure stands below its text.</summary>
    private static readonly Points WidestBeside = 230.Pt;

    private Points Widest => WidestBeside.Scale(setting.Theme.Enlarged);

    /// <summary>A figure that belongs to steps: beside them where it is narrow, else below, never parted from the last of them.</summary>
    private IEnumerable<Block> Beside(List list, Figure figure)
    {
        if ((figure.MaxWidth ?? figure.Drawing.NaturalWidth) > Widest)
        {
            return [list with { KeepLastWithNext = true }, figure, new Gap(5.Pt)];
        }
        return [WithFigure(list, figure), new Gap(5.Pt)];
    }

    private KeepTogether WithFigure(Block text, Figure figure, string? name = null) =>
        new(
            new Typesetting.Blocks.Columns(
                Column.Share(text),
                Column.Fixed(
                    figure.MaxWidth ?? figure.Drawing.NaturalWidth,
                    name is null ? figure : new Stack(new Anchor(name), figure)
                )
            )
            {
                Gap = 16.Pt,
                StackBelow = 150.Pt.Scale(setting.Theme.Enlarged),
            }
        )
        {
            MostEmpty = 0.25,
        };

    private IEnumerable<Block> ReadOne(Markdig.Syntax.Block block, string style) =>
        block switch
        {
            HeadingBlock heading => [ReadHeading(heading)],
            ParagraphBlock paragraph => ReadParagraph(paragraph, style),
            ListBlock list => [ReadList(list), new Gap(5.Pt)],
            AlertBlock alert => [ReadAlert(alert)],
            QuoteBlock quote => [Note(ReadAll(quote, "note"), null)],
            MarkdownTable table => [ReadTable(table)],
            ThematicBreakBlock =>
            [
                new Rule(new Stroke(0.5.Pt, setting.Theme.Rule))
                {
                    SpaceBefore = 6.Pt,
                    SpaceAfter = 8.Pt,
                },
            ],
            LinkReferenceDefinitionGroup => [],
            CodeBlock code => [new Text(code.Lines.ToString().Trim(), style)],
            LeafBlock { Inline: { } inline } => [new Text(inlines.Read(inline), style)],
            ContainerBlock container => ReadAll(container, style),
            _ => [],
        };

    private Heading ReadHeading(HeadingBlock heading)
    {
        headings++;
        string? name =
            setting.Anchor is not { } anchor ? null
            : headings == 1 ? anchor
            : $"{anchor}-{headings}";
        return new Heading(
            Math.Min(6, heading.Level - 1 + setting.FirstHeading),
            inlines.Read(heading.Inline!)
        )
        {
            Name = name,
            Listed = setting.Listed,
        };
    }

    private IEnumerable<Block> ReadParagraph(ParagraphBlock paragraph, string style)
    {
        if (paragraph.Inline is null)
        {
            yield break;
        }
        if (inlines.PlaceIn(paragraph.Inline) is { } place)
        {
            if (setting.Places!.TryGetValue(place, out ImmutableArray<Block> filled))
            {
                foreach (Block block in filled)
                {
                    yield return block;
                }
            }
            else
            {
                faults.Add(new(MarkdownFaultKind.UnknownPlace, place));
            }
            yield break;
        }
        ImmutableArray<Inline> content = inlines.Read(paragraph.Inline);
        if (!content.IsEmpty)
        {
            var text = new Text(content, style);
            // What announces something stays with it.
            yield return FractionText.Plain(content).TrimEnd().EndsWith(':')
                ? new KeepWithNext(text)
                : text;
        }
    }

    private List ReadList(ListBlock list)
    {
        var items = ImmutableArray.CreateBuilder<ListItem>();
        foreach (ListItemBlock item in list.OfType<ListItemBlock>())
        {
            ImmutableArray<Block> content = ReadAll(item, "item");
            if (content is [KeepWithNext { Content: Text announced }, Figure pictured])
            {
                content = [announced, pictured];
            }
            string? name =
                list.IsOrdered && content.Any(block => block is Figure)
                    ? setting.NameFigure?.Invoke()
                    : null;
            items.Add(
                new ListItem(
                    content is [Text text, Figure figure]
                    && (figure.MaxWidth ?? figure.Drawing.NaturalWidth) <= Widest
                        ? WithFigure(text, figure, name)
                        : new Stack(Named(content, name))
                )
                {
                    LabelLink = name is null
                        ? null
                        : setting.ToDiagram(name, StartOf(list) + items.Count),
                }
            );
        }
        return new List(items.DrainToImmutable())
        {
            Numbered = list.IsOrdered,
            Start = StartOf(list),
            LabelStyle = "list-label",
            Gap = list.IsLoose ? 5.Pt : 2.Pt,
            KeepItemsTogether = true,
        };
    }

    private static int StartOf(ListBlock list) =>
        int.TryParse(list.OrderedStart, out int start) ? start : 1;

    /// <summary>The first figure with a place before it that links lead to.</summary>
    private static ImmutableArray<Block> Named(ImmutableArray<Block> content, string? name) =>
        name is null
            ? content
            : content.Insert(content.IndexOf(content.First(b => b is Figure)), new Anchor(name));

    private Block ReadAlert(AlertBlock alert)
    {
        string kind = alert.Kind.ToString().ToLowerInvariant();
        return Note(ReadAll(alert, "note"), setting.Labels[$"alert-{kind}"]);
    }

    /// <summary>A box apart from the text.</summary>
    private KeepTogether Note(ImmutableArray<Block> content, string? label)
    {
        if (label is not null)
        {
            content = content.Insert(0, new Text(label, "note-label"));
        }
        return new KeepTogether(
            NoteBox.Around(new Stack(content), setting.Theme, setting.Theme.Tint)
        )
        {
            // A note as long as most of a page may run on over two.
            MostEmpty = 0.3,
        };
    }

    private Table ReadTable(MarkdownTable table)
    {
        int columns = table.OfType<MarkdownTableRow>().Select(r => r.Count).DefaultIfEmpty(1).Max();
        var rows = ImmutableArray.CreateBuilder<TableRow>();
        var header = ImmutableArray.CreateBuilder<TableRow>();
        foreach (MarkdownTableRow row in table.OfType<MarkdownTableRow>())
        {
            var cells = ImmutableArray.CreateBuilder<TableCell>();
            foreach (MarkdownTableCell cell in row.OfType<MarkdownTableCell>())
            {
                cells.Add(
                    new TableCell(new Stack(ReadAll(cell, row.IsHeader ? "table-head" : "table")))
                );
            }
            while (cells.Count < columns)
            {
                cells.Add(new TableCell(""));
            }
            (row.IsHeader ? header : rows).Add(new TableRow(cells.DrainToImmutable()));
        }
        return new Table(
            [
                .. Enumerable
                    .Range(0, columns)
                    .Select(i => TableColumn.Natural(AlignmentOf(table, i))),
            ],
            rows.DrainToImmutable()
        )
        {
            Header = header.DrainToImmutable(),
            Style = TableLooks.Of(setting.Theme),
        };
    }

    private static CellAlignment AlignmentOf(MarkdownTable table, int column) =>
        column < table.ColumnDefinitions.Count
            ? table.ColumnDefinitions[column].Alignment switch
            {
                Columns.Right => CellAlignment.Right,
                Columns.Center => CellAlignment.Centre,
                _ => CellAlignment.Left,
            }
            : CellAlignment.Left;
}
