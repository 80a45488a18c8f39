namespace PatternPress.Source.Shapes;

/// <summary>One key that a <see cref="MapShape"/> knows.</summary>
/// <param name="Name">The word in the file: kebab-case English.</param>
/// <param name="Value">What its value may be.</param>
/// <param name="Required">Whether the map is wrong without it.</param>
public sealed record Key(string Name, Shape Value, bool Required = false);
