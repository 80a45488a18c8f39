using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Fonts;
using PatternPress.Typesetting.Inlines;

namespace PatternPress.Typesetting.Layout.Lines;

/// <summary>The smallest thing a paragraph is made of: letters without a break in them, a space, a drawing, a forced end.</summary>
sealed record Atom(AtomKind Kind, Points Width)
{
    public AtomLook Look { get; init; } = AtomLook.None;

    public ShapedText Shape { get; init; } = ShapedText.Empty;

    /// <summary>Whether a line may end after these letters without a space, as after a hyphen.</summary>
    public bool BreakAfter { get; init; }

    /// <summary>The hyphen shown when a line ends here at a soft hyphen.</summary>
    public ShapedText? Hyphen { get; init; }

    public Points HyphenWidth { get; init; }

    /// <summary>What the letters, together with neighbours of the same span, stand for where that differs.</summary>
    public AtomSpan? Span { get; init; }

    public InlineDrawing? Drawing { get; init; }

    /// <summary>The number of characters before the point at which columns of numbers line up; none if not in this atom.</summary>
    public int? NumberEnd { get; init; }
}

/// <summary>What some atoms together stand for: 12 5/16. Identity tells one span from the next.</summary>
sealed class AtomSpan(string actualText)
{
    public string ActualText { get; } = actualText;
}

enum AtomKind
{
    Letters,
    Space,
    Drawing,
    LineEnd,
}

/// <summary>How letters look and where a click on them leads; shared by all atoms of an inline.</summary>
sealed record AtomLook(
    FontFace? Face,
    Points Size,
    Ink Ink,
    Points Raise,
    bool Underlined,
    string? Language,
    LinkTarget? Link
)
{
    public static readonly AtomLook None = new(null, default, default, default, false, null, null);
}
