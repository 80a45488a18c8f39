using System.Collections.Immutable;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Fonts;
using PatternPress.Typesetting.Inlines;
using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Pages;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Typesetting.Blocks;

/// <summary>A block with padding, a border and a background. Divided, each part has its whole border.</summary>
public sealed record Box(Block Content) : Block
{
    public Insets Padding { get; init; } = Insets.All(new(8_000));

    public Stroke? Border { get; init; }

    /// <summary>A heavier stroke along the left edge, as beside a note.</summary>
    public Stroke? LeftBar { get; init; }

    public Ink? Background { get; init; }

    /// <summary>Radius of the corners; zero for square ones.</summary>
    public Points CornerRadius { get; init; }

    public Points SpaceBefore { get; init; }

    public Points SpaceAfter { get; init; }

    public override Fit Fit(LayoutContext context, Room room) =>
        throw new NotImplementedException();
}
