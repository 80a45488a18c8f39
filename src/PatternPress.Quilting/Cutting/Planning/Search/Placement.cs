namespace PatternPress.Quilting.Cutting.Planning.Search;

/// <summary>One way in which the pieces of a kind may lie in a strip: upright or turned.</summary>
/// <param name="Kind">Index of the kind in <see cref="StripModel.Demand"/>.</param>
/// <param name="Width">Along the strip, in the model's own (coarsest) unit.</param>
/// <param name="Height">Across the strip, grid units.</param>
internal sealed record Placement(int Kind, bool Turned, int Width, long Height);
