using PatternPress.Quilting.Measures;

namespace PatternPress.Proofing;

/// <summary>Something left when the quilt is done.</summary>
/// <param name="What">"fabric A", "unit 2a".</param>
/// <param name="Count">Units or pieces; zero where a length is meant.</param>
/// <param name="Length">Length of fabric, uncut; zero where a number is meant.</param>
public sealed record Remainder(string What, long Count, Length Length);
