using System.Buffers;
using System.Buffers.Text;
using PatternPress.Typesetting;

namespace PatternPress.Pdf.Content;

/// <summary>Collects the operators of a page (ISO 32000-1, annex A). Numbers are written with at most three decimals.</summary>
sealed class ContentStream
{
    readonly ArrayBufferWriter<byte> bytes = new(16 * 1024);

    public byte[] ToBytes() => bytes.WrittenSpan.ToArray();

    public ContentStream Number(double value)
    {
        var thousandths = (long)Math.Round(value * 1000, MidpointRounding.AwayFromZero);
        var span = bytes.GetSpan(32);
        var length = 0;
        if (thousandths < 0)
        {
            span[length++] = (byte)'-';
            thousandths = -thousandths;
        }

        var (whole, part) = (thousandths / 1000, (int)(thousandths % 1000));
        if (whole != 0 || part == 0)
        {
            Utf8Formatter.TryFormat(whole, span[length..], out var written);
            length += written;
        }

        if (part != 0)
        {
            span[length++] = (byte)'.';
            span[length++] = (byte)('0' + (part / 100));
            if (part % 100 != 0)
            {
                span[length++] = (byte)('0' + (part / 10 % 10));
                if (part % 10 != 0)
                {
                    span[length++] = (byte)('0' + (part % 10));
                }
            }
        }

        span[length++] = (byte)' ';
        bytes.Advance(length);
        return this;
    }

    /// <summary>A coordinate of a drawn shape: two decimals, a 1/7000 in, keep the file small.</summary>
    public ContentStream Place(double value) =>
        Number(Math.Round(value, 2, MidpointRounding.AwayFromZero));

    public ContentStream Numbers(params ReadOnlySpan<double> values)
    {
        foreach (var value in values)
        {
            Number(value);
        }

        return this;
    }

    /// <summary>An operator or anything else, as it is, and a line's end.</summary>
    public void Operator(string text)
    {
        Raw(text);
        Raw("\n");
    }

    public ContentStream Raw(string text)
    {
        var span = bytes.GetSpan(text.Length);
        for (var i = 0; i < text.Length; i++)
        {
            span[i] = (byte)text[i];
        }

        bytes.Advance(text.Length);
        return this;
    }

    /// <summary>Four hexadecimal digits, as a glyph in a string.</summary>
    public void Hex(ushort value)
    {
        const string digits = "0123456789abcdef";
        var span = bytes.GetSpan(4);
        span[0] = (byte)digits[value >> 12];
        span[1] = (byte)digits[(value >> 8) & 15];
        span[2] = (byte)digits[(value >> 4) & 15];
        span[3] = (byte)digits[value & 15];
        bytes.Advance(4);
    }

    /// <summary>A text string of any characters, as hexadecimal UTF-16 with its byte order mark.</summary>
    public ContentStream Words(string text)
    {
        Raw("<feff");
        foreach (var unit in text)
        {
            Hex(unit);
        }

        return Raw(">");
    }

    /// <summary>The operands of a colour: one for a grey, three for others; the operator's names for either.</summary>
    public void Colour(Ink ink, string grey, string colour)
    {
        if (ink.Red == ink.Green && ink.Green == ink.Blue)
        {
            Number(ink.Red / 255.0).Operator(grey);
        }
        else
        {
            Numbers(ink.Red / 255.0, ink.Green / 255.0, ink.Blue / 255.0).Operator(colour);
        }
    }
}
