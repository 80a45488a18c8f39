using System.Collections.Immutable;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Fonts;
using PatternPress.Typesetting.Inlines;
using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Pages;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Typesetting.Blocks;

/// <summary>The table of contents: the document's anchors with their pages, linked.</summary>
public sealed record Contents : Block
{
    /// <summary>The lowest level listed.</summary>
    public int Depth { get; init; } = 2;

    /// <summary>The style of each entry is <c>contents1</c>, <c>contents2</c> ... with this beginning; unknown ones fall back to running text.</summary>
    public string StylePrefix { get; init; } = "contents";

    /// <summary>Indent of each level below the first.</summary>
    public Points Indent { get; init; } = new(14_000);

    /// <summary>Which anchors are listed, by name; none lists all.</summary>
    public Func<string, bool>? Filter { get; init; }

    public override Fit Fit(LayoutContext context, Room room) =>
        throw new NotImplementedException();
}
