using System.Text;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Inlines;

namespace PatternPress.Booklet.Sections;

/// <summary>The words of blocks, without their looks: to find the terms that a booklet uses, and for tests.</summary>
public static class PlainText
{
    /// <summary>All words in reading order, one paragraph a line.</summary>
    public static string Of(IEnumerable<Block> blocks)
    {
        var text = new StringBuilder();
        foreach (Block block in blocks)
        {
            Write(block, text);
        }
        return text.ToString();
    }

    public static string Of(IEnumerable<Inline> words)
    {
        var text = new StringBuilder();
        foreach (Inline word in words)
        {
            switch (word)
            {
                case Run run:
                    text.Append(run.Text);
                    break;
                case Fraction fraction:
                    text.Append(fraction.Plain);
                    break;
                case LineBreak:
                    text.Append(' ');
                    break;
                case InlineDrawing { Alt.Length: > 0 } drawing:
                    text.Append('[').Append(drawing.Alt).Append(']');
                    break;
                case PageField field:
                    text.Append('{').Append(field.Anchor ?? field.Kind.ToString()).Append('}');
                    break;
            }
        }
        return text.Replace('\u00a0', ' ').ToString();
    }

    private static void Write(Block block, StringBuilder text)
    {
        switch (block)
        {
            case Text paragraph:
                text.Append(Of(paragraph.Content)).Append('\n');
                break;
            case Heading heading:
                text.Append(new string('#', heading.Level))
                    .Append(' ')
                    .Append(Of(heading.Content))
                    .Append('\n');
                break;
            case Figure figure:
                text.Append("[figure: ").Append(figure.Alt).Append("]\n");
                if (figure.Caption is { } caption)
                {
                    Write(caption, text);
                }
                break;
            case List list:
                for (int i = 0; i < list.Items.Length; i++)
                {
                    text.Append(list.Numbered ? $"{list.Start + i}. " : "- ");
                    Write(list.Items[i].Content, text);
                }
                break;
            case Table table:
                foreach (TableRow row in table.Header.Concat(table.Rows))
                {
                    text.Append("| ");
                    foreach (TableCell cell in row.Cells)
                    {
                        var inner = new StringBuilder();
                        Write(cell.Content, inner);
                        text.Append(inner.ToString().Trim().Replace("\n", " / ")).Append(" | ");
                    }
                    text.Append('\n');
                }
                break;
            case Contents:
                text.Append("[contents]\n");
                break;
            default:
                foreach (Block child in block.Children)
                {
                    Write(child, text);
                }
                break;
        }
    }
}
