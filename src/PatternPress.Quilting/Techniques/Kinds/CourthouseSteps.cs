using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Techniques.Kinds;

/// <summary>
/// Logs added to opposite sides of a center, two at a time. <c>upright</c>, also without the word: the first two at the
/// left and right, the next two at the top and bottom. <c>level</c>: the first two at the top and bottom.
/// </summary>
public sealed class CourthouseSteps : UnitKind
{
    public static CourthouseSteps Kind { get; } = new();

    private CourthouseSteps() { }

    public override string Keyword => "courthouse-steps";

    public override string Name => "courthouse steps unit";

    public override string Example => "courthouse-steps upright 4 rounds, hearth light dark";

    public override bool TryDraw(
        UnitDesign design,
        Length width,
        Length height,
        [NotNullWhen(true)] out DrawnUnit? drawn,
        [NotNullWhen(false)] out UnitProblem? problem
    )
    {
        drawn = null;
        problem = UnitWords.Unwanted(this, design, places: true, rounds: true);
        if (
            problem is not null
            || !UnitWords.TryPlace(this, design, ["upright", "level"], 0, out int turn, out problem)
        )
        {
            return false;
        }
        // A quarter turn clockwise carries left to top.
        return new LogWords(
            this,
            [LogSide.Left, LogSide.Right, LogSide.Top, LogSide.Bottom]
        ).TryDraw(
            design,
            turn == 0 ? width : height,
            turn == 0 ? height : width,
            new Turn(turn),
            out drawn,
            out problem
        );
    }
}
