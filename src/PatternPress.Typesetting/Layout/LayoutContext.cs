using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Fonts;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Typesetting.Layout;

/// <summary>What blocks need to know while one pass lays out a document.</summary>
public sealed class LayoutContext
{
    internal LayoutContext(TextMeasurer measurer, StyleSheet styles)
    {
        Measurer = measurer;
        Styles = styles;
    }

    /// <summary>Measures words.</summary>
    public TextMeasurer Measurer { get; }

    /// <summary>The named text styles.</summary>
    public StyleSheet Styles { get; }

    /// <summary>The page being filled, counted from 1.</summary>
    public int PageNumber { get; internal set; } = 1;

    /// <summary>Offers a block a room. Every block asks its children through this, so that problems know their origin.</summary>
    public Fit Fit(Block block, Room room) => throw new NotImplementedException();
}
