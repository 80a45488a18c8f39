using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Techniques.Kinds;

/// <summary>Two by two cells; the first part (role 0) lies at the upper left and the lower right.</summary>
public sealed class FourPatch : UnitKind
{
    public static FourPatch Kind { get; } = new();

    private FourPatch() { }

    public override string Keyword => "four-patch";

    public override string Name => "four-patch unit";

    public override string Example => "four-patch, ray sky";

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
                2,
                "2 parts, the first at the upper left and the lower right",
                out ImmutableArray<string> parts,
                out problem
            )
        )
        {
            return false;
        }
        drawn = Checkerboard.Draw(2, 2, width, height, parts);
        return true;
    }
}
