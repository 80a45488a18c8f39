using System.Collections.Immutable;
using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Cutting;

/// <summary>The panels that one fabric is cut from for one size.</summary>
/// <param name="Stock">What each gives.</param>
/// <param name="Layouts">How they are cut, those of which most are cut first.</param>
/// <param name="LowerBound">No plan takes fewer.</param>
/// <param name="ToBuy">Those that are cut, and the house's allowance for mistakes.</param>
public sealed record PanelUse(
    PanelStock Stock,
    ImmutableArray<PlannedPanel> Layouts,
    long LowerBound,
    long ToBuy
)
{
    /// <summary>How many are cut.</summary>
    public long Count => Layouts.Sum(layout => layout.Count);

    /// <summary>What is left of each panel of a layout beyond its strips.</summary>
    /// <param name="strips">Of all layouts.</param>
    public Length Left(int layout, ImmutableArray<PlannedStrip> strips)
    {
        Length left = Layouts[layout].Up ? Stock.Width : Stock.Height;
        foreach (PlannedStrip strip in strips)
        {
            if (strip.Panel is { } share && share.Layout == layout)
            {
                left -= strip.Height * share.Strips;
            }
        }
        return left;
    }

    /// <summary>Length of a strip of a layout.</summary>
    public Length Room(int layout) => Layouts[layout].Up ? Stock.Height : Stock.Width;
}

/// <summary>Panels that are cut alike.</summary>
/// <param name="Count">How many.</param>
/// <param name="Up">Whether their strips run along the fabric they were cut from rather than across it.</param>
public sealed record PlannedPanel(long Count, bool Up);
