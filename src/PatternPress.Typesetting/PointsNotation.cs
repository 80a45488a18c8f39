namespace PatternPress.Typesetting;

/// <summary>Lets a distance on paper be written where it is used: <c>12.Pt</c>, <c>0.5.Inch</c>, <c>210.Mm</c>.</summary>
[System.Diagnostics.CodeAnalysis.SuppressMessage(
    "Naming",
    "CA1708",
    Justification = "The two extension blocks have no names that could differ by case."
)]
public static class PointsNotation
{
    extension(int value)
    {
        public Points Pt => new(value * 1000L);

        public Points Inch => new(value * 72_000L);

        public Points Mm => Points.FromMillimetres(value);
    }

    extension(double value)
    {
        public Points Pt => Points.Of(value);

        public Points Inch => Points.FromInches(value);

        public Points Mm => Points.FromMillimetres(value);
    }

    /// <summary>The sum of some distances.</summary>
    public static Points Sum(this IEnumerable<Points> distances) =>
        new(distances.Sum(one => one.Thousandths));
}
