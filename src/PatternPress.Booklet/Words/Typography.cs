using System.Text;

namespace PatternPress.Booklet.Words;

/// <summary>Turns typewriter signs into those of print: quotation marks, apostrophes, dashes, the times sign.</summary>
public static class Typography
{
    /// <param name="text">A piece of running text.</param>
    /// <param name="before">The character before it; a space at the start of a paragraph.</param>
    public static string Set(string text, char before = ' ')
    {
        if (text.AsSpan().IndexOfAny("'\"-.") < 0)
        {
            return text;
        }
        var set = new StringBuilder(text.Length);
        for (int i = 0; i < text.Length; i++)
        {
            char c = text[i];
            char last = i == 0 ? before : text[i - 1];
            switch (c)
            {
                case '\'':
                    set.Append(Opens(last) ? '‘' : '’');
                    break;
                case '"' when char.IsDigit(last):
                    set.Append('″');
                    break;
                case '"':
                    set.Append(Opens(last) ? '“' : '”');
                    break;
                case '-' when i + 1 < text.Length && text[i + 1] == '-':
                    set.Append('–');
                    i++;
                    break;
                case '.' when i + 2 < text.Length && text[i + 1] == '.' && text[i + 2] == '.':
                    set.Append('…');
                    i += 2;
                    break;
                default:
                    set.Append(c);
                    break;
            }
        }
        return set.ToString();
    }

    private static bool Opens(char before) =>
        char.IsWhiteSpace(before) || before is '(' or '[' or '“' or '‘' or '—' or '–';
}
