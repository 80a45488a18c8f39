using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Tables;

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

    /// <summary>"5 fat quarters", "2 squares of 10 in".</summary>
    public string Panels(string kind, long count) =>
        Labels.Count($"panel-{PanelLabel(kind)}", count);

    /// <summary>Several of them, without a number: "fat quarters".</summary>
    public string PanelName(string kind) => Labels[$"panel-{PanelLabel(kind)}-name"];

    private static string PanelLabel(string kind) =>
        kind switch
        {
            "fat quarters" => "fat-quarter",
            "fat eighths" => "fat-eighth",
            "2 1/2 in strips" => "strip",
            "10 in squares" => "large-square",
            "5 in squares" => "small-square",
            _ => "own",
        };

    /// <summary>What to buy: yardage, or panels.</summary>
    public string Bought(RequirementCell cell) =>
        cell.Panels is { } panels ? Panels(panels.Kind, panels.ToBuy) : Yards(cell.Yardage);

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
