using System.Collections.Immutable;
using PatternPress.Quilting.Cutting;

namespace PatternPress.Quilting.Tables;

/// <summary>Binding, backing and batting.</summary>
internal static class FinishingTabulator
{
    public static BindingCell? Binding(SizeMaking size) =>
        size.Binding is { } binding
            ? new BindingCell(
                binding.Fabric,
                binding.Cut,
                binding.Strips,
                binding.StripWidth,
                binding.StripLength,
                binding.JoinLoss,
                binding.Available,
                binding.Perimeter
            )
            {
                Square = binding.Square,
                Radius = binding.Radius,
            }
            : null;

    public static BackingCell? Backing(SizeMaking size) =>
        size.Backing is { } backing
            ? new BackingCell(
                backing.Fabric,
                backing.Width,
                backing.Height,
                backing.Overhang,
                backing.PanelWidth,
                backing.Panels,
                backing.PanelLength,
                backing.Seams,
                backing.JoinLoss
            )
            : null;

    public static BattingCell? Batting(SizeMaking size) =>
        size.Batting is { } batting
            ? new BattingCell(batting.Width, batting.Height, batting.Overhang, batting.Package)
            : null;

    /// <summary>One row for each fabric that backs any size.</summary>
    public static ImmutableArray<RequirementRow> BackingRequirements(Making making)
    {
        var rows = ImmutableArray.CreateBuilder<RequirementRow>();
        var seen = new HashSet<string?>();
        foreach (SizeMaking one in making.Sizes)
        {
            // A backing may name no fabric.
            if (one.Backing is { Fabric: var fabric } && seen.Add(fabric))
            {
                rows.Add(
                    new RequirementRow(
                        fabric,
                        [
                            .. making.Sizes.Select(size =>
                                size.Backing is { } backing && backing.Fabric == fabric
                                    ? new RequirementCell(backing.FabricWidth, backing.Yardage)
                                    : null
                            ),
                        ]
                    )
                );
            }
        }
        return rows.ToImmutable();
    }
}
