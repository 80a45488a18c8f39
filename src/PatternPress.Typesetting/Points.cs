using System.Globalization;

namespace PatternPress.Typesetting;

/// <summary>
/// A distance on paper, kept as a whole number of thousandths of a point (1 pt = 1/72 in). Whole numbers make layout
/// the same on every machine and need no tolerances.
/// </summary>
/// <param name="Thousandths">The distance in 1/1000 pt.</param>
public readonly record struct Points(long Thousandths) : IComparable<Points>
{
    /// <summary>No distance.</summary>
    public static readonly Points Zero;

    /// <summary>More than any page needs (about 1.2 million sheets): stands for "without limit".</summary>
    public static readonly Points Unlimited = new(1_000_000_000_000);

    /// <summary>The nearest distance to a number of points.</summary>
    public static Points Of(double points) =>
        new((long)Math.Round(points * 1000, MidpointRounding.AwayFromZero));

    /// <summary>The nearest distance to a number of inches.</summary>
    public static Points FromInches(double inches) => Of(inches * 72);

    /// <summary>The nearest distance to a number of millimetres.</summary>
    public static Points FromMillimetres(double millimetres) => Of(millimetres * 72 / 25.4);

    /// <summary>The distance as a number of points, for drawing.</summary>
    public double Value => Thousandths / 1000.0;

    public static Points operator +(Points a, Points b) => new(a.Thousandths + b.Thousandths);

    public static Points operator -(Points a, Points b) => new(a.Thousandths - b.Thousandths);

    public static Points operator -(Points a) => new(-a.Thousandths);

    public static Points operator *(Points a, long times) => new(a.Thousandths * times);

    public static Points operator /(Points a, long parts) => new(a.Thousandths / parts);

    public static bool operator <(Points a, Points b) => a.Thousandths < b.Thousandths;

    public static bool operator >(Points a, Points b) => a.Thousandths > b.Thousandths;

    public static bool operator <=(Points a, Points b) => a.Thousandths <= b.Thousandths;

    public static bool operator >=(Points a, Points b) => a.Thousandths >= b.Thousandths;

    /// <summary>The distance times a factor, rounded to the nearest thousandth.</summary>
    public Points Scale(double factor) =>
        new((long)Math.Round(Thousandths * factor, MidpointRounding.AwayFromZero));

    /// <summary>This distance or the next larger whole multiple of a step; unchanged when the step is zero.</summary>
    public Points UpTo(Points step)
    {
        if (step.Thousandths <= 0)
        {
            return this;
        }

        var over = Thousandths % step.Thousandths;
        return over == 0 ? this
            : over > 0 ? new(Thousandths + step.Thousandths - over)
            : new(Thousandths - over);
    }

    public static Points Max(Points a, Points b) => a > b ? a : b;

    public static Points Min(Points a, Points b) => a < b ? a : b;

    public int CompareTo(Points other) => Thousandths.CompareTo(other.Thousandths);

    /// <summary>The distance in points with at most three decimals, for example <c>12.5</c>.</summary>
    public override string ToString() => Value.ToString("0.###", CultureInfo.InvariantCulture);
}
