using PatternPress.Typesetting.Layout;

namespace PatternPress.Typesetting.Blocks;

/// <summary>
/// Starts a block only where at least a given height is left and a good part of that is filled, or all of it fits.
/// </summary>
public sealed record NeedSpace(Points Height, Block Content) : Wrapper(Content)
{
    const double LeastFilled = 0.4;

    public override Fit Fit(LayoutContext context, Room room) =>
        context.Fit(Content, room) switch
        {
            Fit.Splits _ when !room.AtTop && room.Height < Height => new Fit.Moves(
                $"{Height} pt are asked for, {room.Height} pt are left",
                Height
            ),
            // Its next part needs more than is left: a heading with a line or two would stand over empty paper.
            Fit.Splits { Fragment: var part }
                when !room.AtTop && part.Height < Height.Scale(LeastFilled) => new Fit.Moves(
                $"{part.Height} pt of {room.Height} pt would be filled",
                room.Height + new Points(1)
            ),
            var fit => fit,
        };
}
