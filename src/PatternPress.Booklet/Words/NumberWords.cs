using PatternPress.Quilting.Measures;

namespace PatternPress.Booklet.Words;

/// <summary>
/// Writes measures as the pattern prints them: inches as mixed numbers and yards, or centimetres and metres.
/// </summary>
/// <param name="Unit">Inch or centimetre; any metric unit counts as centimetre.</param>
/// <param name="Labels">The names of the units.</param>
public sealed record NumberWords(LengthUnit Unit, Labels Labels)
{
    private const char NoBreakSpace = '\u00a0';

    public bool IsMetric => Unit is not (LengthUnit.Inch or LengthUnit.Yard);

    /// <summary>"3 1/2 in" or "9 cm".</summary>
    public string Measure(Length length) => $"{Number(length)}{NoBreakSpace}{UnitName}";

    /// <summary>"3 1/2 × 6 1/2 in".</summary>
    public string Size(Length width, Length height) =>
        $"{Number(width)}{NoBreakSpace}×{NoBreakSpace}{Number(height)}{NoBreakSpace}{UnitName}";

    /// <summary>"3 1/2 in square", or a size where the sides differ.</summary>
    public string Square(Length width, Length height) =>
        width == height ? Labels.Format("square-of", Measure(width)) : Size(width, height);

    /// <summary>"1 3/8 yd" or "1.3 m"; a dash for nothing.</summary>
    public string Yards(Yardage yardage)
    {
        if (yardage.ToBuy.Sign <= 0)
        {
            return Labels["none"];
        }
        return IsMetric
            ? $"{Decimal(yardage.ToBuy.Centimetres.ToDouble() / 100)}{NoBreakSpace}{Labels["unit-metre"]}"
            : $"{LengthText.Mixed(yardage.Yards)}{NoBreakSpace}{Labels["unit-yard"]}";
    }

    /// <summary>The number alone: "3 1/2". A length with a root in it is given to the nearest mark of a ruler.</summary>
    public string Number(Length length)
    {
        if (IsMetric)
        {
            return LengthText.Centimetres(length);
        }
        Length shown = length.Inches.IsRational ? length : Ruler.Eighths.Nearest(length);
        return LengthText.Inches(shown);
    }

    private string UnitName => Labels[IsMetric ? "unit-centimetre" : "unit-inch"];

    private static string Decimal(double value) => Math.Round(value, 2).ToString("0.##");
}
