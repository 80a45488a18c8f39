using System.Text;
using CsCheck;
using PatternPress.Source.Syntax;

namespace PatternPress.Tests.Source.Syntax;

/// <summary>
/// Writes random YAML by hand and remembers, for each character of each scalar's value, where in the text it put it.
/// Shares nothing with the reader under test.
/// </summary>
internal sealed class Scribe
{
    private readonly StringBuilder text = new();
    private readonly Random random;
    private readonly List<Written> scalars = [];

    /// <summary>After a block that keeps its last empty lines another would belong to it.</summary>
    private bool keptBreaks;

    private Scribe(int seed) => random = new Random(seed);

    /// <summary>A scalar as written: its value, style, and for each character its start and end in the text.</summary>
    internal sealed record Written(
        string Key,
        string Value,
        ScalarStyle Style,
        List<(int From, int To)> Places
    );

    internal sealed record Page(string Text, List<Written> Scalars);

    /// <summary>Random documents; a failing one is told by its seed.</summary>
    public static Gen<Page> Pages => Gen.Int[0, int.MaxValue - 1].Select(Write);

    public static Page Write(int seed)
    {
        var scribe = new Scribe(seed);
        scribe.WriteMap(indent: 0, depth: 0);
        return new Page(scribe.text.ToString(), scribe.scalars);
    }

    private bool Chance(int oneIn) => random.Next(oneIn) == 0;

    private void WriteMap(int indent, int depth)
    {
        var entries = random.Next(1, 6);
        for (var i = 0; i < entries; i++)
        {
            if (Chance(6))
            {
                text.Append(Chance(2) && !keptBreaks ? "\n" : "# a comment: with 'signs'\n");
            }

            var key = $"k{scalars.Count}-{i}-{depth}";
            text.Append(' ', indent).Append(key).Append(':');
            if (depth < 3 && Chance(4))
            {
                text.Append('\n');
                WriteMap(indent + random.Next(1, 4), depth + 1);
            }
            else if (depth < 3 && Chance(6))
            {
                WriteList(indent, depth, key);
            }
            else if (Chance(5))
            {
                WriteFlow(indent, key);
            }
            else
            {
                text.Append(' ', random.Next(1, 3));
                WriteScalar(key, indent, inFlow: false);
            }
        }
    }

    private void WriteList(int indent, int depth, string key)
    {
        text.Append('\n');
        var inner = indent + random.Next(0, 3);
        for (var i = random.Next(1, 4); i > 0; i--)
        {
            text.Append(' ', inner).Append("- ");
            WriteScalar(key, inner, inFlow: false);
        }
    }

    private void WriteFlow(int indent, string key)
    {
        var isMap = Chance(2);
        text.Append(isMap ? " {" : " [");
        var items = random.Next(0, 4);
        for (var i = 0; i < items; i++)
        {
            if (Chance(5))
            {
                text.Append('\n').Append(' ', indent + 2);
            }

            if (isMap)
            {
                text.Append($"f{i}: ");
            }

            WriteScalar(key, indent, inFlow: true);
            text.Append(i < items - 1 ? ", " : "");
        }

        text.Append(isMap ? "}" : "]").Append('\n');
    }

    private void WriteScalar(string key, int indent, bool inFlow)
    {
        var style = (ScalarStyle)random.Next(inFlow ? 3 : 5);
        var value = new StringBuilder();
        var places = new List<(int, int)>();
        switch (style)
        {
            case ScalarStyle.Plain:
                WritePlain(value, places, indent, inFlow);
                break;
            case ScalarStyle.SingleQuoted:
                WriteQuoted(value, places, indent, '\'');
                break;
            case ScalarStyle.DoubleQuoted:
                WriteQuoted(value, places, indent, '"');
                break;
            default:
                WriteBlock(value, places, indent, style == ScalarStyle.Folded);
                break;
        }

        keptBreaks = style is ScalarStyle.Literal or ScalarStyle.Folded;
        scalars.Add(new Written(key, value.ToString(), style, places));
        if (style is not (ScalarStyle.Literal or ScalarStyle.Folded) && !inFlow)
        {
            text.Append(Chance(5) ? " # note" : "").Append('\n');
        }
    }

    /// <summary>Puts one piece of text down that stands for one piece of the value.</summary>
    private void Put(StringBuilder value, List<(int, int)> places, string written, string meant)
    {
        var from = text.Length;
        text.Append(written);
        // A character outside the basic plane is two characters of the value; unescaped, each has its own place.
        for (var i = 0; i < meant.Length; i++)
        {
            places.Add(written == meant ? (from + i, from + i + 1) : (from, text.Length));
        }

        value.Append(meant);
    }

    private string Letter() =>
        random.Next(14) switch
        {
            0 => "é",
            1 => "½",
            2 => "漢",
            3 => "🧵",
            4 => "e\u0301",
            5 => "/",
            6 => "-",
            7 => "=",
            _ => ((char)('a' + random.Next(26))).ToString(),
        };

    private void WriteWord(StringBuilder value, List<(int, int)> places)
    {
        Put(
            value,
            places,
            ((char)('a' + random.Next(26))).ToString() is var first ? first : "",
            first
        );
        for (var i = random.Next(5); i > 0; i--)
        {
            var letter = Letter();
            Put(value, places, letter, letter);
        }
    }

    private void WritePlain(StringBuilder value, List<(int, int)> places, int indent, bool inFlow)
    {
        WriteWord(value, places);
        for (var i = random.Next(4); i > 0; i--)
        {
            if (Chance(4))
            {
                Fold(value, places, indent);
            }
            else
            {
                var blanks = new string(' ', random.Next(1, 3));
                Put(value, places, blanks, blanks);
            }

            WriteWord(value, places);
            if (!inFlow && Chance(5))
            {
                Put(value, places, ":x#,[", ":x#,[");
            }
        }
    }

    /// <summary>A line break within a plain or quoted scalar, perhaps with empty lines.</summary>
    private void Fold(StringBuilder value, List<(int, int)> places, int indent)
    {
        var from = text.Length;
        text.Append(' ', random.Next(2));
        var breaks = new List<int>();
        var count = Chance(3) ? random.Next(2, 4) : 1;
        for (var i = 0; i < count; i++)
        {
            breaks.Add(text.Length);
            text.Append('\n');
            text.Append(' ', i < count - 1 ? random.Next(3) : indent + random.Next(1, 4));
        }

        if (count == 1)
        {
            places.Add((from, text.Length));
            value.Append(' ');
            return;
        }

        foreach (var at in breaks.Skip(1))
        {
            places.Add((at, at + 1));
            value.Append('\n');
        }
    }

    private void WriteQuoted(StringBuilder value, List<(int, int)> places, int indent, char quote)
    {
        text.Append(quote);
        var pieces = random.Next(6);
        var mayFold = false;
        for (var i = 0; i < pieces; i++)
        {
            if (mayFold && i < pieces - 1 && Chance(5))
            {
                Fold(value, places, indent);
                mayFold = false;
            }
            else if (mayFold && quote == '"' && i < pieces - 1 && Chance(6))
            {
                // Joined without a blank: the backslash takes the break away.
                text.Append("\\\n").Append(' ', indent + random.Next(1, 4));
                mayFold = false;
            }
            else
            {
                WriteQuotedPiece(value, places, quote);
                mayFold = true;
            }
        }

        if (!mayFold && pieces > 0)
        {
            Put(value, places, "z", "z");
        }

        text.Append(quote);
    }

    private void WriteQuotedPiece(StringBuilder value, List<(int, int)> places, char quote)
    {
        switch (random.Next(quote == '"' ? 8 : 3))
        {
            case 0:
                Put(value, places, "#: {[", "#: {[");
                break;
            case 1 when quote == '\'':
                Put(value, places, "''", "'");
                break;
            case 1:
                Put(value, places, "\\\"", "\"");
                break;
            case 3:
                Put(value, places, "\\n", "\n");
                break;
            case 4:
                Put(value, places, "\\x41", "A");
                break;
            case 5:
                Put(value, places, "\\u00bd", "½");
                break;
            case 6:
                Put(value, places, "\\U0001F9F5", "🧵");
                break;
            case 7:
                Put(value, places, "\\\\", "\\");
                break;
            default:
                WriteWord(value, places);
                break;
        }
    }

    private void WriteBlock(StringBuilder value, List<(int, int)> places, int parent, bool folded)
    {
        var inner = random.Next(1, 5);
        var chomp = random.Next(3);
        var explicitIndent = Chance(3);
        text.Append(folded ? '>' : '|');
        text.Append(explicitIndent ? inner.ToString() : "")
            .Append(
                chomp switch
                {
                    0 => "",
                    1 => "-",
                    _ => "+",
                }
            );
        text.Append(Chance(5) ? " # note" : "").Append('\n');
        var lines = random.Next(1, 6);
        var breaks = new List<int>();
        var previousIndented = true;
        var written = false;
        for (var i = 0; i < lines; i++)
        {
            if (i > 0 && Chance(4))
            {
                text.Append(' ', random.Next(inner));
                breaks.Add(text.Length);
                text.Append('\n');
                continue;
            }

            text.Append(' ', parent + inner);
            var indented = (written || explicitIndent) && Chance(4);
            EndLines(value, places, breaks, folded && !indented && !previousIndented && written);
            if (indented)
            {
                Put(value, places, "  ", "  ");
            }

            WriteWord(value, places);
            for (var words = random.Next(4); words > 0; words--)
            {
                Put(value, places, " ", " ");
                WriteWord(value, places);
            }

            previousIndented = indented;
            written = true;
            breaks.Add(text.Length);
            text.Append('\n');
        }

        var kept = chomp switch
        {
            0 => 1,
            1 => 0,
            _ => breaks.Count,
        };
        EndLines(value, places, breaks.Take(kept).ToList(), fold: false);
    }

    private void EndLines(StringBuilder value, List<(int, int)> places, List<int> breaks, bool fold)
    {
        if (fold && breaks.Count == 1)
        {
            places.Add((breaks[0], text.Length));
            value.Append(' ');
        }
        else
        {
            foreach (var at in fold ? breaks.Skip(1) : breaks)
            {
                places.Add((at, at + 1));
                value.Append('\n');
            }
        }

        breaks.Clear();
    }
}
