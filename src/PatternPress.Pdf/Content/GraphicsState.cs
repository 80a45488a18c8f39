using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Pdf.Content;

/// <summary>What the reader of a content stream has been told so far, so that nothing is said twice.</summary>
sealed record GraphicsState
{
    public static readonly GraphicsState Initial = new();

    /// <summary>None where the fill is no ink.</summary>
    public Ink? Fill { get; init; } = Ink.Black;

    public Ink Pen { get; init; } = Ink.Black;

    public Stroke Stroke { get; init; } = new(new Points(1_000), Ink.Black);

    public int Font { get; init; } = -1;

    public Points FontSize { get; init; }
}
