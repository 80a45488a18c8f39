namespace PatternPress.Quilting.Rules.Prose;

/// <summary>What a typed figure turns out to be.</summary>
/// <param name="Quote">How to quote the computed figure; null if none agrees.</param>
/// <param name="Nearest">Where none agrees: how to quote the nearest.</param>
/// <param name="Meaning">What it is: "the yardage of fabric B in size throw"; or what the computed figures are.</param>
internal sealed record FigureMatch(string? Quote, string Meaning, string? Nearest = null);
