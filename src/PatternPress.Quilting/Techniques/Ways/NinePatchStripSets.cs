using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Kinds;

namespace PatternPress.Quilting.Techniques.Ways;

/// <summary>
/// Strip sets cut across into segments, each a row of the unit, and the segments sewn together.
/// </summary>
public sealed class NinePatchStripSets : Technique
{
    public override string Keyword => "nine-patch-strip-sets";

    public override string Kind => NinePatch.Kind.Keyword;

    public override string Name => "Nine-patches from strip sets";

    public override Recipe Recipe(
        UnitForm form,
        ImmutableArray<string> fabrics,
        Length usableWidth,
        House house
    )
    {
        return StripSets.Recipe(this, form, CellGrid.Of(form), usableWidth, house);
    }

    protected override ImmutableArray<RecipePiece> Pieces(
        UnitForm form,
        House house,
        Length usableWidth
    ) => StripSets.Pieces(form, CellGrid.Of(form), usableWidth, house);

    protected override string? Refusal(UnitForm form, House house, Length usableWidth) =>
        StripSets.Refusal(form, CellGrid.Of(form), usableWidth, house);
}
