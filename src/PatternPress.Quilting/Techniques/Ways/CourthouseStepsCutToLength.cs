using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Kinds;

namespace PatternPress.Quilting.Techniques.Ways;

/// <summary>
/// Each log cut to the length of the side it is sewn to: one unit, no trimming.
/// </summary>
public sealed class CourthouseStepsCutToLength : Technique
{
    public override string Keyword => "courthouse-steps-cut-to-length";

    public override string Kind => CourthouseSteps.Kind.Keyword;

    public override string Name => "Courthouse steps, logs cut to length";

    public override Recipe Recipe(
        UnitForm form,
        ImmutableArray<string> fabrics,
        Length usableWidth,
        House house
    ) => LogRounds.Recipe(this, form, house, trimmed: false);

    protected override ImmutableArray<RecipePiece> Pieces(
        UnitForm form,
        House house,
        Length usableWidth
    ) => LogRounds.Pieces(form, house, trimmed: false);

    protected override string? Refusal(UnitForm form, House house, Length usableWidth) =>
        LogRounds.Refusal(form, house);
}
