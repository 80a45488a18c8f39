using System.Collections.Immutable;
using PatternPress.Booklet.Looks;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Inlines;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Booklet.Words;

/// <summary>What Markdown needs to know to become blocks.</summary>
/// <param name="Theme">Colours of boxes.</param>
/// <param name="Labels">Headings of notes and warnings.</param>
public sealed record MarkdownSetting(Theme Theme, Labels Labels)
{
    /// <summary>To find faults only.</summary>
    internal static MarkdownSetting ForChecking { get; } =
        new(
            new Theme(
                Insets.None,
                Ink.Black,
                Ink.Black,
                Ink.Black,
                Ink.White,
                Ink.Black,
                new StyleSheet(Points.Zero, [])
            ),
            new Labels(ImmutableDictionary<string, string>.Empty)
        );

    /// <summary>The level of a first-level heading.</summary>
    public int FirstHeading { get; init; } = 2;

    /// <summary>The name that links use for the first heading; further ones get a number behind it.</summary>
    public string? Anchor { get; init; }

    /// <summary>Whether contents and bookmarks list the headings.</summary>
    public bool Listed { get; init; } = true;

    /// <summary>Style of paragraphs.</summary>
    public string Style { get; init; } = "body";

    /// <summary>What <c>![name](place:name)</c> stands for; null where pictures are not allowed.</summary>
    public ImmutableDictionary<string, ImmutableArray<Block>>? Places { get; init; }

    /// <summary>Names for the figures of numbered steps, so that a step's number leads to its figure; null for no such links.</summary>
    public Func<string>? NameFigure { get; init; }

    /// <summary>The link on a step's number.</summary>
    internal LinkTarget ToDiagram(string name, int step) =>
        new LinkTarget.ToAnchor(name) { Words = Labels.Format("to-diagram", step) };

    /// <summary>Titles of the sections that a text may point to, by name.</summary>
    public ImmutableDictionary<string, string> Sections { get; init; } =
        ImmutableDictionary<string, string>.Empty;

    /// <summary>Names of the sections that stand in the same document, so that links to them lead somewhere.</summary>
    public ImmutableHashSet<string> Present { get; init; } = [];
}

/// <summary>Something in a Markdown text that cannot be printed.</summary>
/// <param name="Kind">What.</param>
/// <param name="Text">The words to blame, as they stand in the text.</param>
public sealed record MarkdownFault(MarkdownFaultKind Kind, string Text);

public enum MarkdownFaultKind
{
    /// <summary>A picture.</summary>
    Picture,

    /// <summary>A link that is not to the web.</summary>
    UnsafeLink,

    /// <summary>A place that the section does not fill.</summary>
    UnknownPlace,

    /// <summary>Nested too deeply to be meant.</summary>
    TooDeep,
}
