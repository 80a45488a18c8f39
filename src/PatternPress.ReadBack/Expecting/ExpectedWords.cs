using System.Collections.Immutable;
using System.Text;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Inlines;

namespace PatternPress.ReadBack.Expecting;

/// <summary>All words of a document in reading order, taken from its blocks and not from pages set of them.</summary>
internal sealed class ExpectedWords
{
    private readonly ImmutableArray<Expected>.Builder _words =
        ImmutableArray.CreateBuilder<Expected>();
    private readonly List<(int Level, string Title)> _anchors = [];
    private int _rows;
    private int _row;

    public static ImmutableArray<Expected> Of(Document document)
    {
        var expected = new ExpectedWords();
        foreach (PageSequence sequence in document.Sequences)
        {
            expected.FindAnchors(sequence.Body);
        }
        foreach (PageSequence sequence in document.Sequences)
        {
            expected.Walk(sequence.Body, WordsKind.Paragraph, []);
        }
        return expected._words.ToImmutable();
    }

    private void FindAnchors(Block block)
    {
        if (block is Anchor anchor && anchor.Level > 0)
        {
            _anchors.Add((anchor.Level, anchor.Title));
        }
        foreach (Block child in block.Children)
        {
            FindAnchors(child);
        }
    }

    private void Walk(Block block, WordsKind kind, ImmutableArray<string> heads)
    {
        switch (block)
        {
            // Not part of what is read.
            case Artifact:
                break;
            case Text text:
                Add(text.Content, kind, heads);
                break;
            case Heading heading:
                Add(heading.Content, kind == WordsKind.Cell ? kind : WordsKind.Heading, heads);
                break;
            case Figure figure:
                if (figure.Caption is { } caption)
                {
                    Walk(caption, WordsKind.Caption, heads);
                }
                break;
            case List list:
                for (int i = 0; i < list.Items.Length; i++)
                {
                    string label =
                        list.Items[i].Label
                        ?? (
                            list.Numbered
                                ? FormattableString.Invariant($"{list.Start + i}{list.AfterNumber}")
                                : list.Bullet
                        );
                    Add([new Run(label)], WordsKind.ListLabel, []);
                    Walk(list.Items[i].Content, kind, heads);
                }
                break;
            case Table table:
                Walk(table);
                break;
            case Contents contents:
                AddContents(contents);
                break;
            default:
                foreach (Block child in block.Children)
                {
                    Walk(child, kind, heads);
                }
                break;
        }
    }

    private void AddContents(Contents contents)
    {
        var parts = new List<string>();
        bool begun = false;
        foreach ((int level, string title) in _anchors)
        {
            if (level <= contents.Depth)
            {
                AddParts();
                Add(FractionText.Parse(title), WordsKind.Contents, []);
                Add([PageField.Page], WordsKind.Contents, []);
                begun = true;
            }
            else if (level == contents.Depth + 1 && begun)
            {
                parts.Add(title);
            }
        }
        AddParts();

        void AddParts()
        {
            if (contents.ShowsParts(parts.Count))
            {
                for (int i = 0; i < parts.Count; i++)
                {
                    string title = i == 0 ? parts[i] : $"· {parts[i]}";
                    Add(FractionText.Parse(title), WordsKind.Contents, []);
                    Add([PageField.Page], WordsKind.Contents, []);
                }
            }
            parts.Clear();
        }
    }

    private void Walk(Table table)
    {
        // The last header row with words above a column names it.
        string[] above = new string[table.Columns.Length];
        Array.Fill(above, "");
        foreach (TableRow row in table.Header)
        {
            int at = 0;
            foreach (TableCell cell in row.Cells)
            {
                Walk(cell.Content, WordsKind.Cell, []);
                string words = WordsOf(cell.Content);
                for (int i = at; i < Math.Min(at + cell.ColumnSpan, above.Length); i++)
                {
                    above[i] = words.Length > 0 ? words : above[i];
                }
                at += cell.ColumnSpan;
            }
        }
        int around = _row;
        foreach (TableRow row in table.Rows)
        {
            _row = ++_rows;
            int at = 0;
            foreach (TableCell cell in row.Cells)
            {
                int end = Math.Min(at + cell.ColumnSpan, above.Length);
                Walk(
                    cell.Content,
                    WordsKind.Cell,
                    at < end ? [.. above[at..end].Where(w => w.Length > 0).Distinct()] : []
                );
                at += cell.ColumnSpan;
            }
        }
        _row = around;
    }

    private void Add(ImmutableArray<Inline> content, WordsKind kind, ImmutableArray<string> heads)
    {
        var words = new StringBuilder();
        foreach (Inline inline in content)
        {
            if (inline is PageField)
            {
                End();
                _words.Add(new Expected(kind, "", heads));
            }
            else
            {
                words.Append(WordsOf(inline));
            }
        }
        End();

        void End()
        {
            string text = words.ToString();
            words.Clear();
            if (text.Any(c => !Bare.IsNothing(c)))
            {
                _words.Add(new Expected(kind, text.Trim(), heads) { Row = _row });
            }
        }
    }

    private static string WordsOf(Block block)
    {
        var inner = new ExpectedWords();
        inner.Walk(block, WordsKind.Cell, []);
        return string.Join(" ", inner._words.Select(w => w.Words));
    }

    private static string WordsOf(Inline inline) =>
        inline switch
        {
            Run run => run.Text.Replace('\u00a0', ' '),
            Fraction fraction => fraction.Plain,
            LineBreak => " ",
            _ => "",
        };
}
