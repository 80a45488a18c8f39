using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Source;

namespace PatternPress.Quilting.Model;

/// <summary>
/// What stands behind a letter of a block's map: "geese up, ray on sky". Read by word class only; what the words
/// mean is the kind's business.
/// </summary>
/// <param name="Letter">The letter of the map.</param>
/// <param name="Kind">The keyword: square, geese, half-square …</param>
/// <param name="Places">Direction words: up, down, left, right, upper-left …, across, along; in the order written.</param>
/// <param name="Grid">A count such as 4 x 4, for units made of equal cells.</param>
/// <param name="Measure">A finished measure after "of", for corners.</param>
/// <param name="Parts">Part names before "on": the figure.</param>
/// <param name="Ground">Part name after "on"; null if there is none.</param>
/// <param name="Span">The whole text.</param>
public sealed record UnitDesign(
    string Letter,
    Sourced<string> Kind,
    ImmutableArray<Sourced<string>> Places,
    Sourced<(int Columns, int Rows)>? Grid,
    Sourced<Length>? Measure,
    ImmutableArray<Sourced<string>> Parts,
    Sourced<string>? Ground,
    Span Span
)
{
    /// <summary>A whole number before "rounds": how often something is added all round.</summary>
    public Sourced<int>? Rounds { get; init; }

    /// <summary>Finished measures by the word before them: "center 2", "logs 1 and 1/2".</summary>
    public ImmutableArray<NamedMeasures> Named { get; init; } = [];

    /// <summary>Of a foundation, the section it is named after.</summary>
    public FoundationDesign? Foundation { get; init; }

    /// <summary>Whole numbers behind "shifts": by how many strips each column or row is moved.</summary>
    public ImmutableArray<Sourced<int>> Shifts { get; init; } = [];

    /// <summary>The block that fills the region instead of a unit; null for a unit.</summary>
    public InnerUse? Inner { get; init; }

    /// <summary>Of an appliqué, the shapes it is named after.</summary>
    public AppliqueDesign? Applique { get; init; }

    /// <summary>The measures that stand behind a word; null if the word is not written.</summary>
    public NamedMeasures? Find(string word)
    {
        foreach (NamedMeasures named in Named)
        {
            if (named.Word.Value == word)
            {
                return named;
            }
        }
        return null;
    }
}

/// <summary>A word before a unit's comma and the finished measures behind it, joined by "and".</summary>
public sealed record NamedMeasures(Sourced<string> Word, ImmutableArray<Sourced<Length>> Measures);

/// <summary>A block inside a block.</summary>
/// <param name="Design">The inner block.</param>
/// <param name="Turn">How it is turned in its region.</param>
/// <param name="Parts">The outer block's part for each part of the inner one.</param>
public sealed record InnerUse(
    BlockDesign Design,
    Geometry.Turn Turn,
    ImmutableDictionary<string, string> Parts
);
