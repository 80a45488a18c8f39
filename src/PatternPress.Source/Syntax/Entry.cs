namespace PatternPress.Source.Syntax;

/// <summary>One <c>key: value</c> of a map.</summary>
public sealed record Entry(ScalarNode Key, Node Value);
