namespace PatternPress.Typesetting.Inlines;

/// <summary>
/// Words in one style. Lines may end at spaces, after hyphens and dashes, and at soft hyphens (U+00AD) and zero-width
/// spaces; never at no-break spaces.
/// </summary>
public sealed record Run(string Text) : Inline;
