namespace PatternPress.Typesetting.Drawings;

/// <summary>How a label in a drawing looks. Sizes are distances on paper and do not grow or shrink with the drawing.</summary>
public sealed record LabelStyle
{
    public static readonly LabelStyle Plain = new();

    /// <summary>The font family; none takes that of running text.</summary>
    public string? Family { get; init; }

    public Points Size { get; init; } = new(8_000);

    public bool Bold { get; init; }

    public bool Italic { get; init; }

    public Ink Ink { get; init; } = Ink.Black;

    /// <summary>Which part of the label stands at the point, across.</summary>
    public LabelAcross Across { get; init; } = LabelAcross.Centre;

    /// <summary>Which part of the label stands at the point, up and down.</summary>
    public LabelDown Down { get; init; } = LabelDown.Middle;

    /// <summary>Turned by degrees about its point, clockwise.</summary>
    public double Degrees { get; init; }

    /// <summary>The width of a rim around the letters that keeps them legible on a busy ground; zero for none.</summary>
    public Points Halo { get; init; }

    public Ink HaloInk { get; init; } = Ink.White;
}
