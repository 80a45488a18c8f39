using System.Collections.Immutable;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Inlines;

namespace PatternPress.Booklet.Sections;

/// <summary>What tables' cells are made of.</summary>
internal static class Cells
{
    public static Text Plain(string words) => new(words, "table");

    public static Text Strong(string words) => new(words, "table-strong");

    public static Text Small(string words) => new(words, "table-small");

    /// <summary>A line, and below it a smaller one; the second may be missing.</summary>
    public static Block Lines(string first, string? second) =>
        second is null ? Strong(first) : new Stack(Strong(first), Small(second));

    /// <summary>A cell that heads its row.</summary>
    public static TableCell Head(Block content) => new(content) { IsHeader = true };

    /// <summary>A letter, and a name in plain type behind it.</summary>
    public static Text LetterAndName(string letter, string name) =>
        new(
            [
                .. FractionText.Parse(letter, new InlineStyle { Bold = true }),
                new Run("\u2002"),
                .. FractionText.Parse(name),
            ],
            "table"
        );

    /// <summary>The values as one line if all are alike, else null.</summary>
    public static string? Common(IEnumerable<string?> values)
    {
        string? common = null;
        foreach (string? value in values)
        {
            if (value is null || value == common)
            {
                continue;
            }
            if (common is not null)
            {
                return null;
            }
            common = value;
        }
        return common;
    }
}
