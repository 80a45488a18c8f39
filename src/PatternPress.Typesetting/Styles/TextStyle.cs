using PatternPress.Typesetting.Drawings;

namespace PatternPress.Typesetting.Styles;

/// <summary>How a kind of text looks. Blocks name a style; the style sheet says what it is.</summary>
public sealed record TextStyle
{
    public string Family { get; init; } = "Lato";

    public Points Size { get; init; } = new(10_000);

    /// <summary>From baseline to baseline.</summary>
    public Points Leading { get; init; } = new(14_000);

    public bool Bold { get; init; }

    public bool Italic { get; init; }

    public Ink Ink { get; init; } = Ink.Black;

    /// <summary>Space above, unless at the top of a page. Spaces between two blocks do not add up: the larger counts.</summary>
    public Points SpaceBefore { get; init; }

    /// <summary>Space below.</summary>
    public Points SpaceAfter { get; init; }

    public Alignment Alignment { get; init; } = Alignment.Left;

    /// <summary>Indent of the first line.</summary>
    public Points Indent { get; init; }

    /// <summary>Added between letters; for small capitals and headings.</summary>
    public Points LetterSpacing { get; init; }

    /// <summary>Whether letters are shown as capitals.</summary>
    public bool Capitals { get; init; }

    /// <summary>All figures equally wide, so that columns of numbers line up.</summary>
    public bool TabularFigures { get; init; }

    /// <summary>Whether text in this style stays with what follows it, as headings do.</summary>
    public bool KeepWithNext { get; init; }

    /// <summary>Whether a paragraph in this style is never divided between pages.</summary>
    public bool KeepTogether { get; init; }

    /// <summary>Whether the lines of a paragraph are made about equally long: for headings and captions.</summary>
    public bool Balanced { get; init; }

    /// <summary>A rule above a heading in this style, from edge to edge.</summary>
    public Stroke? RuleAbove { get; init; }

    /// <summary>A rule below a heading in this style, from edge to edge.</summary>
    public Stroke? RuleBelow { get; init; }

    /// <summary>Ink of links; none leaves them in the text's ink.</summary>
    public Ink? LinkInk { get; init; }
}
