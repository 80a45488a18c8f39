namespace PatternPress.Typesetting.Pages;

/// <summary>A fault seen on a finished page.</summary>
/// <param name="Place">Where.</param>
/// <param name="Message">The fault in words, with the numbers.</param>
public sealed record PageFinding(PageFindingKind Kind, int Page, PageRect Place, string Message);
