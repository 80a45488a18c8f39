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

    // A dot is looked at in so many places each way, as a page painted with smooth edges is.
    private const int Parts = 2;

    private readonly double[,] _ink = new double[Side + Reach, Side + (2 * Reach)];

    private static readonly ConcurrentDictionary<Hatch, HatchRaster> Painted = new();

    public static HatchRaster Of(Hatch hatch) =>
        Painted.GetOrAdd(hatch, one => new HatchRaster(one));

    /// <summary>Dots in one row that are measured.</summary>
    public const int Columns = Side + (2 * Reach);

    public const int Rows = Side + Reach;

    /// <summary>A hatch as it was painted elsewhere, four dots to the point.</summary>
    /// <param name="inkOf">Which share of a dot, by column and row, is ink.</param>
    public static HatchRaster Of(Func<int, int, double> inkOf) => new(inkOf);

    private HatchRaster(Func<int, int, double> inkOf)
    {
        for (int row = 0; row < Rows; row++)
        {
            for (int column = 0; column < Columns; column++)
            {
                _ink[row, column] = inkOf(column, row);
            }
        }
    }

    private HatchRaster(Hatch hatch)
    {
        HatchLayer.Lines[] layers = [.. hatch.Layers.OfType<HatchLayer.Lines>()];
        Parallel.For(
            0,
            Rows,
            row =>
            {
                for (int column = 0; column < Columns; column++)
                {
                    int inked = 0;
                    for (int part = 0; part < Parts * Parts; part++)
                    {
                        // From well inside, so that no coordinate is negative or special.
                        double x =
                                100 + ((column + (((part % Parts) + 0.5) / Parts)) / DotsPerPoint),
                            y = 100 + ((row + (((part / Parts) + 0.5) / Parts)) / DotsPerPoint);
                        inked += IsInked(layers, x, y) ? 1 : 0;
                    }
                    _ink[row, column] = (double)inked / (Parts * Parts);
                }
            }
        );
    }

    private static bool IsInked(HatchLayer.Lines[] layers, double x, double y)
    {
        foreach (HatchLayer.Lines layer in layers)
        {
            if (Covers(layer, x, y))
            {
                return true;
            }
        }
        return false;
    }

    /// <summary>Share of ink.</summary>
    public double Coverage
    {
        get
        {
            double sum = 0;
            foreach (double dot in _ink)
            {
                sum += dot;
            }
            return sum / _ink.Length;
        }
    }

    /// <summary>Darkness, then the likeness to itself moved by up to 6 pt each way.</summary>
    public double[] Look()
    {
        const int step = 2;
        double coverage = Coverage,
            spread = 0;
        foreach (double dot in _ink)
        {
            spread += (dot - coverage) * (dot - coverage);
        }
        spread = Math.Max(spread / _ink.Length, 1e-6);
        double[] ink = new double[Rows * Columns];
        Buffer.BlockCopy(_ink, 0, ink, 0, ink.Length * sizeof(double));
        var look = new List<double> { Math.Sqrt(coverage) };
        for (int dy = 0; dy <= Reach; dy += step)
        {
            for (int dx = -Reach; dx <= Reach; dx += step)
            {
                double both = 0;
                int seen = 0;
                for (int y = 0; y < Side; y += 2)
                {
                    int at = (y * Columns) + Reach,
                        moved = at + (dy * Columns) + dx;
                    for (int x = 0; x < Side; x += 2)
                    {
                        both += ink[at + x] * ink[moved + x];
                        seen++;
                    }
                }
                look.Add(((both / seen) - (coverage * coverage)) / spread);
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
