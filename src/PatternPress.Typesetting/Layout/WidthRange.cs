namespace PatternPress.Typesetting.Layout;

/// <summary>The widths a block can use.</summary>
/// <param name="Least">Narrower than this, something sticks out: the widest word.</param>
/// <param name="Natural">With this much no line needs to be broken.</param>
public readonly record struct WidthRange(Points Least, Points Natural)
{
    public WidthRange Plus(Points extra) => new(Least + extra, Natural + extra);

    public WidthRange Or(WidthRange other) =>
        new(Points.Max(Least, other.Least), Points.Max(Natural, other.Natural));
}
