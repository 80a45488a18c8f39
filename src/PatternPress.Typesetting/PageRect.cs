namespace PatternPress.Typesetting;

/// <summary>A rectangle on a page: distances from its left and upper edge.</summary>
public readonly record struct PageRect(Points X, Points Y, Points Width, Points Height)
{
    public Points Right => X + Width;

    public Points Bottom => Y + Height;

    /// <summary>The same rectangle moved.</summary>
    public PageRect MovedBy(Points x, Points y) => new(X + x, Y + y, Width, Height);

    /// <summary>Whether another rectangle lies wholly inside this one.</summary>
    public bool Contains(PageRect other) =>
        other.X >= X && other.Y >= Y && other.Right <= Right && other.Bottom <= Bottom;

    /// <summary>What two rectangles share; no width or height when they only touch or lie apart.</summary>
    public PageRect Shared(PageRect other)
    {
        var (left, top) = (Points.Max(X, other.X), Points.Max(Y, other.Y));
        var (right, bottom) = (Points.Min(Right, other.Right), Points.Min(Bottom, other.Bottom));
        return right <= left || bottom <= top
            ? new(left, top, Points.Zero, Points.Zero)
            : new(left, top, right - left, bottom - top);
    }
}
