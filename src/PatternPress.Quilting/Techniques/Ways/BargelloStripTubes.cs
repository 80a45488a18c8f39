using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Kinds;

namespace PatternPress.Quilting.Techniques.Ways;

/// <summary>
/// Strips sewn side by side and closed to a tube, cut across into rings; each ring is opened at the seam where its column begins.
/// A ring of n strips opens to n cells and 2s: the seam that is undone gives its allowances back.
/// </summary>
public sealed class BargelloStripTubes : Technique
{
    public override string Keyword => "bargello-strip-tubes";

    public override string Kind => Bargello.Kind.Keyword;

    public override string Name => "Bargello from tubes of strips";

    public override Recipe Recipe(
        UnitForm form,
        ImmutableArray<string> fabrics,
        Length usableWidth,
        House house
    ) => StripSets.Recipe(this, form, Bargello.GridOf(form), usableWidth, house);

    protected override ImmutableArray<RecipePiece> Pieces(
        UnitForm form,
        House house,
        Length usableWidth
    ) => StripSets.Pieces(form, Bargello.GridOf(form), usableWidth, house);

    protected override string? Refusal(UnitForm form, House house, Length usableWidth) =>
        StripSets.Refusal(form, Bargello.GridOf(form), usableWidth, house);
}
