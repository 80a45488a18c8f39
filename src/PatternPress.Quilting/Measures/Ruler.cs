namespace PatternPress.Quilting.Measures;

/// <summary>
/// The marks a maker can cut to. The one place where a length is rounded: cut sizes go up to the next mark, so
/// that what is cut is never too small.
/// </summary>
/// <param name="Step">Distance between marks: 1/8 in, or 1/2 cm in a metric edition.</param>
public readonly record struct Ruler(Length Step)
{
    /// <summary>The eighth-inch ruler (common practice, no source).</summary>
    public static Ruler Eighths => new(Length.FromInches(0, 1, 8));

    /// <summary>The half-centimetre ruler (common practice, no source).</summary>
    public static Ruler HalfCentimetres => new(Length.FromCentimetres(new Rational(1, 2)));

    public bool Shows(Length length) => Up(length) == length;

    /// <summary>The least mark not below <paramref name="length"/>.</summary>
    public Length Up(Length length) => Step * Marks(length).Ceiling();

    /// <summary>The greatest mark not above <paramref name="length"/>.</summary>
    public Length Down(Length length) => Step * Marks(length).Floor();

    /// <summary>The nearest mark; halves go up.</summary>
    public Length Nearest(Length length) => Step * (Marks(length) + new Rational(1, 2)).Floor();

    private Exact Marks(Length length) => length.Inches / Step.Inches.One;
}
