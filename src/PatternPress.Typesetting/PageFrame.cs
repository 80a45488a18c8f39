using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Typesetting;

/// <summary>
/// What is the same on every page of a sequence: the sheet, its margins, a running header and footer (set as artifacts,
/// not read aloud), and a drawing behind everything.
/// </summary>
/// <param name="Paper">The sheet.</param>
/// <param name="Margins">From the edges of the sheet to the text. Header and footer stand inside the margins.</param>
public sealed record PageFrame(PaperSize Paper, Insets Margins)
{
    /// <summary>Set above the text on every page; may hold page fields.</summary>
    public Block? Header { get; init; }

    /// <summary>Set below the text on every page; may hold page fields.</summary>
    public Block? Footer { get; init; }

    /// <summary>Whether the first page of the sequence has its own header and footer (possibly none).</summary>
    public bool FirstPageDiffers { get; init; }

    /// <summary>The header of the first page when that differs.</summary>
    public Block? FirstHeader { get; init; }

    /// <summary>The footer of the first page when that differs.</summary>
    public Block? FirstFooter { get; init; }

    /// <summary>From the header's last line to the text.</summary>
    public Points HeaderGap { get; init; } = new(14_000);

    /// <summary>From the text to the footer's first line.</summary>
    public Points FooterGap { get; init; } = new(14_000);

    /// <summary>Drawn behind the whole sheet, edge to edge, on every page; set as an artifact.</summary>
    public Drawing? Background { get; init; }

    /// <summary>Drawn behind the whole first page instead of <see cref="Background"/> when the first page differs.</summary>
    public Drawing? FirstBackground { get; init; }

    /// <summary>How far the background reaches past the edges of the sheet, to be trimmed off.</summary>
    public Points Bleed { get; init; }

    /// <summary>The part of the sheet that the text may use.</summary>
    public PageRect Body =>
        new(Margins.Left, Margins.Top, Paper.Width - Margins.Across, Paper.Height - Margins.Down);
}
