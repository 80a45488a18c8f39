using PatternPress.Typesetting.Layout;

namespace PatternPress.Typesetting.Blocks;

/// <summary>Empty space, dropped at the top of a page and where not enough of the page is left.</summary>
public sealed record Gap(Points Height) : Block
{
    public override Fit Fit(LayoutContext context, Room room)
    {
        var height = context.Space(Height);
        return new Fit.Fits(
            room.AtTop || height > room.Height
                ? Fragment.Empty
                : new Fragment(Points.Zero, height, [])
        );
    }

    public override bool IsBlank => true;
}
