using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Fonts;
using PatternPress.Typesetting.Inlines;
using PatternPress.Typesetting.Layout.Lines;
using PatternPress.Typesetting.Pages;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Typesetting.Layout;

/// <summary>What blocks need to know while one pass lays out a document, and where they report problems.</summary>
public sealed class LayoutContext
{
    readonly Dictionary<(LayoutProblemKind, string), LayoutProblem> problems = [];
    readonly Stack<object> origins = [];
    readonly Dictionary<string, PlacedAnchor> known = new(StringComparer.Ordinal);

    /// <param name="pageCount">How many pages the last pass gave; none in the first pass.</param>
    /// <param name="earlier">The context of the pass before, with the same styles.</param>
    /// <param name="anchors">Where anchors stood in the last pass; in the first pass all of them on page 0.</param>
    internal LayoutContext(
        TextMeasurer measurer,
        StyleSheet styles,
        int? pageCount = null,
        IReadOnlyList<PlacedAnchor>? anchors = null,
        LayoutContext? earlier = null
    )
    {
        Prepared = earlier?.Prepared ?? new(ReferenceEqualityComparer.Instance);
        Measurer = measurer;
        Styles = styles;
        PageCount = pageCount;
        Anchors = anchors ?? [];
        foreach (var anchor in Anchors)
        {
            // Links lead to the first of several places of one name.
            known.TryAdd(anchor.Name, anchor);
        }
    }

    /// <summary>Measures words.</summary>
    public TextMeasurer Measurer { get; }

    /// <summary>The named text styles.</summary>
    public StyleSheet Styles { get; }

    /// <summary>The page being filled, counted from 1.</summary>
    public int PageNumber { get; internal set; } = 1;

    /// <summary>The height that text has on the pages being filled.</summary>
    public Points BodyHeight { get; internal set; } = Points.Unlimited;

    /// <summary>The share of the spaces between blocks that is set.</summary>
    public double Density { get; internal set; } = 1;

    /// <summary>
    /// The distance of which lines of running text stand a whole multiple below the head of the text; zero where spaces are
    /// set closer to save a page.
    /// </summary>
    public Points Rhythm => Density == 1 ? Styles.Rhythm : Points.Zero;

    /// <summary>From the top of a line of running text to its baseline.</summary>
    internal Points BodyBaseline =>
        Paragraph.BaselineWithin(
            Measurer.Fonts.Find(Styles.Body.Family, Styles.Body.Bold, Styles.Body.Italic),
            Styles.Body
        );

    /// <summary>A space between two blocks at the density of the sequence.</summary>
    public Points Space(Points space) => Density == 1 ? space : space.Scale(Density);

    /// <summary>How many pages there are, as far as known.</summary>
    public int? PageCount { get; }

    /// <summary>All anchors of the document in order, with the pages of the last pass (0 where not known yet).</summary>
    public IReadOnlyList<PlacedAnchor> Anchors { get; }

    /// <summary>The problems so far, in the order first met.</summary>
    internal IEnumerable<LayoutProblem> Problems => problems.Values;

    /// <summary>Measured paragraphs by their pieces and style, kept from pass to pass.</summary>
    internal Dictionary<Inline[], (string Style, Paragraph Paragraph)> Prepared { get; }

    /// <summary>Offers a block a room. Every block asks its children through this, so that problems know their origin.</summary>
    public Fit Fit(Block block, Room room)
    {
        if (block.Origin is not { } origin)
        {
            return block.Fit(this, room);
        }

        origins.Push(origin);
        var fit = block.Fit(this, room);
        origins.Pop();
        return fit;
    }

    /// <summary>The page of an anchor as far as known: none for an unknown name, 0 when not laid out yet.</summary>
    public int? PageOf(string anchor) => known.GetValueOrDefault(anchor)?.Page;

    /// <summary>The style of a name; running text, and a problem, for a name the sheet does not have.</summary>
    public TextStyle Style(string name)
    {
        if (Styles.Find(name) is { } style)
        {
            if (!Measurer.Fonts.HasFamily(style.Family))
            {
                Report(
                    LayoutProblemKind.UnknownStyle,
                    $"there is no typeface '{style.Family}' for the text style '{name}'; another is used"
                );
            }

            return style;
        }

        Report(
            LayoutProblemKind.UnknownStyle,
            $"there is no text style '{name}'; running text is used"
        );
        return Styles.Body;
    }

    /// <summary>Notes a problem at the block being laid out.</summary>
    public void Report(
        LayoutProblemKind kind,
        string message,
        Points needed = default,
        Points available = default
    )
    {
        var origin = origins.Count > 0 ? origins.Peek() : null;
        // A block may be asked on one page and stand on the next: the last word counts.
        problems[(kind, message)] = new LayoutProblem(kind, message, PageNumber, origin)
        {
            Needed = needed,
            Available = available,
        };
    }

    /// <summary>What was reported so far, to go back to.</summary>
    internal Dictionary<(LayoutProblemKind, string), LayoutProblem> Reported() => new(problems);

    /// <summary>Forgets what was reported by an attempt that was given up.</summary>
    internal void Return(Dictionary<(LayoutProblemKind, string), LayoutProblem> reported)
    {
        problems.Clear();
        foreach (var (key, problem) in reported)
        {
            problems.Add(key, problem);
        }
    }

    internal IDisposable Within(object? origin) => new OriginScope(origins, origin);

    sealed class OriginScope : IDisposable
    {
        readonly Stack<object>? origins;

        public OriginScope(Stack<object> origins, object? origin)
        {
            if (origin is not null)
            {
                this.origins = origins;
                origins.Push(origin);
            }
        }

        public void Dispose() => origins?.Pop();
    }
}
