using System.Collections.Immutable;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Fonts;
using PatternPress.Typesetting.Inlines;
using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Pages;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Typesetting.Blocks;

/// <summary>Keeps a block on one page if it fits on one; what is taller than a page is divided.</summary>
public sealed record KeepTogether(Block Content) : Block
{
    public override Fit Fit(LayoutContext context, Room room) =>
        throw new NotImplementedException();
}
