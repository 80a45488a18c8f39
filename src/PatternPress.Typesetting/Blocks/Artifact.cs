using System.Collections.Immutable;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Fonts;
using PatternPress.Typesetting.Inlines;
using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Pages;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Typesetting.Blocks;

/// <summary>Shows a block without reading it aloud: decoration, or what is said elsewhere.</summary>
public sealed record Artifact(Block Content) : Block
{
    public override Fit Fit(LayoutContext context, Room room) =>
        throw new NotImplementedException();
}
