namespace PatternPress.Source.Syntax;

/// <summary>One piece of the tree a source file is read into: a map, a list or a scalar.</summary>
/// <param name="Span">Where it stands, from its first to its last character.</param>
public abstract record Node(Span Span);
