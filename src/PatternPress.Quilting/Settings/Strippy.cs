using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Resolving;

namespace PatternPress.Quilting.Settings;

/// <summary>Columns of blocks edge to edge with a long strip between each two, and on request beside the outer ones.</summary>
public sealed class Strippy : Setting
{
    public override string Keyword => "strippy";

    public override bool HasOnlyLongStrips => true;

    public override Field? Lay(Layout layout)
    {
        if (EqualBlocks.Place(layout) is not { } blocks)
        {
            return null;
        }
        var columns = new List<IReadOnlyList<(ColoredBlock, Turn)>>();
        for (int c = 0; c < blocks[0].Length; c++)
        {
            columns.Add([.. blocks.Select(row => row[c])]);
        }
        return BlockLines.Lay(layout, down: true, columns);
    }
}
