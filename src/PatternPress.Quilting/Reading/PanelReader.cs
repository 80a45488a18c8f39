using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Rules;
using PatternPress.Source.Syntax;

namespace PatternPress.Quilting.Reading;

/// <summary>Reads what a fabric is bought as: a size that shops sell, or one of the maker's own.</summary>
internal static class PanelReader
{
    /// <summary>The word for fabric from the bolt.</summary>
    private const string ByTheYard = "yardage";

    /// <param name="of">Whose, for the message: "fabric "A"".</param>
    /// <returns>Null for fabric by the yard, and where it cannot be read.</returns>
    public static Panel? Read(Node? node, string of, ReadContext context)
    {
        if (node is MapNode map)
        {
            Length? width = context.Measure(map, "width", $"width of what {of} is bought as"),
                height = context.Measure(map, "height", $"height of what {of} is bought as");
            return width is { } across && height is { } along ? Panel.OwnSize(across, along) : null;
        }
        if (node is not ScalarNode { IsEmpty: false } text)
        {
            return null;
        }
        string word = string.Join(
            ' ',
            text.Value.Split(' ', StringSplitOptions.RemoveEmptyEntries)
        );
        if (word == ByTheYard)
        {
            return null;
        }
        if (Panel.Find(word) is { } panel)
        {
            return panel;
        }
        context.Report(
            PP0221_UnknownWord.Found(
                text.Span,
                text.Value,
                "thing to buy fabric as",
                [ByTheYard, .. Panel.Sold.Select(sold => sold.Name)]
            )
        );
        return null;
    }
}
