using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Tables;

/// <summary>Strips that are joined end to end before pieces are cut from them.</summary>
/// <param name="Cut">Id of the strips.</param>
/// <param name="Strips">How many are joined.</param>
/// <param name="StripLength">Length of each.</param>
/// <param name="JoinLoss">Length that each join takes.</param>
/// <param name="Length">Of the joined strip.</param>
public sealed record JoinedRow(
    string Cut,
    long Strips,
    Length StripLength,
    JoinStyle Joins,
    Length JoinLoss,
    Length Length
)
{
    internal static JoinedRow Of(JoinedStrips joined) =>
        new(
            joined.Cut,
            joined.Strips,
            joined.StripLength,
            joined.Joins,
            joined.JoinLoss,
            joined.Available
        );
}
