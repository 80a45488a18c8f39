using System.Collections.Immutable;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Typesetting;

/// <summary>Everything that is to be set: words about the document, its look, and its pages' content in order.</summary>
/// <param name="Information">Title, author, language and date.</param>
/// <param name="Styles">The named text styles that blocks refer to.</param>
/// <param name="Sequences">Runs of pages that share a frame, in order.</param>
public sealed record Document(
    DocumentInformation Information,
    StyleSheet Styles,
    ImmutableArray<PageSequence> Sequences
);
