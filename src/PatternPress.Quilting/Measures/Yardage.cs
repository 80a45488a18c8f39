namespace PatternPress.Quilting.Measures;

/// <summary>
/// A length of fabric as a shop sells it. Holds the exact need and rounds it up to the cuts a shop makes.
/// </summary>
/// <param name="Exactly">What is needed along the fabric, before rounding.</param>
/// <param name="ToBuy">The same rounded up to the shop's cut.</param>
public readonly record struct Yardage(Length Exactly, Length ToBuy)
{
    public static Yardage None => default;

    /// <summary>Yards to buy, as a fraction of a yard.</summary>
    public Rational Yards => (ToBuy.Inches / 36).One;

    /// <summary>Rounds up to the nearest of the allowed cuts.</summary>
    /// <param name="need">What is needed along the fabric.</param>
    /// <param name="step">The smallest step a shop cuts in: 1/8 yd (4 1/2 in), or 10 cm.</param>
    /// <param name="thirds">Whether thirds of a yard are cut as well.</param>
    public static Yardage RoundUp(Length need, Length step, bool thirds = false)
    {
        if (need.Sign <= 0)
        {
            return None;
        }
        Length up = new Ruler(step).Up(need);
        if (thirds)
        {
            up = Length.Min(up, new Ruler(Length.FromInches(12)).Up(need));
        }
        return new Yardage(need, up);
    }
}
