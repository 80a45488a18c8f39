namespace PatternPress.Typesetting.Fonts;

/// <summary>The parts of a TrueType file that setting text needs.</summary>
public sealed class TrueTypeFont
{
    TrueTypeFont(byte[] data) => Data = data;

    /// <summary>The whole file.</summary>
    public byte[] Data { get; }

    public static TrueTypeFont Read(byte[] data) => new(data);
}
