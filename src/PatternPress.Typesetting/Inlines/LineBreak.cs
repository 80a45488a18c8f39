namespace PatternPress.Typesetting.Inlines;

/// <summary>Starts a new line within a paragraph.</summary>
public sealed record LineBreak : Inline;
