namespace PatternPress.Source.Shapes;

/// <summary>A list of things of one shape.</summary>
public sealed record ListShape(string What, string Description, Shape Item)
    : Shape(What, Description);
