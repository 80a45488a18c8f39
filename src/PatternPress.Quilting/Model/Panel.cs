using System.Collections.Immutable;
using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Model;

/// <summary>Fabric that is bought cut to size rather than by the yard. Sizes are usable ones, selvages off.</summary>
/// <param name="Name">Several of it, as makers call them: "fat quarters"; "panels" for a size of the maker's own.</param>
/// <param name="One">A single one: "fat quarter".</param>
/// <param name="Width">Across the fabric it was cut from; null for the whole usable width.</param>
/// <param name="Height">Along that fabric.</param>
public sealed record Panel(string Name, string One, Length? Width, Length Height)
{
    /// <summary>A size of the maker's own.</summary>
    public static Panel OwnSize(Length width, Length height) =>
        new("panels", "panel", width, height);

    /// <summary>The sizes that shops sell (common practice, no source).</summary>
    public static ImmutableArray<Panel> Sold { get; } =
    [
        new("fat quarters", "fat quarter", Length.FromInches(21), Length.FromInches(18)),
        new("fat eighths", "fat eighth", Length.FromInches(21), Length.FromInches(9)),
        new("2 1/2 in strips", "2 1/2 in strip", null, Length.FromInches(2, 1, 2)),
        new("10 in squares", "10 in square", Length.FromInches(10), Length.FromInches(10)),
        new("5 in squares", "5 in square", Length.FromInches(5), Length.FromInches(5)),
    ];

    /// <summary>The size of that name; null if no shop sells it.</summary>
    public static Panel? Find(string name)
    {
        foreach (Panel panel in Sold)
        {
            if (panel.Name == name)
            {
                return panel;
            }
        }
        return null;
    }

    /// <summary>"1 fat quarter", "5 fat quarters".</summary>
    public string Told(long count) => $"{count} {(count == 1 ? One : Name)}";
}
