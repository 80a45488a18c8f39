using System.Collections.Immutable;
using PatternPress.Typesetting.Pages;

namespace PatternPress.Typesetting;

/// <summary>A document as finished pages, ready for any writer.</summary>
/// <param name="Anchors">All anchors in the order of the document; those with a level make the bookmarks.</param>
/// <param name="Problems">What could not be laid out as asked.</param>
public sealed record TypesetDocument(
    DocumentInformation Information,
    ImmutableArray<Page> Pages,
    ImmutableArray<PlacedAnchor> Anchors,
    ImmutableArray<LayoutProblem> Problems
);
