using System.Buffers.Binary;
using System.Text;

namespace PatternPress.Pdf.Images;

/// <summary>
/// An ICC profile (ISO 15076-1, version 4) of sRGB (IEC 61966-2-1), made from the standard's own numbers: the primaries'
/// light adapted to the white of D50, and its transfer curve as a parametric curve.
/// </summary>
static class StandardProfile
{
    // Columns: what one unit of red, green and blue light gives relative to D50 (Bradford adaptation), as the ICC's
    // profile "sRGB2014.icc" has them. They add up to D50.
    static readonly (string Tag, double X, double Y, double Z)[] Colorants =
    [
        ("rXYZ", 0.43607, 0.22249, 0.01392),
        ("gXYZ", 0.38515, 0.71687, 0.09708),
        ("bXYZ", 0.14307, 0.06061, 0.71410),
    ];

    public static byte[] Write()
    {
        var tags = new List<(string Name, byte[] Data)>
        {
            ("desc", Words("sRGB")),
            ("cprt", Words("No copyright, use freely")),
            // D50, as the profile's own white; chad tells how D65 was adapted to it (Bradford).
            ("wtpt", Triple(0.9642, 1, 0.8249)),
            (
                "chad",
                [
                    .. Head("sf32"),
                    .. Fixed(
                        1.04788,
                        0.02292,
                        -0.05022,
                        0.02959,
                        0.99048,
                        -0.01707,
                        -0.00925,
                        0.01508,
                        0.75168
                    ),
                ]
            ),
        };
        foreach (var (tag, x, y, z) in Colorants)
        {
            tags.Add((tag, Triple(x, y, z)));
        }

        // Kind 3: ((a x + b)^g where x >= d, else c x).
        byte[] curve =
        [
            .. Head("para"),
            0,
            3,
            0,
            0,
            .. Fixed(2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045),
        ];
        foreach (var tag in new[] { "rTRC", "gTRC", "bTRC" })
        {
            tags.Add((tag, curve));
        }

        return Assembled(tags);
    }

    static byte[] Assembled(List<(string Name, byte[] Data)> tags)
    {
        var table = new List<byte>(Number(tags.Count));
        var data = new List<byte>();
        var start = 128 + 4 + (12 * tags.Count);
        var placed = new Dictionary<byte[], int>(ReferenceEqualityComparer.Instance);
        foreach (var (name, content) in tags)
        {
            // Tags of one content share it.
            if (!placed.TryGetValue(content, out var at))
            {
                at = start + data.Count;
                placed.Add(content, at);
                data.AddRange(content);
                data.AddRange(new byte[(4 - (data.Count % 4)) % 4]);
            }

            table.AddRange(Encoding.ASCII.GetBytes(name));
            table.AddRange(Number(at));
            table.AddRange(Number(content.Length));
        }

        var head = new byte[128];
        Number(start + data.Count).CopyTo(head, 0);
        head[8] = 4;
        head[9] = 0x20;
        Encoding.ASCII.GetBytes("mntrRGB XYZ ").CopyTo(head, 12);
        // A date is required; that of the standard.
        BinaryPrimitives.WriteUInt16BigEndian(head.AsSpan(24), 1999);
        head[27] = 10;
        head[29] = 18;
        Encoding.ASCII.GetBytes("acsp").CopyTo(head, 36);
        Fixed(0.9642, 1, 0.8249).CopyTo(head, 68);
        return [.. head, .. table, .. data];
    }

    static byte[] Head(string type) => [.. Encoding.ASCII.GetBytes(type), 0, 0, 0, 0];

    static byte[] Triple(double x, double y, double z) => [.. Head("XYZ "), .. Fixed(x, y, z)];

    static byte[] Words(string text) =>
        [
            .. Head("mluc"),
            .. Number(1),
            .. Number(12),
            .. Encoding.ASCII.GetBytes("enUS"),
            .. Number(text.Length * 2),
            .. Number(28),
            .. Encoding.BigEndianUnicode.GetBytes(text),
        ];

    static byte[] Number(int value)
    {
        var bytes = new byte[4];
        BinaryPrimitives.WriteInt32BigEndian(bytes, value);
        return bytes;
    }

    static byte[] Fixed(params ReadOnlySpan<double> values)
    {
        var bytes = new byte[4 * values.Length];
        for (var i = 0; i < values.Length; i++)
        {
            BinaryPrimitives.WriteInt32BigEndian(
                bytes.AsSpan(4 * i),
                (int)Math.Round(values[i] * 65536)
            );
        }

        return bytes;
    }
}
