namespace PatternPress.Typesetting;

/// <summary>Something that could not be laid out as asked. The document is complete all the same.</summary>
/// <param name="Kind">What went wrong.</param>
/// <param name="Message">The problem in words, with the numbers.</param>
/// <param name="Page">The page on which it shows, counted from 1.</param>
/// <param name="Origin">The origin of the nearest block that has one: where in the caller's input this came from.</param>
public sealed record LayoutProblem(LayoutProblemKind Kind, string Message, int Page, object? Origin)
{
    /// <summary>The room that was wanted, where the problem is one of room.</summary>
    public Points Needed { get; init; }

    /// <summary>The room that there was.</summary>
    public Points Available { get; init; }
}
