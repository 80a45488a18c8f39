using System.Collections.Concurrent;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Tests.Booklet.Figures;

/// <summary>
/// A hatch of lines painted dot by dot from its definition alone, to measure how it looks. The lines lie and their
/// dashes start as the definition of <see cref="HatchLayer.Lines"/> says: on a grid through the origin.
/// </summary>
internal sealed class HatchRaster
{
    private const int Side = 160;
    private const int DotsPerPoint = 4;
    private const int Reach = 6 * DotsPerPoint;

    private readonly bool[,] _ink = new bool[Side + Reach, Side + (2 * Reach)];

    private static readonly ConcurrentDictionary<Hatch, HatchRaster> Painted = new();

    public static HatchRaster Of(Hatch hatch) =>
        Painted.GetOrAdd(hatch, one => new HatchRaster(one));

    private HatchRaster(Hatch hatch)
    {
        for (int row = 0; row < _ink.GetLength(0); row++)
        {
            for (int column = 0; column < _ink.GetLength(1); column++)
            {
                // From well inside, so that no coordinate is negative or special.
                double x = 100 + ((column + 0.5) / DotsPerPoint),
                    y = 100 + ((row + 0.5) / DotsPerPoint);
                _ink[row, column] = hatch
                    .Layers.OfType<HatchLayer.Lines>()
                    .Any(l => Covers(l, x, y));
            }
        }
    }

    /// <summary>Share of inked dots.</summary>
    public double Coverage
    {
        get
        {
            int count = 0;
            foreach (bool dot in _ink)
            {
                count += dot ? 1 : 0;
            }
            return (double)count / _ink.Length;
        }
    }

    /// <summary>Darkness, then the likeness to itself moved by up to 6 pt each way.</summary>
    public double[] Look()
    {
        const int step = 2;
        double coverage = Coverage;
        var look = new List<double> { Math.Sqrt(coverage) };
        for (int dy = 0; dy <= Reach; dy += step)
        {
            for (int dx = -Reach; dx <= Reach; dx += step)
            {
                int both = 0,
                    seen = 0;
                for (int y = 0; y < Side; y += 2)
                {
                    for (int x = Reach; x < Side + Reach; x += 2)
                    {
                        seen++;
                        both += _ink[y, x] && _ink[y + dy, x + dx] ? 1 : 0;
                    }
                }
                double together = (double)both / seen;
                look.Add(
                    (together - (coverage * coverage)) / Math.Max(coverage * (1 - coverage), 1e-6)
                );
            }
        }
        return [.. look];
    }

    /// <summary>How far apart two looks are: the difference of darkness, or the mean difference of texture.</summary>
    public static double Distance(double[] a, double[] b)
    {
        double tone = Math.Abs(a[0] - b[0]);
        double texture = Math.Sqrt(a.Skip(1).Zip(b.Skip(1), (x, y) => (x - y) * (x - y)).Average());
        return Math.Max(tone, texture);
    }

    private static bool Covers(HatchLayer.Lines lines, double x, double y)
    {
        (double sin, double cos) = Math.SinCos(lines.Degrees * Math.PI / 180);
        double along = (x * cos) + (y * sin),
            across = (y * cos) - (x * sin) - lines.Offset;
        long near = (long)Math.Round(across / lines.Spacing);
        for (long index = near - 1; index <= near + 1; index++)
        {
            double off = Math.Abs(across - (index * lines.Spacing));
            if (off > lines.Width / 2 && off > 0.5)
            {
                continue;
            }
            if (lines.Dashes.IsDefaultOrEmpty)
            {
                if (off <= lines.Width / 2)
                {
                    return true;
                }
                continue;
            }
            double period = lines.Dashes.Sum();
            double at = (along - (index % 2 != 0 ? lines.Stagger : 0)) % period;
            at = at < 0 ? at + period : at;
            if (lines.Dashes[0] == 0)
            {
                // Round dots at the starts of dashes.
                double to = Math.Min(at, period - at);
                if ((to * to) + (off * off) <= lines.Width * lines.Width / 4)
                {
                    return true;
                }
                continue;
            }
            if (off > lines.Width / 2)
            {
                continue;
            }
            double start = 0;
            for (int i = 0; i < lines.Dashes.Length; i += 2)
            {
                if (at >= start && at < start + lines.Dashes[i])
                {
                    return true;
                }
                start += lines.Dashes[i] + lines.Dashes[i + 1];
            }
        }
        return false;
    }
}
