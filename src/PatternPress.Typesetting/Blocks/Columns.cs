using System.Collections.Immutable;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Fonts;
using PatternPress.Typesetting.Inlines;
using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Pages;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Typesetting.Blocks;

/// <summary>Blocks side by side; as tall as the tallest. Divided only if every column can be.</summary>
public sealed record Columns(ImmutableArray<Column> Items) : Block
{
    public Columns(params IEnumerable<Column> items)
        : this([.. items]) { }

    /// <summary>The space between columns.</summary>
    public Points Gap { get; init; } = new(12_000);

    /// <summary>When a sharing column would get less than this, the columns are stacked instead; zero for never.</summary>
    public Points StackBelow { get; init; }

    public override Fit Fit(LayoutContext context, Room room) =>
        throw new NotImplementedException();
}
