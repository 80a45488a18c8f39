namespace PatternPress.Typesetting.Fonts;

/// <summary>A placed glyph; distances in units of the font, y up.</summary>
/// <param name="Id">The glyph's number in the font.</param>
/// <param name="Advance">To the start of the next glyph, kerning included.</param>
/// <param name="Cluster">The index of the first character it stands for.</param>
public readonly record struct Glyph(ushort Id, int Advance, int XOffset, int YOffset, int Cluster);
