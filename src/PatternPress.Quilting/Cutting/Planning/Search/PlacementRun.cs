namespace PatternPress.Quilting.Cutting.Planning.Search;

/// <summary>The placements that may share a strip, and the length of strip they share: a range of
/// <see cref="StripModel.Placements"/>, which are sorted tallest first.</summary>
internal sealed record PlacementRun(int First, int End, int Width);
