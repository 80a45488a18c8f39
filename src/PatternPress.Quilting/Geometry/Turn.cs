namespace PatternPress.Quilting.Geometry;

/// <summary>A number of quarter turns clockwise, 0 to 3.</summary>
public readonly record struct Turn
{
    public Turn(int quarters) => Quarters = ((quarters % 4) + 4) % 4;

    public int Quarters { get; }

    public int Degrees => Quarters * 90;

    /// <summary>Whether width and height change places.</summary>
    public bool SwapsSides => Quarters % 2 == 1;

    public static Turn None => default;

    public static Turn operator +(Turn a, Turn b) => new(a.Quarters + b.Quarters);
}
