using System.Collections.Immutable;

namespace PatternPress.Source.Shapes;

/// <summary>A scalar out of a closed list of words.</summary>
public sealed record ChoiceShape(string What, string Description, ImmutableArray<string> Words)
    : Shape(What, Description);
