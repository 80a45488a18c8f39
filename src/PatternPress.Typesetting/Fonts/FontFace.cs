namespace PatternPress.Typesetting.Fonts;

/// <summary>
/// One face of a family (for example its bold italic) as the bytes of a TrueType file. The bytes are asked for when the
/// face is first used.
/// </summary>
public sealed class FontFace
{
    readonly Lazy<TrueTypeFont> font;

    /// <param name="family">The family's name as text styles write it.</param>
    /// <param name="bold">Whether this is the face for bold text.</param>
    /// <param name="italic">Whether this is the face for italic text.</param>
    /// <param name="load">Gives the bytes of the font file; called at most once.</param>
    public FontFace(string family, bool bold, bool italic, Func<byte[]> load)
    {
        (Family, Bold, Italic) = (family, bold, italic);
        font = new Lazy<TrueTypeFont>(() => TrueTypeFont.Read(load()));
    }

    public string Family { get; }

    public bool Bold { get; }

    public bool Italic { get; }

    /// <summary>The file's content.</summary>
    /// <exception cref="InvalidDataException">The bytes are not a TrueType font that can be embedded.</exception>
    public TrueTypeFont Font => font.Value;

    /// <summary>Family and style, for example <c>Lato Bold Italic</c>.</summary>
    public override string ToString() => Family + (Bold ? " Bold" : "") + (Italic ? " Italic" : "");
}
