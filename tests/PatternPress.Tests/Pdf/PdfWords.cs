using System.Text;
using UglyToad.PdfPig.Content;

namespace PatternPress.Tests.Pdf;

/// <summary>
/// Reads a page's words in the order of its content, taking the actual text where the file gives one: fractions are raised
/// and lowered numerals to the eye, but "12 5/16" to whoever reads the marks.
/// </summary>
static class PdfWords
{
    /// <summary>One line for each piece of marked content.</summary>
    public static string Of(Page page)
    {
        var text = new StringBuilder();
        foreach (var content in page.GetMarkedContents().OrderBy(content => content.Index))
        {
            var line = Read(content);
            if (line.Trim().Length > 0)
            {
                text.Append(line.Trim()).Append('\n');
            }
        }

        return text.ToString();
    }

    static string Read(MarkedContentElement content)
    {
        if (content.ActualText is { Length: > 0 } actual)
        {
            return actual;
        }

        // Letters come in the order of the stream; a span stands where its first letter does.
        var spans = content
            .Children.Where(child => child.Letters.Count > 0)
            .ToDictionary(child => child.Letters[0].TextSequence);
        var inSpans = content
            .Children.SelectMany(child => child.Letters)
            .Select(letter => letter.TextSequence)
            .ToHashSet();
        var text = new StringBuilder();
        foreach (
            var letter in content
                .Letters.Concat(content.Children.SelectMany(child => child.Letters))
                .DistinctBy(letter => (letter.TextSequence, letter.StartBaseLine.X))
                .OrderBy(letter => letter.TextSequence)
        )
        {
            if (spans.Remove(letter.TextSequence, out var span))
            {
                text.Append(Read(span));
            }
            else if (!inSpans.Contains(letter.TextSequence))
            {
                text.Append(letter.Value);
            }
        }

        return text.ToString();
    }
}
