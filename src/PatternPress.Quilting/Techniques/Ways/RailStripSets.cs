using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Kinds;

namespace PatternPress.Quilting.Techniques.Ways;

/// <summary>
/// Strips across the width of the fabric sewn side by side and cut across into units.
/// </summary>
public sealed class RailStripSets : Technique
{
    public override string Keyword => "rail-strip-sets";

    public override string Kind => Rail.Kind.Keyword;

    public override string Name => "Rails from strip sets";

    public override Recipe Recipe(
        UnitForm form,
        ImmutableArray<string> fabrics,
        Length usableWidth,
        House house
    )
    {
        return StripSets.Recipe(this, form, Rows(form), usableWidth, house);
    }

    protected override ImmutableArray<RecipePiece> Pieces(
        UnitForm form,
        House house,
        Length usableWidth
    ) => StripSets.Pieces(form, Rows(form), usableWidth, house);

    protected override string? Refusal(UnitForm form, House house, Length usableWidth) =>
        StripSets.Refusal(form, Rows(form), usableWidth, house);

    private static CellGrid Rows(UnitForm form) =>
        new(
            form.RoleCount,
            [
                [.. Enumerable.Range(0, form.RoleCount)],
            ]
        );
}
