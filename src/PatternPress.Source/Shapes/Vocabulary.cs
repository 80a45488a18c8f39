using System.Collections.Immutable;

namespace PatternPress.Source.Shapes;

/// <summary>
/// The words of the trade that the shape of a source file needs but does not know itself; whoever knows the trade
/// passes them in.
/// </summary>
/// <param name="Settings">Ways to set blocks: "straight".</param>
/// <param name="Fills">Ways to spread colorings over a setting: "repeat", "checkerboard".</param>
/// <param name="DrawnFills">Those of them in which every line counts: "repeat".</param>
/// <param name="Units">Kinds of unit, the first word behind a letter of a block's map: "square", "geese".</param>
/// <param name="Techniques">Ways to make units.</param>
/// <param name="Corners">Ways a border turns its corners.</param>
public sealed record Vocabulary(
    ImmutableArray<string> Settings,
    ImmutableArray<string> Fills,
    ImmutableArray<string> DrawnFills,
    ImmutableArray<string> Units,
    ImmutableArray<string> Techniques,
    ImmutableArray<string> Corners
);
