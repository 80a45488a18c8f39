using PatternPress.Typesetting.Drawings;

namespace PatternPress.Typesetting.Inlines;

/// <summary>A small drawing that stands in a line like a letter, for example a swatch.</summary>
/// <param name="Drawing">What is drawn.</param>
/// <param name="Height">Its height on paper; the width follows.</param>
/// <param name="Alt">What it shows, in words; empty for decoration.</param>
public sealed record InlineDrawing(Drawing Drawing, Points Height, string Alt) : Inline
{
    /// <summary>How far it reaches below the baseline.</summary>
    public Points Drop { get; init; }
}
