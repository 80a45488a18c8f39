namespace PatternPress.Typesetting.Inlines;

/// <summary>Where a link leads.</summary>
public abstract record LinkTarget
{
    /// <summary>To an anchor of the same document.</summary>
    public sealed record ToAnchor(string Name) : LinkTarget;

    /// <summary>To an address on the web.</summary>
    public sealed record ToWeb(string Address) : LinkTarget;
}
