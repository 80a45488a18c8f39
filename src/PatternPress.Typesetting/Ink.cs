using System.Globalization;

namespace PatternPress.Typesetting;

/// <summary>A flat, opaque colour on paper: red, green and blue of the sRGB standard (IEC 61966-2-1), 0 to 255 each.</summary>
public readonly record struct Ink(byte Red, byte Green, byte Blue)
{
    public static readonly Ink Black = new(0, 0, 0);

    public static readonly Ink White = new(255, 255, 255);

    /// <summary>A grey between black (0) and white (1).</summary>
    public static Ink Grey(double lightness)
    {
        var level = (byte)Math.Round(Math.Clamp(lightness, 0, 1) * 255);
        return new(level, level, level);
    }

    /// <summary>Reads <c>#rrggbb</c> or <c>rrggbb</c>.</summary>
    /// <exception cref="FormatException">The text is not a colour in that form.</exception>
    public static Ink FromHex(string hex)
    {
        var digits = hex.AsSpan().TrimStart('#');
        if (digits.Length != 6)
        {
            throw new FormatException($"'{hex}' is not a colour of the form #rrggbb.");
        }

        return new(Two(digits[..2]), Two(digits[2..4]), Two(digits[4..]));

        static byte Two(ReadOnlySpan<char> pair) =>
            byte.Parse(pair, NumberStyles.AllowHexSpecifier);
    }

    /// <summary>Relative luminance, 0 (black) to 1 (white), as WCAG 2.2 defines it ("relative luminance").</summary>
    public double Luminance =>
        (0.2126 * Linear(Red)) + (0.7152 * Linear(Green)) + (0.0722 * Linear(Blue));

    /// <summary>Contrast ratio of two colours, 1 to 21, as WCAG 2.2 defines it ("contrast ratio").</summary>
    public double ContrastWith(Ink other)
    {
        var (a, b) = (Luminance, other.Luminance);
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    /// <summary>Black or white, whichever reads better on this colour.</summary>
    public Ink ReadableOn() => ContrastWith(White) >= ContrastWith(Black) ? White : Black;

    /// <summary>The grey of the same luminance.</summary>
    public Ink ToGrey()
    {
        var linear = Luminance;
        var encoded =
            linear <= 0.0031308 ? 12.92 * linear : (1.055 * Math.Pow(linear, 1 / 2.4)) - 0.055;
        return Grey(encoded);
    }

    /// <summary>A mixture with another colour: 0 gives this one, 1 the other.</summary>
    public Ink MixedWith(Ink other, double share) =>
        new(
            Mix(Red, other.Red, share),
            Mix(Green, other.Green, share),
            Mix(Blue, other.Blue, share)
        );

    /// <summary>The form <c>#rrggbb</c>.</summary>
    public override string ToString() => $"#{Red:x2}{Green:x2}{Blue:x2}";

    static byte Mix(byte a, byte b, double share) =>
        (byte)Math.Round(a + ((b - a) * Math.Clamp(share, 0, 1)));

    static double Linear(byte level)
    {
        var share = level / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
    }
}
