namespace PatternPress.Source.Shapes;

/// <summary>
/// The form a text must have: as a regular expression (ECMA-262) for the schema and as a check by hand for reading,
/// since loading the regular expression engine would cost more than reading the whole file. A test holds the two
/// together.
/// </summary>
public sealed record TextForm(string Pattern, Func<string, bool> Matches)
{
    /// <summary>A letter or digit, then letters, digits, hyphens and underscores.</summary>
    public static TextForm Name { get; } =
        new(@"^[\p{L}\p{Nd}][\p{L}\p{Nd}_-]*$", text => IsName(text, dots: 0));

    /// <summary>A name, or two joined with a full stop: <c>lamp.G</c>.</summary>
    public static TextForm DottedName { get; } =
        new(
            @"^[\p{L}\p{Nd}][\p{L}\p{Nd}_-]*(\.[\p{L}\p{Nd}][\p{L}\p{Nd}_-]*)?$",
            text => IsName(text, dots: 1)
        );

    /// <summary><c>#rrggbb</c>.</summary>
    public static TextForm Color { get; } = new("^#[0-9A-Fa-f]{6}$", IsColor);

    /// <summary><c>2026-11-01</c>; whether there is such a day is the reader's to say.</summary>
    public static TextForm Date { get; } = new("^[0-9]{4}-[0-9]{2}-[0-9]{2}$", IsDate);

    /// <summary>Three numbers: <c>1.0.0</c>.</summary>
    public static TextForm Edition { get; } = new(@"^[0-9]+\.[0-9]+\.[0-9]+$", IsEdition);

    private static bool IsName(string text, int dots)
    {
        var atStart = true;
        foreach (var character in text)
        {
            if (character == '.' && !atStart && dots > 0)
            {
                dots--;
                atStart = true;
                continue;
            }

            if (!char.IsLetter(character) && !char.IsDigit(character))
            {
                if (atStart || character is not ('-' or '_'))
                {
                    return false;
                }
            }

            atStart = false;
        }

        return !atStart;
    }

    private static bool IsColor(string text)
    {
        if (text.Length != 7 || text[0] != '#')
        {
            return false;
        }

        foreach (var character in text.AsSpan(1))
        {
            if (!char.IsAsciiHexDigit(character))
            {
                return false;
            }
        }

        return true;
    }

    private static bool IsDate(string text)
    {
        if (text.Length != 10)
        {
            return false;
        }

        for (var i = 0; i < text.Length; i++)
        {
            var fits = i is 4 or 7 ? text[i] == '-' : char.IsAsciiDigit(text[i]);
            if (!fits)
            {
                return false;
            }
        }

        return true;
    }

    private static bool IsEdition(string text)
    {
        var numbers = 0;
        var digits = 0;
        foreach (var character in text)
        {
            if (char.IsAsciiDigit(character))
            {
                digits++;
            }
            else if (character == '.' && digits > 0)
            {
                numbers++;
                digits = 0;
            }
            else
            {
                return false;
            }
        }

        return numbers == 2 && digits > 0;
    }
}
