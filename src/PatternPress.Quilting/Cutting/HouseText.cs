using System.Globalization;
using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Cutting;

/// <summary>Measures in words, in the unit a house prints in.</summary>
internal static class HouseText
{
    public static string Of(Length length, LengthUnit unit) =>
        IsMetric(unit) ? LengthText.Centimetres(length) + " cm" : LengthText.Inches(length) + " in";

    /// <summary>What is bought: "1 3/8 yd" or "1.3 m".</summary>
    public static string Bought(Yardage yardage, LengthUnit unit) =>
        IsMetric(unit)
            ? (yardage.ToBuy.Centimetres.ToDouble() / 100).ToString(
                "0.###",
                CultureInfo.InvariantCulture
            ) + " m"
            : LengthText.Mixed(yardage.Yards) + " yd";

    public static bool IsMetric(LengthUnit unit) =>
        unit is LengthUnit.Millimetre or LengthUnit.Centimetre or LengthUnit.Metre;
}
