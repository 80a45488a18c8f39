using PatternPress.Typesetting.Blocks;

namespace PatternPress.Typesetting.Layout.Tables;

/// <summary>A cell whose text begins with a number: the widths before and after the end of the whole number.</summary>
readonly record struct NumberCell(Points Front, Points Back)
{
    /// <summary>The widths of a cell that is a single paragraph; none for others.</summary>
    public static NumberCell? Measure(LayoutContext context, TableCell cell)
    {
        if (cell.Content is not Text text)
        {
            return null;
        }

        var (paragraph, _) = text.Prepare(context);
        if (!paragraph.BeginsWithNumber)
        {
            return null;
        }

        var front = paragraph.WidthBeforeNumberEnd();
        return new(front, paragraph.Widths().Natural - front);
    }
}
