using System.Collections.Immutable;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Fonts;
using PatternPress.Typesetting.Inlines;
using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Pages;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Typesetting.Blocks;

/// <summary>A paragraph. Lines break where words end; two lines at least stay together at the foot and head of a page.</summary>
/// <param name="Content">Its pieces in order.</param>
/// <param name="Style">The name of a text style.</param>
public sealed record Text(ImmutableArray<Inline> Content, string Style = StyleSheet.BodyName)
    : Block
{
    /// <summary>A paragraph of plain words; fractions written as in "2 1/2" are set as fractions.</summary>
    public Text(string words, string style = StyleSheet.BodyName)
        : this(FractionText.Parse(words), style) { }

    /// <summary>The alignment where it differs from the style's.</summary>
    public Alignment? Alignment { get; init; }

    /// <summary>What the paragraph is, for those who hear it; none when something around it says so.</summary>
    public TagRole? Role { get; init; } = TagRole.Paragraph;

    public override Fit Fit(LayoutContext context, Room room) =>
        throw new NotImplementedException();
}
