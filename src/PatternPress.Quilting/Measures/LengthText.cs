using System.Globalization;

namespace PatternPress.Quilting.Measures;

/// <summary>How measures are written and read: "12 1/2", "12½", "12.5", "12 1/2 in", "12 1/2\"", "3/4 yd", "30 cm".</summary>
public static class LengthText
{
    /// <summary>No measure in a quilt is larger than this; it also keeps exact arithmetic within 64 bits.</summary>
    public const long LargestInches = 10_000;

    private const string Vulgar = "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";

    private static readonly (int Numerator, int Denominator)[] VulgarValues =
    [
        (1, 2),
        (1, 3),
        (2, 3),
        (1, 4),
        (3, 4),
        (1, 5),
        (2, 5),
        (3, 5),
        (4, 5),
        (1, 6),
        (5, 6),
        (1, 8),
        (3, 8),
        (5, 8),
        (7, 8),
    ];

    /// <summary>Inches as a mixed number without the unit: "12 1/2", "7/8", "3". With roots, the exact form.</summary>
    public static string Inches(Length length) => Mixed(length.Inches);

    /// <summary>A mixed number: "12 1/2".</summary>
    public static string Mixed(Exact value)
    {
        if (!value.IsRational)
        {
            return value.ToString();
        }
        Rational r = value.One;
        if (r.IsWhole)
        {
            return r.ToString();
        }
        string sign = r.Sign < 0 ? "−" : "";
        r = r.Abs();
        long whole = r.Floor();
        Rational rest = r - whole;
        return whole == 0 ? sign + rest : $"{sign}{whole} {rest}";
    }

    /// <summary>Centimetres as a decimal, at most three places: "30", "1.5".</summary>
    public static string Centimetres(Length length) =>
        Math.Round(length.Centimetres.ToDouble(), 3)
            .ToString("0.###", CultureInfo.InvariantCulture);

    /// <summary>
    /// Reads a measure. A number without a unit is in <paramref name="unit"/>.
    /// </summary>
    /// <returns>False with <paramref name="problem"/> saying what is wrong, in words for a designer.</returns>
    public static bool TryParse(string text, LengthUnit unit, out Length length, out string problem)
    {
        length = default;
        ReadOnlySpan<char> rest = text.AsSpan().Trim();
        // "12 in." is 12 in.
        if (rest is [.., char letter, '.'] && char.IsLetter(letter))
        {
            rest = rest[..^1];
        }
        int end = rest.Length;
        while (
            end > 0
            && !char.IsDigit(rest[end - 1])
            && !Vulgar.Contains(rest[end - 1])
            && rest[end - 1] != '.'
        )
        {
            end--;
        }
        ReadOnlySpan<char> unitText = rest[end..].Trim();
        LengthUnit? named = unitText switch
        {
            "" => unit,
            "in" or "inch" or "inches" or "\"" or "″" or "”" or "''" => LengthUnit.Inch,
            "yd" or "yard" or "yards" => LengthUnit.Yard,
            "cm" => LengthUnit.Centimetre,
            "mm" => LengthUnit.Millimetre,
            "m" => LengthUnit.Metre,
            _ => null,
        };
        if (end == 0)
        {
            problem = $"\"{Shortened(text)}\" is not a measure";
            return false;
        }
        if (named is null)
        {
            problem = $"\"{Shortened(unitText)}\" is not a unit; use in, yd or cm";
            return false;
        }
        if (!TryParseNumber(rest[..end].ToString(), out Rational value, out problem))
        {
            return false;
        }
        Length one = named switch
        {
            LengthUnit.Yard => Length.FromYards(1),
            LengthUnit.Centimetre => Length.FromCentimetres(1),
            LengthUnit.Millimetre => Length.FromCentimetres(new Rational(1, 10)),
            LengthUnit.Metre => Length.FromCentimetres(100),
            _ => Length.FromInches(1),
        };
        if (value.Abs() > LargestInches || (one * value).Inches.Abs() > LargestInches)
        {
            problem =
                $"\"{Shortened(text)}\" is larger than anything in a quilt (limit {LargestInches:N0} in)";
            return false;
        }
        length = one * value;
        return true;
    }

    private static string Shortened(ReadOnlySpan<char> text) =>
        text.Length > 40 ? $"{text[..40]}…" : text.ToString();

    /// <summary>Reads a plain or mixed number: "3", "12 1/2", "12½", "12.5", "1/8".</summary>
    public static bool TryParseNumber(string text, out Rational value, out string problem)
    {
        value = default;
        problem = $"\"{Shortened(text)}\" is not a number; write 12 1/2, 12½ or 12.5";
        string s = text.Trim();
        if (s.Length is 0 or > 24)
        {
            return false;
        }
        int sign = 1;
        if (s[0] is '-' or '−')
        {
            sign = -1;
            s = s[1..].TrimStart();
        }
        Rational whole = 0,
            part = 0;
        if (s.Length > 0 && Vulgar.IndexOf(s[^1]) is >= 0 and int index)
        {
            (int n, int d) = VulgarValues[index];
            part = new Rational(n, d);
            s = s[..^1].TrimEnd();
            if (s.Length > 0 && !TryWhole(s, out whole))
            {
                return false;
            }
        }
        else if (s.Contains('/') || s.Contains('⁄'))
        {
            s = s.Replace('⁄', '/');
            string[] words = s.Split([' ', '\u00a0', '-'], StringSplitOptions.RemoveEmptyEntries);
            string fraction = words[^1];
            // "1 / 2" with spaces around the bar is read too.
            if (words.Length >= 3 && words[^2] == "/")
            {
                fraction = words[^3] + "/" + words[^1];
                words = [.. words[..^3], fraction];
            }
            int bar = fraction.IndexOf('/');
            if (
                words.Length > 2
                || !TryWhole(fraction[..bar], out Rational n)
                || !TryWhole(fraction[(bar + 1)..], out Rational d)
                || (words.Length == 2 && !TryWhole(words[0], out whole))
            )
            {
                return false;
            }
            if (d.Sign == 0)
            {
                problem = $"\"{Shortened(text)}\" divides by zero";
                return false;
            }
            if (d > 1000)
            {
                problem = $"\"{Shortened(text)}\" is finer than any ruler";
                return false;
            }
            if (words.Length == 2 && n >= d)
            {
                problem =
                    $"\"{Shortened(text)}\" has a fraction of one or more after its whole number";
                return false;
            }
            part = n / d;
        }
        else if (s.Contains('.') || s.Contains(','))
        {
            int point = s.IndexOfAny(['.', ',']);
            string decimals = s[(point + 1)..];
            if (decimals.Length is 0 or > 4 || (point > 0 && !TryWhole(s[..point], out whole)))
            {
                return false;
            }
            if (!TryWhole(decimals, out Rational digits))
            {
                return false;
            }
            long scale = 1;
            for (int i = 0; i < decimals.Length; i++)
            {
                scale *= 10;
            }
            part = digits / scale;
        }
        else if (!TryWhole(s, out whole))
        {
            return false;
        }
        value = (whole + part) * sign;
        problem = "";
        return true;
    }

    /// <summary>Reads inches in the exact form that <see cref="Inches"/> writes where there are roots: "3 + 12√2".</summary>
    public static bool TryParseExact(string text, out Length length)
    {
        length = default;
        Exact sum = Exact.Zero;
        int sign = 1;
        foreach (string word in text.Split(' '))
        {
            if (word is "+" or "−")
            {
                sign = word == "+" ? 1 : -1;
                continue;
            }
            string term = word;
            if (term.StartsWith('−'))
            {
                (sign, term) = (-sign, term[1..]);
            }
            int root = term.IndexOf('√');
            Exact unit = root < 0 ? 1 : Root(term[root..]);
            string share = root < 0 ? term : term[..root];
            if (
                unit == Exact.Zero
                || !TryParseFraction(share.Length == 0 ? "1" : share, out Rational part)
            )
            {
                return false;
            }
            sum += unit * (part * sign);
            sign = 1;
        }
        length = new Length(sum);
        return true;
    }

    private static Exact Root(string text) =>
        text switch
        {
            "√2" => Exact.SquareRootOfTwo,
            "√3" => Exact.SquareRootOfThree,
            "√6" => Exact.SquareRootOfTwo * Exact.SquareRootOfThree,
            _ => Exact.Zero,
        };

    private static bool TryParseFraction(string text, out Rational value)
    {
        value = default;
        int bar = text.IndexOf('/');
        if (!TryWhole(bar < 0 ? text : text[..bar], out value))
        {
            return false;
        }
        if (bar >= 0)
        {
            if (!TryWhole(text[(bar + 1)..], out Rational below) || below.Sign == 0)
            {
                return false;
            }
            value /= below;
        }
        return true;
    }

    private static bool TryWhole(string text, out Rational value)
    {
        value = default;
        if (text.Length is 0 or > 9)
        {
            return false;
        }
        long number = 0;
        foreach (char c in text)
        {
            if (c is < '0' or > '9')
            {
                return false;
            }
            number = (number * 10) + (c - '0');
        }
        value = number;
        return true;
    }
}
