namespace PatternPress.Quilting.Model;

/// <summary>An sRGB colour, 8 bits a channel.</summary>
public readonly record struct Color(byte Red, byte Green, byte Blue)
{
    /// <summary>Reads "#rrggbb" (the W3C's hexadecimal notation) or "#rgb".</summary>
    public static bool TryParse(string text, out Color color)
    {
        color = default;
        if (text.Length == 4 && text[0] == '#')
        {
            text = $"#{text[1]}{text[1]}{text[2]}{text[2]}{text[3]}{text[3]}";
        }
        if (
            text.Length != 7
            || text[0] != '#'
            || !int.TryParse(
                text.AsSpan(1),
                System.Globalization.NumberStyles.AllowHexSpecifier,
                null,
                out int rgb
            )
        )
        {
            return false;
        }
        color = new((byte)(rgb >> 16), (byte)(rgb >> 8), (byte)rgb);
        return true;
    }

    public override string ToString() => $"#{Red:x2}{Green:x2}{Blue:x2}";
}
