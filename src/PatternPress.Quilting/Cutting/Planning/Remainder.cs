namespace PatternPress.Quilting.Cutting.Planning;

/// <summary>Fabric left beside pieces that were cut first: strips across it cost nothing more.</summary>
/// <param name="Width">Across the fabric, grid units.</param>
/// <param name="Length">Along the fabric, grid units: the strips cut from it are together no taller.</param>
public sealed record Remainder(long Width, long Length);
