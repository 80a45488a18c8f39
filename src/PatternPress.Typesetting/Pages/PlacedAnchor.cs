namespace PatternPress.Typesetting.Pages;

/// <summary>Where an anchor came to stand.</summary>
public sealed record PlacedAnchor(
    string Name,
    int Level,
    string Title,
    int Page,
    Points X,
    Points Y
);
