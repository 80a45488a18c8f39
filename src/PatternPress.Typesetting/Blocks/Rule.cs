using System.Collections.Immutable;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Fonts;
using PatternPress.Typesetting.Inlines;
using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Pages;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Typesetting.Blocks;

/// <summary>A line across, set as an artifact.</summary>
public sealed record Rule(Stroke Stroke) : Block
{
    public Points SpaceBefore { get; init; }

    public Points SpaceAfter { get; init; }

    public override Fit Fit(LayoutContext context, Room room) =>
        throw new NotImplementedException();
}
