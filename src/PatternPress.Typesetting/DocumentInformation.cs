using System.Collections.Immutable;

namespace PatternPress.Typesetting;

/// <summary>What a document says about itself. The date is given by the caller: nothing here reads the clock.</summary>
/// <param name="Title">Shown in the reader's title bar.</param>
/// <param name="Date">The date of the edition; written as the date of creation.</param>
public sealed record DocumentInformation(string Title, DateOnly Date)
{
    /// <summary>A language tag of BCP 47, for example <c>en-US</c>.</summary>
    public string Language { get; init; } = "en-US";

    public string Author { get; init; } = "";

    public string Subject { get; init; } = "";

    public ImmutableArray<string> Keywords { get; init; } = [];

    /// <summary>The program that composed the document.</summary>
    public string Creator { get; init; } = "PatternPress";

    /// <summary>The edition, for example <c>1.0.0</c>.</summary>
    public string Edition { get; init; } = "";

    /// <summary>Who may do what with the document, in words.</summary>
    public string Rights { get; init; } = "";
}
