namespace PatternPress.Typesetting.Inlines;

/// <summary>Where a link leads.</summary>
public abstract record LinkTarget
{
    LinkTarget() { }

    /// <summary>What the link is called by a reader that speaks; the words that are linked where nothing is said.</summary>
    public string? Words { get; init; }

    /// <summary>To an anchor of the same document, by name.</summary>
    public sealed record ToAnchor(string Name) : LinkTarget;

    /// <summary>To an anchor of the same document, by its place in the order of all anchors: for the contents.</summary>
    public sealed record ToAnchorAt(int Index) : LinkTarget;

    /// <summary>To an address on the web.</summary>
    public sealed record ToWeb(string Address) : LinkTarget;
}
