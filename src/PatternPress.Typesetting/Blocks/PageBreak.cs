using PatternPress.Typesetting.Layout;

namespace PatternPress.Typesetting.Blocks;

/// <summary>Goes on with a new page, unless nothing stands on this one yet or nothing follows.</summary>
public sealed record PageBreak : Block
{
    public override Fit Fit(LayoutContext context, Room room) =>
        room.AtTop || room.IsEndless
            ? new Fit.Fits(Fragment.Empty)
            : new Fit.Moves("a new page begins here", room.Height + new Points(1));

    public override bool IsBlank => true;
}
