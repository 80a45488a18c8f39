using System.Text;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Fonts;
using PatternPress.Typesetting.Pages;

namespace PatternPress.Tests.Booklet;

/// <summary>Letters, or all parts of a fraction.</summary>
internal sealed record SetWord(
    int Page,
    string Shown,
    string Meant,
    Points Baseline,
    bool IsFraction
);

/// <summary>A line of a paragraph as it stands on a page.</summary>
internal sealed record SetLine(int Page, Points Baseline, string Words);

/// <summary>A paragraph, heading or cell with the lines that it takes, on whatever pages.</summary>
internal sealed record SetParagraph(Tag Tag, List<SetLine> Lines)
{
    public bool IsHeading => Tag.Role is >= TagRole.Heading1 and <= TagRole.Heading6;
}

/// <summary>A cell of a table: its words, and where the whole number they begin with ends.</summary>
internal sealed record SetCell(Tag Table, int Page, int Column, string Words, double NumberEnd);

/// <summary>The pages of a finished document walked through once, item by item.</summary>
internal sealed class SetDocument
{
    private readonly Dictionary<Tag, SetParagraph> paragraphs = [];

    public SetDocument(TypesetDocument document)
    {
        foreach (Page page in document.Pages)
        {
            new Walk(this, page.Number).Through(page.Items);
        }
    }

    public List<SetWord> Words { get; } = [];

    public List<SetParagraph> Paragraphs { get; } = [];

    public List<SetCell> Cells { get; } = [];

    /// <summary>Of each page the last thing that is read, where that is text.</summary>
    public List<SetParagraph> Last { get; } = [];

    /// <summary>One page: which tags are open, and what has been said in them.</summary>
    private sealed class Walk(SetDocument document, int page)
    {
        private readonly Stack<Tag> tags = new();
        private readonly Dictionary<Tag, int> columns = [];
        private readonly Dictionary<Tag, (int Column, StringBuilder Words, double? End)> cells = [];
        private int artifacts;
        private string? span;
        private bool inSpan;
        private StringBuilder shown = new();
        private Points baseline;
        private SetParagraph? last;

        public void Through(IEnumerable<PageItem> items)
        {
            Visit(items);
            if (last is not null)
            {
                document.Last.Add(last);
            }
        }

        private void Visit(IEnumerable<PageItem> items)
        {
            foreach (PageItem item in items)
            {
                switch (item)
                {
                    case PageItem.Clip clip:
                        Visit(clip.Items);
                        break;
                    case PageItem.ArtifactBegin:
                        artifacts++;
                        break;
                    case PageItem.ArtifactEnd:
                        artifacts--;
                        break;
                    case PageItem.TagBegin { Tag: var tag }:
                        Begin(tag);
                        break;
                    case PageItem.TagEnd { Tag: var tag }:
                        End(tag);
                        break;
                    case PageItem.SpanBegin begin:
                        (inSpan, span, shown, baseline) = (true, begin.ActualText, new(), default);
                        break;
                    case PageItem.SpanEnd:
                        inSpan = false;
                        if (shown.Length > 0)
                        {
                            Say($"{shown}", span ?? $"{shown}", baseline);
                        }
                        break;
                    case PageItem.Text text:
                        NumberEnd(text);
                        if (inSpan)
                        {
                            shown.Append(text.Characters);
                            // Numerals above the slash are raised: the line is where the lowest stand.
                            baseline = Points.Max(baseline, text.Baseline);
                        }
                        else
                        {
                            Say(text.Characters, Plain(text.Characters), text.Baseline);
                        }
                        break;
                }
            }
        }

        private void Begin(Tag tag)
        {
            if (tag.Role is TagRole.HeaderCell or TagRole.DataCell)
            {
                Tag row = tags.Peek();
                int column = columns.GetValueOrDefault(row);
                columns[row] = column + tag.ColumnSpan;
                cells[tag] = (column, new(), null);
            }
            else if (tag.Role == TagRole.Figure && artifacts == 0)
            {
                last = null;
            }
            tags.Push(tag);
        }

        private void End(Tag tag)
        {
            tags.Pop().ShouldBe(tag);
            if (
                tag.Role == TagRole.DataCell
                && cells.Remove(tag, out var cell)
                && cell.End is { } end
                && tag.ColumnSpan == 1
            )
            {
                Tag table = tags.First(t => t.Role == TagRole.Table);
                document.Cells.Add(new(table, page, cell.Column, $"{cell.Words}".Trim(), end));
            }
        }

        // Where the digits end that a cell begins with; at its left edge for a fraction without a whole number.
        private void NumberEnd(PageItem.Text text)
        {
            if (
                tags.FirstOrDefault(t => cells.ContainsKey(t)) is not { } tag
                || cells[tag].End is not null
                || text.Characters.AsSpan().Trim().IsEmpty
            )
            {
                return;
            }
            int digits = text.Characters.TakeWhile(c => char.IsAsciiDigit(c) || c == ',').Count();
            if (
                digits < text.Characters.Length && text.Characters[digits] == '\u2044'
                || span is not null && inSpan && !span.Contains(' ')
            )
            {
                digits = 0;
            }
            double end =
                text.X.Value
                + TextMeasurer
                    .ToPoints(text.Face, text.Size, text.Shape.AdvanceOfFirst(digits))
                    .Value;
            cells[tag] = cells[tag] with { End = end };
        }

        private void Say(string shownAs, string meant, Points at)
        {
            bool fraction = shownAs.Contains('\u2044') || shownAs.Any(Ready.Contains);
            document.Words.Add(new(page, shownAs, meant, at, fraction));
            if (artifacts > 0 || tags.Any(t => t.Role == TagRole.Figure))
            {
                return;
            }
            if (tags.FirstOrDefault(t => cells.ContainsKey(t)) is { } cell)
            {
                cells[cell].Words.Append(meant);
            }
            if (
                tags.FirstOrDefault(t =>
                    t.Role is not (TagRole.Span or TagRole.Link or TagRole.Reference)
                )
                is not { } tag
            )
            {
                return;
            }
            if (!document.paragraphs.TryGetValue(tag, out SetParagraph? paragraph))
            {
                paragraph = new(tag, []);
                document.paragraphs[tag] = paragraph;
                document.Paragraphs.Add(paragraph);
            }
            SetLine? line = paragraph.Lines.LastOrDefault();
            if (line is not null && line.Page == page && Math.Abs((line.Baseline - at).Value) < 3)
            {
                paragraph.Lines[^1] = line with { Words = line.Words + meant };
            }
            else
            {
                paragraph.Lines.Add(new(page, at, meant));
            }
            last = paragraph;
        }

        private const string Ready = "½¼¾⅛⅜⅝⅞⅓⅔⅕⅖⅗⅘⅙⅚";

        private static readonly string[] ReadyPlain =
        [
            "1/2",
            "1/4",
            "3/4",
            "1/8",
            "3/8",
            "5/8",
            "7/8",
            "1/3",
            "2/3",
            "1/5",
            "2/5",
            "3/5",
            "4/5",
            "1/6",
            "5/6",
        ];

        // 12½ as 12 1/2.
        private static string Plain(string words)
        {
            var plain = new StringBuilder();
            foreach (char c in words)
            {
                int ready = Ready.IndexOf(c);
                plain.Append(
                    ready < 0 ? $"{c}"
                    : plain.Length > 0 && char.IsAsciiDigit(plain[^1]) ? $" {ReadyPlain[ready]}"
                    : ReadyPlain[ready]
                );
            }
            return $"{plain}";
        }
    }
}
