namespace PatternPress.Typesetting.Fonts;

/// <summary>
/// Measures words with kerning and ligatures; the same shapes are drawn later, so measure and print agree. Remembers each
/// word of each face. Safe to use from several threads.
/// </summary>
public sealed class TextMeasurer(FontLibrary fonts)
{
    public FontLibrary Fonts { get; } = fonts;
}
