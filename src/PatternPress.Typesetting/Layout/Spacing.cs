namespace PatternPress.Typesetting.Layout;

/// <summary>The space a block wants above and below; between two blocks the larger of both counts.</summary>
public readonly record struct Spacing(Points Before, Points After);
