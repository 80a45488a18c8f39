using PatternPress.Typesetting.Pages;
using PdfSharp.Pdf;

namespace PatternPress.Pdf;

/// <summary>A page and what stands for it in the file.</summary>
sealed record WrittenPage(Page Page, PdfPage Dictionary)
{
    /// <summary>The fonts used on the page, by their resource names.</summary>
    public SortedSet<int> FontsUsed { get; } = [];

    /// <summary>The tiled images used on the page, by their resource names.</summary>
    public SortedSet<int> TilesUsed { get; } = [];

    /// <summary>From the typesetter's y, down from the upper edge, to PDF's, up from the lower.</summary>
    public double Flip(double y) => Page.Paper.Height.Value - y;
}
