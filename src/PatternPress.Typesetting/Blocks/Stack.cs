using System.Collections.Immutable;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Fonts;
using PatternPress.Typesetting.Inlines;
using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Pages;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Typesetting.Blocks;

/// <summary>Blocks below one another.</summary>
public sealed record Stack(ImmutableArray<Block> Items) : Block
{
    public Stack(params IEnumerable<Block> items)
        : this([.. items]) { }

    /// <summary>The least space between two items; dropped at the top of a page.</summary>
    public Points Gap { get; init; }

    /// <summary>Every item starts at a whole multiple of this distance from the top; zero for none.</summary>
    public Points Rhythm { get; init; }

    public override Fit Fit(LayoutContext context, Room room) =>
        throw new NotImplementedException();
}
