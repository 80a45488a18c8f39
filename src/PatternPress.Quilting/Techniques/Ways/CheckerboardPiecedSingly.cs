using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Kinds;

namespace PatternPress.Quilting.Techniques.Ways;

/// <summary>
/// Squares cut one by one and sewn into rows, the rows into the unit. For when few are needed.
/// </summary>
public sealed class CheckerboardPiecedSingly : Technique
{
    public override string Keyword => "checkerboard-pieced-singly";

    public override string Kind => Checkerboard.Kind.Keyword;

    public override string Name => "Checkerboards pieced singly";

    public override Recipe Recipe(
        UnitForm form,
        ImmutableArray<string> fabrics,
        Length usableWidth,
        House house
    )
    {
        return SinglePatches.Recipe(this, form, house);
    }

    protected override ImmutableArray<RecipePiece> Pieces(
        UnitForm form,
        House house,
        Length usableWidth
    ) => SinglePatches.Pieces(form, house);
}
