namespace PatternPress.Quilting.Tables;

/// <summary>A fabric as the tables name it.</summary>
/// <param name="Key">Its letter.</param>
/// <param name="Directional">Whether its pieces may not be turned.</param>
public sealed record FabricLabel(string Key, string Name, bool Directional);
