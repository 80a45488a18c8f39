using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Source;

namespace PatternPress.Quilting.Model;

/// <summary>The quilt as designed, before a size is chosen; a size may change any part.</summary>
public sealed record QuiltDesign(
    Sourced<string> Setting,
    SashingDesign? Sashing,
    Fill Fill,
    ImmutableArray<BorderDesign> Borders,
    BindingDesign? Binding,
    Sourced<string>? Backing,
    bool Batting,
    Span Span
)
{
    /// <summary>The fill of the places in between the rows and columns of a setting on point; null where <see cref="Fill"/>
    /// covers them too, or there are none.</summary>
    public Fill? Between { get; init; }

    /// <summary>The triangles along the edge of a setting on point.</summary>
    public TriangleDesign? Triangles { get; init; }

    /// <summary>Finished widths of the columns, from the left, where blocks may be of several sizes; they repeat.</summary>
    public Sourced<ImmutableArray<Length>>? Columns { get; init; }

    /// <summary>The half blocks at the ends of staggered lines: one line of one or two colorings.</summary>
    public Fill? Ends { get; init; }

    /// <summary>Blocks placed one by one; null where a fill spreads them.</summary>
    public Sourced<ImmutableArray<FreePlace>>? Places { get; init; }

    /// <summary>Whether lines of blocks run down the quilt; null where it is not said.</summary>
    public Sourced<bool>? AlongColumns { get; init; }

    /// <summary>Finished heights of the rows, from the top; they repeat.</summary>
    public Sourced<ImmutableArray<Length>>? Rows { get; init; }

    /// <summary>Radius that the quilt's corners are rounded with before it is bound, finished; null for square corners.</summary>
    public Sourced<Length>? RoundedCorners { get; init; }

    /// <summary>How the center of a medallion is set; null in other settings.</summary>
    public Sourced<string>? CenterSetting { get; init; }

    /// <summary>The rounds of a medallion: borders between its center and its own borders.</summary>
    public ImmutableArray<BorderDesign> Rounds { get; init; } = [];

    /// <summary>How many of the rounds a size has, from the center; null for all.</summary>
    public int? RoundsUsed { get; init; }

    /// <summary>How the blocks in the middle are set: of a medallion its center, else as the quilt.</summary>
    public Sourced<string> FieldSetting => CenterSetting ?? Setting;

    /// <summary>Rounds and borders with their numbers, from 1 at the inside. Rounds that a size leaves out keep their numbers,
    /// so that a number means the same border in all sizes.</summary>
    public IEnumerable<(int Number, BorderDesign Border, bool IsRound)> NumberedBorders()
    {
        int number = 1;
        for (int i = 0; i < Rounds.Length + Borders.Length; i++)
        {
            bool round = i < Rounds.Length;
            BorderDesign border = round ? Rounds[i] : Borders[i - Rounds.Length];
            if (!round || i < (RoundsUsed ?? Rounds.Length))
            {
                yield return (number, border, round);
            }
            number += border.Numbers;
        }
    }

    /// <summary>The shape of all patches of a one-patch quilt.</summary>
    public PatchDesign? Patch { get; init; }
}

/// <summary>A block placed by its distance from the upper left corner of the field.</summary>
/// <param name="Cell">The coloring and how its block is turned.</param>
/// <param name="Left">Finished.</param>
/// <param name="Top">Finished.</param>
/// <param name="Size">Finished width and height as it lies; null for the size of the block itself.</param>
/// <param name="Span">The whole line.</param>
public sealed record FreePlace(
    FillCell Cell,
    Length Left,
    Length Top,
    (Length Width, Length Height)? Size,
    Span Span
);

/// <summary>The triangles that fill the edge of a setting on point.</summary>
/// <param name="Sides">Fabric of the side triangles.</param>
/// <param name="Corners">Fabric of the corner triangles.</param>
/// <param name="Float">How far the points of the outer blocks stay away from the edge, finished.</param>
public sealed record TriangleDesign(
    Sourced<string> Sides,
    Sourced<string> Corners,
    Length Float,
    Span Span
);

/// <summary>Strips between blocks.</summary>
/// <param name="Cornerstones">Fabric of the squares where strips meet; null for plain strips between rows.</param>
/// <param name="Around">Whether strips run around the outside too.</param>
public sealed record SashingDesign(
    Length Width,
    Sourced<string> Fabric,
    Sourced<string>? Cornerstones,
    bool Around,
    Span Span
);

public sealed record BindingDesign(Sourced<string> Fabric, Length? Width, Span Span)
{
    /// <summary>Whether its strips are cut on the bias, so that it lies flat around curves.</summary>
    public bool Bias { get; init; }
}
