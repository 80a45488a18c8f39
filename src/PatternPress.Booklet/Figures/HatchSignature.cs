using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>What the eye takes in of a hatch: how dark it is, which way its lines run, what it is made of.</summary>
public sealed record HatchSignature
{
    public HatchSignature(Hatch hatch, double scale)
    {
        Hatch = hatch;
        Scale = scale;
        double area = 0,
            solid = 0,
            broken = 0,
            wavy = 0,
            shaped = 0,
            spacing = 0;
        double alongX = 0,
            alongY = 0;
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
            Spacing = spacing / area * scale;
        }

        // Lines have no front end: doubled angles make 0° and 180° the same.
        void Turn(double degrees, double share)
        {
            double doubled = degrees * Math.PI / 90;
            alongX += Math.Cos(doubled) * share;
            alongY += Math.Sin(doubled) * share;
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
        double turn =
            Math.Sqrt(
                ((AlongX - other.AlongX) * (AlongX - other.AlongX))
                    + ((AlongY - other.AlongY) * (AlongY - other.AlongY))
            ) / 2;
        // Tones are told apart by their ratio, as steps of a grey scale are.
        double tone = Math.Min(
            1,
            Math.Abs(Math.Log((Coverage + 0.02) / (other.Coverage + 0.02))) / 1.6
        );
        double size = Math.Min(1, Math.Abs(Math.Log((Spacing + 0.5) / (other.Spacing + 0.5))));
        double apart = (0.8 * kind) + (0.9 * turn) + (0.8 * tone) + (0.4 * size);
        return Math.Exp(-2 * apart);
    }

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
