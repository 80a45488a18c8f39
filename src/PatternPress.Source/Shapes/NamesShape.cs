namespace PatternPress.Source.Shapes;

/// <summary>A map whose keys are names of the designer's own, each with a value of one shape.</summary>
/// <param name="Name">What a name may be.</param>
/// <param name="Value">What stands behind each name.</param>
public sealed record NamesShape(string What, string Description, TextShape Name, Shape Value)
    : Shape(What, Description)
{
    /// <summary>Whether an empty map is wrong.</summary>
    public bool AtLeastOne { get; init; }
}
