using System.Collections.Immutable;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Fonts;
using PatternPress.Typesetting.Inlines;
using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Pages;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Typesetting.Blocks;

/// <summary>A named place without height, kept with what follows.</summary>
/// <param name="Name">The name links and page references use.</param>
/// <param name="Level">1 to 6 to be listed in bookmarks and contents; 0 to be linked to only.</param>
/// <param name="Title">The words listed.</param>
public sealed record Anchor(string Name, int Level = 0, string Title = "") : Block
{
    public override Fit Fit(LayoutContext context, Room room) =>
        throw new NotImplementedException();
}
