using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>
/// The pens and letters of all figures: the one place that says how thick a line and how large a letter is. All are
/// distances on paper at the printed size. No line is thinner than 0.35 pt, no letter smaller than 7 pt.
/// </summary>
public sealed record FigureStyle
{
    /// <summary>No line is thinner, in points.</summary>
    public const double ThinnestLine = 0.35;

    /// <summary>No letter is smaller, in points.</summary>
    public const double SmallestType = 7;

    /// <summary>Fabrics in their colours.</summary>
    public static FigureStyle Colored { get; } = new();

    /// <summary>Black lines, hatches and letters on white only.</summary>
    public static FigureStyle BlackOnly { get; } = new() { IsBlackOnly = true };

    /// <summary>The same figures for readers who need large print.</summary>
    public static FigureStyle LargePrint { get; } = new() { Enlarged = 18.0 / 10 };

    /// <summary>Whether nothing but black is printed.</summary>
    public bool IsBlackOnly { get; init; }

    /// <summary>How many times larger letters are than usual; lines grow with the root of it.</summary>
    public double Enlarged { get; init; } = 1;

    /// <summary>The family of labels; none for that of running text.</summary>
    public string? Family { get; init; }

    /// <summary>The thinnest line: seams inside a whole quilt.</summary>
    public Points Hair => Line(ThinnestLine);

    /// <summary>Seams between the patches of a block.</summary>
    public Points Seam => Line(0.5);

    /// <summary>The edge of a piece, a unit, a block.</summary>
    public Points Edge => Line(0.75);

    /// <summary>The outer edge of a quilt, lines to sew and cut.</summary>
    public Points Bold => Line(1.1);

    /// <summary>Letters inside patches and legends: the smallest type.</summary>
    public Points Small => Letter(SmallestType);

    /// <summary>Measures and keys.</summary>
    public Points Medium => Letter(8);

    /// <summary>Numbers of rows and steps.</summary>
    public Points Large => Letter(9.5);

    /// <summary>The ink of lines and letters.</summary>
    public Ink Ink => IsBlackOnly ? Ink.Black : Ink.Grey(0.1);

    /// <summary>The ink of lines that only accompany: guides, rulers, gaps.</summary>
    public Ink Quiet => IsBlackOnly ? Ink.Black : Ink.Grey(0.4);

    /// <summary>The ground of things that are not fabric of the pattern: batting, table, paper.</summary>
    public Ink Ground => IsBlackOnly ? Ink.White : Ink.Grey(0.94);

    internal Stroke Pen(Points width, Ink? ink = null) =>
        new(width, ink ?? Ink) { Join = StrokeJoin.Round, Cap = StrokeCap.Round };

    private Points Line(double points) => Points.Of(points * Math.Sqrt(Enlarged));

    private Points Letter(double points) => Points.Of(points * Enlarged);
}
