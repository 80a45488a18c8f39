using System.Globalization;
using System.Text;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Inlines;

namespace PatternPress.Benchmarks.Documents;

/// <summary>
/// A document's headings, paragraphs, lists and tables as markup of the document compiler typst, on the same paper with
/// the same margins, faces and sizes. Drawings are left out: only we draw them.
/// </summary>
internal static class TypstMarkup
{
    public static string Of(Document document)
    {
        var text = new StringBuilder();
        PageFrame frame = document.Sequences[0].Frame;
        text.Append(
            CultureInfo.InvariantCulture,
            $"""
            #set document(title: "Booklet")
            #set page(width: {frame.Paper.Width}pt, height: {frame.Paper.Height}pt, margin: (left: {frame
                .Margins
                .Left}pt, right: {frame.Margins.Right}pt, top: {frame.Margins.Top}pt, bottom: {frame
                .Margins
                .Bottom}pt), numbering: "1")
            #set text(font: "Lato", size: 10pt, lang: "en")
            #set table(stroke: (bottom: 0.5pt))
            #show heading: set text(font: "Vollkorn")

            """
        );
        foreach (PageSequence sequence in document.Sequences)
        {
            if (sequence.Joins is null)
            {
                text.Append("#pagebreak(weak: true)\n");
            }
            Write(sequence.Body, text);
        }
        return text.ToString();
    }

    private static void Write(Block block, StringBuilder text)
    {
        switch (block)
        {
            case Text paragraph:
                Words(paragraph.Content, text);
                text.Append("\n\n");
                break;
            case Heading heading:
                text.Append(CultureInfo.InvariantCulture, $"#heading(level: {heading.Level})[");
                Words(heading.Content, text);
                text.Append("]\n\n");
                break;
            case Figure { Caption: { } caption }:
                Write(caption, text);
                break;
            case Figure:
                break;
            case List list:
                text.Append(
                    list.Numbered
                        ? string.Create(
                            CultureInfo.InvariantCulture,
                            $"#enum(start: {list.Start}, "
                        )
                        : "#list("
                );
                foreach (ListItem item in list.Items)
                {
                    text.Append('[');
                    Write(item.Content, text);
                    text.Append("], ");
                }
                text.Append(")\n\n");
                break;
            case Table table:
                Write(table, text);
                break;
            case Contents:
                text.Append("#outline(title: none, depth: 2)\n\n");
                break;
            case PageBreak:
                text.Append("#pagebreak(weak: true)\n\n");
                break;
            default:
                foreach (Block child in block.Children)
                {
                    Write(child, text);
                }
                break;
        }
    }

    private static void Write(Table table, StringBuilder text)
    {
        text.Append(CultureInfo.InvariantCulture, $"#table(columns: {table.Columns.Length}, ");
        if (!table.Header.IsDefaultOrEmpty)
        {
            text.Append("table.header(");
            foreach (TableRow row in table.Header)
            {
                Write(row, text);
            }
            text.Append("), ");
        }
        foreach (TableRow row in table.Rows)
        {
            Write(row, text);
        }
        text.Append(")\n\n");
    }

    private static void Write(TableRow row, StringBuilder text)
    {
        foreach (TableCell cell in row.Cells)
        {
            text.Append(
                CultureInfo.InvariantCulture,
                $"table.cell(colspan: {cell.ColumnSpan})[#text(size: 9pt)["
            );
            Write(cell.Content, text);
            text.Append("]], ");
        }
    }

    // Every piece as a string literal, so that no sign in it is taken for markup.
    private static void Words(IEnumerable<Inline> words, StringBuilder text)
    {
        foreach (Inline word in words)
        {
            string piece = word switch
            {
                Run run => run.Text,
                Fraction fraction => fraction.Plain,
                LineBreak => "\n",
                PageField => "00",
                _ => "",
            };
            if (piece.Length == 0)
            {
                continue;
            }
            string call = (word.Style.Bold, word.Style.Italic) switch
            {
                (true, true) => "strong(emph(",
                (true, _) => "strong((",
                (_, true) => "emph((",
                _ => "text((",
            };
            text.Append('#')
                .Append(call)
                .Append('"')
                .Append(
                    piece
                        .Replace("\\", "\\\\", StringComparison.Ordinal)
                        .Replace("\"", "\\\"", StringComparison.Ordinal)
                        .Replace("\n", "\\n", StringComparison.Ordinal)
                )
                .Append("\"))");
        }
    }
}
