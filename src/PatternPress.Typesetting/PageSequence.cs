using PatternPress.Typesetting.Blocks;

namespace PatternPress.Typesetting;

/// <summary>A run of pages that share a frame. Each sequence starts on a new page.</summary>
/// <param name="Frame">Size, margins, running header and footer.</param>
/// <param name="Body">What flows through the pages.</param>
public sealed record PageSequence(PageFrame Frame, Block Body);
