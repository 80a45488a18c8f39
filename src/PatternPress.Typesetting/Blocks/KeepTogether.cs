using PatternPress.Typesetting.Layout;

namespace PatternPress.Typesetting.Blocks;

/// <summary>Keeps a block on one page if it fits on one; what is taller than a page is divided from the top of a page on.</summary>
public sealed record KeepTogether(Block Content) : Wrapper(Content)
{
    /// <summary>
    /// The share of a page that may be left empty to keep the block together; where more would be, it is divided.
    /// </summary>
    public double MostEmpty { get; init; } = 1;

    public override Fit Fit(LayoutContext context, Room room) =>
        context.Fit(Content, room) switch
        {
            Fit.Splits _
                when !room.AtTop
                    && (MostEmpty == 1 || room.Height <= context.BodyHeight.Scale(MostEmpty)) =>
                new Fit.Moves(
                    $"what is kept together needs more than {room.Height} pt",
                    room.Height + new Points(1)
                ),
            var fit => fit,
        };
}
