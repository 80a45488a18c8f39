using PatternPress.Typesetting.Fonts;

namespace PatternPress.Pdf.Fonts;

/// <summary>The glyphs of a face that a document uses, numbered anew from 1 (0 is the glyph for what is missing).</summary>
sealed class SubsetFont(FontFace face)
{
    readonly SortedDictionary<ushort, string> used = new() { [0] = "" };
    readonly Dictionary<ushort, ushort> newIds = [];

    public FontFace Face { get; } = face;

    public TrueTypeFont Source { get; } = face.Font;

    /// <summary>The old glyph of each new one; those that only serve as parts of others come last.</summary>
    public List<ushort> OldIds { get; } = [];

    /// <summary>How many glyphs are shown themselves.</summary>
    public int ShownCount { get; private set; }

    public void Use(ShapedText shape)
    {
        for (var i = 0; i < shape.Glyphs.Length; i++)
        {
            var id = shape.Glyphs[i].Id;
            if (!used.TryGetValue(id, out var characters) || characters.Length == 0)
            {
                used[id] = shape.CharactersOf(i);
            }
        }
    }

    /// <summary>Gives the new numbers; nothing more can be used afterwards.</summary>
    public void Close()
    {
        foreach (var id in used.Keys)
        {
            Number(id);
        }

        ShownCount = OldIds.Count;
        // The list grows while parts, and parts of parts, are found.
        for (var i = 0; i < OldIds.Count; i++)
        {
            foreach (var part in GlyphData.PartsOf(Source, OldIds[i]))
            {
                Number(part);
            }
        }

        void Number(ushort id)
        {
            if (newIds.TryAdd(id, (ushort)OldIds.Count))
            {
                OldIds.Add(id);
            }
        }
    }

    public ushort NewIdOf(ushort id) => newIds[id];

    /// <summary>The width written into the file for a glyph: whole thousandths of the size.</summary>
    public int WidthOf(ushort id) =>
        (int)
            Math.Round(
                Source.AdvanceOf(id) * 1000.0 / Source.UnitsPerEm,
                MidpointRounding.AwayFromZero
            );

    /// <summary>What a glyph stands for.</summary>
    public string CharactersOf(ushort id) => used.GetValueOrDefault(id, "");
}
