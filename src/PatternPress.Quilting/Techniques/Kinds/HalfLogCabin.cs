using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Techniques.Kinds;

/// <summary>
/// Logs added to two sides of a center only, by turns. They lie in the corner that is named, the center in the opposite
/// one; in canonical orientation the logs lie in the upper left, the first at the left. <c>counterclockwise</c> begins at
/// the top.
/// </summary>
public sealed class HalfLogCabin : UnitKind
{
    public static HalfLogCabin Kind { get; } = new();

    private HalfLogCabin() { }

    public override string Keyword => "half-log-cabin";

    public override string Name => "half log cabin";

    public override string Example => "half-log-cabin upper-left 4 rounds, hearth light dark";

    public override bool TryDraw(
        UnitDesign design,
        Length width,
        Length height,
        [NotNullWhen(true)] out DrawnUnit? drawn,
        [NotNullWhen(false)] out UnitProblem? problem
    ) =>
        LogCabin.TryDrawAround(
            this,
            design,
            (width, height),
            [LogSide.Left, LogSide.Top],
            [LogSide.Top, LogSide.Left],
            out drawn,
            out problem
        );
}
