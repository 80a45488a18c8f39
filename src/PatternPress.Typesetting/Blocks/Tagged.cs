using System.Collections.Immutable;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Fonts;
using PatternPress.Typesetting.Inlines;
using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Pages;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Typesetting.Blocks;

/// <summary>Says what a block is, for those who hear it. Divided, the parts belong to the same tag.</summary>
public sealed record Tagged(TagRole Role, Block Content) : Block
{
    /// <summary>Read aloud instead of the content.</summary>
    public string? Alt { get; init; }

    /// <summary>The characters that the content stands for.</summary>
    public string? ActualText { get; init; }

    /// <summary>The language where it differs (BCP 47).</summary>
    public string? Language { get; init; }

    public override Fit Fit(LayoutContext context, Room room) =>
        throw new NotImplementedException();
}
