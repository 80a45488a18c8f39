namespace PatternPress.Quilting.Cutting.Planning;

/// <summary>One thing wrong with a cutting list.</summary>
/// <param name="PieceId">The kind it is about; null when it is about the stock or the list as a whole.</param>
/// <param name="Value">The number at fault.</param>
/// <param name="Limit">The number it was held against.</param>
public sealed record CutFault(CutFaultReason Reason, int? PieceId, long Value, long Limit);
