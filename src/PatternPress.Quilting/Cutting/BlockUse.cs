namespace PatternPress.Quilting.Cutting;

/// <summary>A letter of a block's map in one coloring.</summary>
/// <param name="Block">The block's key.</param>
/// <param name="Coloring">The coloring's key.</param>
/// <param name="Letter">The letter of the map.</param>
public sealed record BlockUse(string Block, string Coloring, string Letter);
