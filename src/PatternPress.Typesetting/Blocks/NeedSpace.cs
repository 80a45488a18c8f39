using PatternPress.Typesetting.Layout;

namespace PatternPress.Typesetting.Blocks;

/// <summary>Starts a block only where at least a given height is left, or all of it fits.</summary>
public sealed record NeedSpace(Points Height, Block Content) : Wrapper(Content)
{
    public override Fit Fit(LayoutContext context, Room room) =>
        context.Fit(Content, room) switch
        {
            Fit.Splits _ when !room.AtTop && room.Height < Height => new Fit.Moves(
                $"{Height} pt are asked for, {room.Height} pt are left",
                Height
            ),
            var fit => fit,
        };
}
