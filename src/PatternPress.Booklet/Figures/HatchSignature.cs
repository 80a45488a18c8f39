using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>What the eye takes in of a hatch: how dark it is, which way its lines run, what it is made of.</summary>
public sealed record HatchSignature
{
    public HatchSignature(Hatch hatch, double scale)
    {
        Hatch = hatch;
        Scale = scale;
        Layers = hatch.Layers.Length;
        double area = 0,
            solid = 0,
            broken = 0,
            wavy = 0,
            shaped = 0,
            spacing = 0;
        double alongX = 0,
            alongY = 0,
            crossX = 0,
            crossY = 0;
        foreach (HatchLayer layer in hatch.Layers)
        {
            double share = ShareOf(layer);
            area += share;
            spacing += SpacingOf(layer) * share;
            switch (layer)
            {
                case HatchLayer.Lines lines:
                    bool dotted = lines.Dashes is [0, ..];
                    if (lines.Dashes.IsDefaultOrEmpty)
                    {
                        solid += share;
                    }
                    else if (dotted)
                    {
                        shaped += share;
                    }
                    else
                    {
                        broken += share;
                    }
                    if (!dotted)
                    {
                        Turn(lines.Degrees, share);
                    }
                    break;
                case HatchLayer.Waves waves:
                    wavy += share;
                    Turn(waves.Degrees, share);
                    break;
                default:
                    shaped += share;
                    break;
            }
        }
        Coverage = Math.Min(1, area);
        if (area > 0)
        {
            (Solid, Broken, Wavy, Shaped) = (
                solid / area,
                broken / area,
                wavy / area,
                shaped / area
            );
            (AlongX, AlongY) = (alongX / area, alongY / area);
            (CrossX, CrossY) = (crossX / area, crossY / area);
            Spacing = spacing / area * scale;
        }

        // Lines have no front end: doubled angles make 0° and 180° the same.
        void Turn(double degrees, double share)
        {
            double doubled = degrees * Math.PI / 90;
            alongX += Math.Cos(doubled) * share;
            alongY += Math.Sin(doubled) * share;
            crossX += Math.Cos(2 * doubled) * share;
            crossY += Math.Sin(2 * doubled) * share;
        }
    }

    public Hatch Hatch { get; }

    public double Scale { get; }

    /// <summary>Share of the area that is inked, 0 to 1.</summary>
    public double Coverage { get; }

    /// <summary>Share of the ink in unbroken straight lines.</summary>
    public double Solid { get; }

    public double Broken { get; }

    public double Wavy { get; }

    /// <summary>Share of the ink in dots and shapes.</summary>
    public double Shaped { get; }

    /// <summary>Which way the lines run, as the mean direction of doubled angles; 0 where they cross evenly or there are none.</summary>
    public double AlongX { get; }

    public double AlongY { get; }

    /// <summary>The same for angles taken four times: tells an upright grid from a slanted one.</summary>
    public double CrossX { get; }

    public double CrossY { get; }

    /// <summary>How many sets of lines lie over each other.</summary>
    public int Layers { get; }

    /// <summary>Mean distance between lines or shapes on paper, in points.</summary>
    public double Spacing { get; }

    /// <summary>From 0 (nothing alike) to 1 (the same).</summary>
    public double LikenessTo(HatchSignature other)
    {
        double kind =
            (
                Math.Abs(Solid - other.Solid)
                + Math.Abs(Broken - other.Broken)
                + Math.Abs(Wavy - other.Wavy)
                + Math.Abs(Shaped - other.Shaped)
            ) / 2;
        double turn = Apart(AlongX - other.AlongX, AlongY - other.AlongY);
        double cross = Apart(CrossX - other.CrossX, CrossY - other.CrossY);
        // Tones are told apart by their ratio, as steps of a grey scale are.
        double tone = Math.Min(
            1,
            Math.Abs(Math.Log((Coverage + 0.02) / (other.Coverage + 0.02))) / 1.6
        );
        double size = Math.Min(1, Math.Abs(Math.Log((Spacing + 0.5) / (other.Spacing + 0.5))));
        double build = Math.Min(1, Math.Abs(Layers - other.Layers) / 2.0);
        double apart =
            (0.8 * kind)
            + (0.8 * turn)
            + (0.5 * cross)
            + (0.8 * tone)
            + (0.4 * size)
            + (0.3 * build);
        return Math.Exp(-2 * apart);
    }

    private static double Apart(double x, double y) => Math.Sqrt((x * x) + (y * y)) / 2;

    private static double ShareOf(HatchLayer layer) =>
        layer switch
        {
            HatchLayer.Lines l => l.Width / l.Spacing * DashShare(l),
            // A zigzag is longer than the straight line it follows.
            HatchLayer.Waves w => w.Width
                / w.Spacing
                * Math.Sqrt(1 + (16 * w.Height * w.Height / (w.Length * w.Length))),
            HatchLayer.Shapes s => ShapeShare(s),
            _ => 0,
        };

    private static double DashShare(HatchLayer.Lines lines)
    {
        if (lines.Dashes.IsDefaultOrEmpty)
        {
            return 1;
        }
        double on = 0,
            all = 0;
        for (int i = 0; i < lines.Dashes.Length; i++)
        {
            double dash = lines.Dashes[i];
            all += dash;
            if (i % 2 == 0)
            {
                // A dash of no length is a round dot as wide as the line.
                on += dash == 0 ? lines.Width * Math.PI / 4 : dash;
            }
        }
        return all > 0 ? on / all : 1;
    }

    private static double ShapeShare(HatchLayer.Shapes shapes)
    {
        double box = shapes.Size * shapes.Size;
        double filled = shapes.Shape switch
        {
            HatchShape.Square => 1,
            HatchShape.Ring => Math.PI / 4,
            _ => 0.5,
        };
        double outline = shapes.Shape switch
        {
            HatchShape.Square => 4,
            HatchShape.Ring => Math.PI,
            HatchShape.Plus or HatchShape.Cross or HatchShape.Chevron => 2,
            _ => 3,
        };
        double ink = shapes.Filled
            ? box * filled
            : Math.Min(box, shapes.Size * shapes.Width * outline);
        return ink / (shapes.Spacing * shapes.Spacing);
    }

    private static double SpacingOf(HatchLayer layer) =>
        layer switch
        {
            HatchLayer.Lines l => l.Spacing,
            HatchLayer.Waves w => w.Spacing,
            HatchLayer.Shapes s => s.Spacing,
            _ => 0,
        };
}
