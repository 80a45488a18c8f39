using System.Collections.Immutable;

namespace PatternPress.Typesetting.Fonts;

/// <summary>A word as glyphs, in units of the font.</summary>
/// <param name="Characters">What the glyphs stand for.</param>
/// <param name="Glyphs">The glyphs from left to right.</param>
public sealed record ShapedText(string Characters, ImmutableArray<Glyph> Glyphs);
