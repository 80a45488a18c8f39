using System.Globalization;
using System.Text;

namespace PatternPress.Cli.Messages;

/// <summary>
/// A source line as a terminal shows it: tabs widened, characters that would disturb the terminal replaced, and for
/// every column of the file the cell it lands in, so that carets stand under what they mean.
/// </summary>
internal sealed class DisplayLine
{
    private const int TabWidth = 4;
    private const string Cut = "...";

    private readonly List<Element> elements;

    private DisplayLine(List<Element> elements) => this.elements = elements;

    /// <summary>What a reader sees as one character.</summary>
    /// <param name="Index">Where it begins in the line, from 0.</param>
    /// <param name="Cell">The cell it begins in, from 0.</param>
    private readonly record struct Element(
        int Index,
        int Length,
        int Cell,
        int Cells,
        string Shown
    );

    public int Cells => elements.Count == 0 ? 0 : elements[^1].Cell + elements[^1].Cells;

    public static DisplayLine Of(string line)
    {
        var elements = new List<Element>();
        var cell = 0;
        for (var at = 0; at < line.Length; )
        {
            var length = StringInfo.GetNextTextElementLength(line.AsSpan(at));
            var shown = line.Substring(at, length);
            if (shown == "\t")
            {
                shown = new string(' ', TabWidth - (cell % TabWidth));
            }
            else
            {
                shown = Harmless(shown);
            }

            var cells = Math.Max(CellWidth.Of(shown), 1);
            elements.Add(new Element(at, length, cell, cells, shown));
            cell += cells;
            at += length;
        }

        return new DisplayLine(elements);
    }

    /// <summary>The cell where the character of a column (from 1) begins; past the end, where the next would begin.</summary>
    public int CellOf(int column)
    {
        var index = column - 1;
        foreach (var element in elements)
        {
            if (index < element.Index + element.Length)
            {
                return element.Cell;
            }
        }

        return Cells + Math.Max(index - LengthInFile, 0);
    }

    /// <summary>The cell after the character before a column.</summary>
    public int EndCellOf(int endColumn)
    {
        var index = endColumn - 2;
        foreach (var element in elements)
        {
            if (index < element.Index + element.Length)
            {
                return element.Cell + element.Cells;
            }
        }

        return Cells;
    }

    private int LengthInFile => elements.Count == 0 ? 0 : elements[^1].Index + elements[^1].Length;

    /// <summary>
    /// The text, and how far it is shifted to the left: a line longer than the room is cut so that a given cell stays
    /// in sight.
    /// </summary>
    /// <param name="room">Cells to show at most; 0 for no limit.</param>
    public (string Text, int Shift) Show(int room, int focus)
    {
        var (first, last) = (0, Cells);
        if (room > 0 && Cells > room)
        {
            var inner = Math.Max(room - (2 * Cut.Length), 1);
            first = focus < inner ? 0 : Math.Min(focus - (inner / 2), Cells - inner);
            last = first + inner;
        }

        var text = new StringBuilder(first > 0 ? Cut : "");
        var start = -1;
        foreach (var element in elements)
        {
            if (element.Cell >= first && element.Cell + element.Cells <= last)
            {
                start = start < 0 ? element.Cell : start;
                text.Append(element.Shown);
            }
        }

        return (
            text.Append(last < Cells ? Cut : "").ToString().TrimEnd(),
            Math.Max(start, 0) - (first > 0 ? Cut.Length : 0)
        );
    }

    /// <summary>A text without characters that would move the cursor, change colours or turn the writing direction.</summary>
    public static string Harmless(string text)
    {
        var harmless = true;
        foreach (var character in text)
        {
            harmless &= !IsHarmful(character);
        }

        if (harmless)
        {
            return text;
        }

        var result = new StringBuilder(text.Length);
        foreach (var character in text)
        {
            // Control characters have pictures of their own: U+2400 and on.
            result.Append(
                character < ' ' ? (char)(0x2400 + character)
                : IsHarmful(character) ? '\uFFFD'
                : character
            );
        }

        return result.ToString();
    }

    private static bool IsHarmful(char character) =>
        character is < ' ' or (>= '\u007F' and <= '\u009F')
        || character is '\u2028' or '\u2029' or '\u200E' or '\u200F' or '\u061C'
        || character is >= '\u202A' and <= '\u202E'
        || character is >= '\u2066' and <= '\u2069';
}
