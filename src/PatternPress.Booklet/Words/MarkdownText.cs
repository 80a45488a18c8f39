using System.Text;

namespace PatternPress.Booklet.Words;

/// <summary>Makes plain text safe to stand in Markdown: names such as "Tern &amp; Tide" or "5*" keep their look.</summary>
public static class MarkdownText
{
    private const string Special = "\\`*_{}[]<>#|~&!";

    /// <summary>The text with a backslash before every sign that Markdown reads; line breaks become spaces.</summary>
    public static string Escape(string text)
    {
        StringBuilder? escaped = null;
        for (int i = 0; i < text.Length; i++)
        {
            char c = text[i];
            bool special = Special.Contains(c) || (i == 0 && c is '+' or '-' or '=' or ':' or '.');
            if (!special && c is not ('\n' or '\r'))
            {
                escaped?.Append(c);
                continue;
            }
            escaped ??= new StringBuilder(text, 0, i, text.Length + 8);
            if (special)
            {
                escaped.Append('\\').Append(c);
            }
            else
            {
                escaped.Append(' ');
            }
        }
        return escaped?.ToString() ?? text;
    }
}
