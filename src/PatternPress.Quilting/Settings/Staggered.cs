using PatternPress.Quilting.Model;
using PatternPress.Quilting.Settings.Fills;

namespace PatternPress.Quilting.Settings;

/// <summary>Rows, or columns, of which every other is shifted by half a block; half blocks fill its ends.</summary>
public sealed class Staggered : Setting
{
    public override string Keyword => "staggered";

    public override bool HasOnlyLongStrips => true;

    public override bool IsStaggered => true;

    /// <summary>Lines are rows, or columns: then a line is filled from the top down.</summary>
    public override FillGrid Places(SizeDesign size) =>
        Down(size)
            ? new(size.Columns, size.Rows) { Shifted = true }
            : new(size.Rows, size.Columns) { Shifted = true };

    public override Field? Lay(Layout layout) =>
        EqualBlocks.Place(layout) is { } lines
            ? BlockLines.Lay(layout, Down(layout.Size), lines)
            : null;

    private static bool Down(SizeDesign size) => size.Quilt.AlongColumns is { Value: true };
}
