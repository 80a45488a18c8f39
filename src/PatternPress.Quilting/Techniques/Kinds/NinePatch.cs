using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Techniques.Kinds;

/// <summary>
/// Three by three cells. Two parts: the first in the corners and the center, the second between them. Three parts:
/// corners, sides, center.
/// </summary>
public sealed class NinePatch : UnitKind
{
    public static NinePatch Kind { get; } = new();

    private NinePatch() { }

    public override string Keyword => "nine-patch";

    public override string Name => "nine-patch unit";

    public override string Example => "nine-patch, ray sky";

    public override bool TryDraw(
        UnitDesign design,
        Length width,
        Length height,
        [NotNullWhen(true)] out DrawnUnit? drawn,
        [NotNullWhen(false)] out UnitProblem? problem
    )
    {
        drawn = null;
        problem = UnitWords.Unwanted(this, design);
        if (
            problem is not null
            || !UnitWords.TryParts(
                this,
                design,
                2,
                3,
                "2 parts (corners and center, sides) or 3 (corners, sides, center)",
                out ImmutableArray<string> parts,
                out problem
            )
        )
        {
            return false;
        }
        if (parts.Length == 2 || parts[0] == parts[2])
        {
            drawn = Checkerboard.Draw(3, 3, width, height, parts[..2]);
            return true;
        }
        bool tall = height > width;
        var grid = new CellGrid(
            3,
            [
                [0, 1, 0],
                [1, 2, 1],
                [0, 1, 0],
            ]
        );
        drawn = new DrawnUnit(
            grid.Form(this, Length.Max(width, height), Length.Min(width, height)),
            new Turn(tall ? 1 : 0),
            parts
        );
        return true;
    }
}
