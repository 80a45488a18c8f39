using System.Security;
using System.Text;
using System.Xml;

namespace PatternPress.Typesetting.Pages;

/// <summary>Words as character data of an XML file.</summary>
public static class XmlText
{
    /// <summary>The words with what XML reserves written as entities. Characters that XML 1.0 (section 2.2) cannot hold at
    /// all are left out; halves of characters become the replacement character.</summary>
    public static string Escape(string words)
    {
        var kept = new StringBuilder(words.Length);
        foreach (Rune rune in words.EnumerateRunes())
        {
            if (rune.Utf16SequenceLength == 2 || XmlConvert.IsXmlChar((char)rune.Value))
            {
                kept.Append(rune);
            }
        }
        return SecurityElement.Escape(kept.ToString()) ?? "";
    }
}
