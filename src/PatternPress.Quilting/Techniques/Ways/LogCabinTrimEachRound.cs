using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Kinds;

namespace PatternPress.Quilting.Techniques.Ways;

/// <summary>
/// Logs cut a little too wide and too long, trimmed after each is sewn and brought to size after every round: one unit.
/// </summary>
public sealed class LogCabinTrimEachRound : Technique
{
    public override string Keyword => "log-cabin-trim-each-round";

    public override string Kind => LogCabin.Kind.Keyword;

    public override string Name => "Log cabin, trimmed after each round";

    public override Recipe Recipe(
        UnitForm form,
        ImmutableArray<string> fabrics,
        Length usableWidth,
        House house
    ) => LogRounds.Recipe(this, form, house, trimmed: true);

    protected override ImmutableArray<RecipePiece> Pieces(
        UnitForm form,
        House house,
        Length usableWidth
    ) => LogRounds.Pieces(form, house, trimmed: true);
}
