using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Techniques;

/// <summary>How one batch of a unit is made: pieces in, units out.</summary>
/// <param name="Technique">The technique's keyword.</param>
/// <param name="Pieces">What is cut for one batch.</param>
/// <param name="Yield">Units from one batch.</param>
/// <param name="UnfinishedWidth">The unit's width when sewn and trimmed: finished + 2 seams.</param>
/// <param name="UnfinishedHeight">Its height.</param>
/// <param name="Trim">Whether the unit comes out larger and is trimmed to its unfinished size.</param>
/// <param name="Leftovers">What one batch leaves that is worth keeping (the flipped corners cut off), per batch.</param>
/// <param name="Steps">The steps in order, each with its diagram.</param>
/// <param name="Measures">Further measures the step text quotes, by name ("segment", "sew-line").</param>
public sealed record Recipe(
    string Technique,
    ImmutableArray<RecipePiece> Pieces,
    int Yield,
    Length UnfinishedWidth,
    Length UnfinishedHeight,
    bool Trim,
    ImmutableArray<Leftover> Leftovers,
    ImmutableArray<Step> Steps,
    ImmutableDictionary<string, Length> Measures
);

/// <summary>A piece of a recipe as it is cut.</summary>
/// <param name="Name">Which piece it is within the technique, for step text and tables: "large square".</param>
/// <param name="Role">Whose fabric.</param>
/// <param name="Width">Cut width; the usable width of the fabric for a whole strip.</param>
/// <param name="Height">Cut height, along the length of the fabric.</param>
/// <param name="Exactly">The exact (unrounded) cut width and height, for the proof.</param>
/// <param name="Count">Pieces per batch.</param>
/// <param name="Cut">What is done to it after it is cut.</param>
/// <param name="WholeStrip">Whether it is a strip across the whole width of the fabric, not subcut before sewing.</param>
public sealed record RecipePiece(
    string Name,
    int Role,
    Length Width,
    Length Height,
    (Length Width, Length Height) Exactly,
    int Count,
    PieceCut Cut,
    bool WholeStrip
);

/// <summary>What is done to a square before it is sewn.</summary>
public enum PieceCut
{
    None,

    /// <summary>Cut once corner to corner: two half-square triangles.</summary>
    OnceDiagonally,

    /// <summary>Cut corner to corner both ways: four quarter-square triangles.</summary>
    TwiceDiagonally,
}

/// <summary>Something left over by a batch that a maker may keep.</summary>
public sealed record Leftover(string Name, int Count, Length Width, Length Height);

/// <summary>One step of a recipe.</summary>
/// <param name="Name">Names the step's text in the templates: "mark", "sew", "cut", "press", "trim".</param>
/// <param name="Sketch">Its diagram.</param>
public sealed record Step(string Name, Sketch Sketch);
