using System.Text;

namespace PatternPress.Pdf.Fonts;

/// <summary>From glyph numbers back to characters, so that text can be searched, copied and read aloud (ISO 32000-1, 9.10.3).</summary>
static class UnicodeMap
{
    // The most entries that one block may have.
    const int MostInBlock = 100;

    public static byte[] Write(SubsetFont font)
    {
        var entries = new List<string>();
        for (ushort id = 1; id < font.ShownCount; id++)
        {
            var characters = font.CharactersOf(font.OldIds[id]);
            if (characters.Length > 0)
            {
                entries.Add(
                    $"<{id:x4}><{string.Concat(characters.Select(unit => $"{(int)unit:x4}"))}>\n"
                );
            }
        }

        var map = new StringBuilder();
        map.Append("/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n");
        map.Append("/CIDSystemInfo <</Registry (Adobe)/Ordering (UCS)/Supplement 0>> def\n");
        map.Append("/CMapName /Adobe-Identity-UCS def\n/CMapType 2 def\n");
        map.Append("1 begincodespacerange\n<0000><ffff>\nendcodespacerange\n");
        foreach (var block in entries.Chunk(MostInBlock))
        {
            map.Append($"{block.Length} beginbfchar\n").AppendJoin("", block).Append("endbfchar\n");
        }

        map.Append("endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend\n");
        return Encoding.ASCII.GetBytes(map.ToString());
    }
}
