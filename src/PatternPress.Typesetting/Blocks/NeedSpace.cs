using System.Collections.Immutable;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Fonts;
using PatternPress.Typesetting.Inlines;
using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Pages;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Typesetting.Blocks;

/// <summary>Starts a block only where at least a given height is left, or all of it fits.</summary>
public sealed record NeedSpace(Points Height, Block Content) : Block
{
    public override Fit Fit(LayoutContext context, Room room) =>
        throw new NotImplementedException();
}
