using PatternPress.Typesetting.Layout;

namespace PatternPress.Typesetting.Blocks;

/// <summary>Keeps a block on the page on which the next one begins. The stack around both sees to it.</summary>
public sealed record KeepWithNext(Block Content) : Wrapper(Content)
{
    public override Fit Fit(LayoutContext context, Room room) => context.Fit(Content, room);

    public override bool StaysWithNext(LayoutContext context) => true;
}
