using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;

namespace PatternPress.Quilting.Tables;

/// <summary>Where each block goes in one size.</summary>
/// <param name="Size">Key of the size.</param>
/// <param name="Setting">Keyword of the setting.</param>
/// <param name="Rows">From the top; each from the left. None where blocks lie in no rows.</param>
/// <param name="Sashing">Which sashing lies between; null for none.</param>
/// <param name="Sections">Instead of rows: the sections in the order they are sewn. The last is the whole field.</param>
public sealed record PlacementChart(
    string Size,
    string Setting,
    ImmutableArray<ImmutableArray<PlacementCell>> Rows,
    SashingLayout? Sashing,
    ImmutableArray<SectionRow> Sections
)
{
    /// <summary>How many there are of each block in the field, by coloring and number.</summary>
    public IReadOnlyDictionary<(string Coloring, int Number), int> Counts()
    {
        var counts = new Dictionary<(string, int), int>();
        foreach (PlacementCell cell in Rows.SelectMany(row => row))
        {
            Add(cell, 1);
        }
        foreach (SectionRow section in Sections)
        {
            foreach (SectionPart part in section.Parts)
            {
                if (part.Block is { } cell)
                {
                    Add(cell, section.Count);
                }
            }
        }
        return counts;

        void Add(PlacementCell cell, int count)
        {
            var key = (cell.Coloring, cell.Number);
            counts[key] = counts.GetValueOrDefault(key) + count;
        }
    }
}

/// <summary>Blocks and sections sewn before it that make a section.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Count">How many are made.</param>
/// <param name="Parts">In the order of sewing.</param>
public sealed record SectionRow(
    int Number,
    int Count,
    SectionJoin Join,
    ImmutableArray<SectionPart> Parts,
    Length FinishedWidth,
    Length FinishedHeight,
    Length UnfinishedWidth,
    Length UnfinishedHeight
);

/// <param name="Block">Null where it is a section or a strip.</param>
/// <param name="Section">The number of a section sewn before; 0 for a block or strip.</param>
/// <param name="Strip">A strip of sashing; null where it is a block or section.</param>
public sealed record SectionPart(PlacementCell? Block, int Section, SectionStrip? Strip);

/// <summary>A strip as the sashing table names it.</summary>
public sealed record SectionStrip(SashKind Kind, string Fabric, int Number);

/// <param name="Number">The block row's number within its coloring.</param>
public sealed record PlacementCell(string Coloring, int Number, Turn Turn);

/// <param name="Around">Whether strips run around the outside of the blocks too.</param>
/// <param name="Cornerstones">Squares where strips meet; else level strips run across the whole row.</param>
public sealed record SashingLayout(bool Around, bool Cornerstones);
