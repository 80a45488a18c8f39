using System.Collections.Immutable;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Fonts;
using PatternPress.Typesetting.Inlines;
using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Pages;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Typesetting.Blocks;

/// <summary>Empty space, dropped at the top of a page and where no room is left.</summary>
public sealed record Gap(Points Height) : Block
{
    public override Fit Fit(LayoutContext context, Room room) =>
        throw new NotImplementedException();
}
