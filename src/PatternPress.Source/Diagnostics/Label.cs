namespace PatternPress.Source.Diagnostics;

/// <summary>A place in a source file and a short remark about it.</summary>
public sealed record Label(Span Span, string Text);
