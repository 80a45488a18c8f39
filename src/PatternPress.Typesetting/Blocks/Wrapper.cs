using PatternPress.Typesetting.Layout;

namespace PatternPress.Typesetting.Blocks;

/// <summary>A block that changes how another one is placed, not how wide it is or what space it wants.</summary>
public abstract record Wrapper(Block Content) : Block
{
    public override WidthRange Widths(LayoutContext context) => Content.Widths(context);

    public override Spacing Spacing(LayoutContext context) => Content.Spacing(context);

    public override bool StaysWithNext(LayoutContext context) => Content.StaysWithNext(context);

    internal override Points? RhythmicBaseline(LayoutContext context) =>
        Content.RhythmicBaseline(context);

    public override bool IsBlank => Content.IsBlank;

    public override IEnumerable<Block> Children => [Content];
}
