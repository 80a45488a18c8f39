using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Techniques.Kinds;

/// <summary>
/// Logs added one after the other around a center, each as long as the side it is sewn to. The first two of a round lie
/// in the corner that is named; in canonical orientation that is the upper left, the first log at the left.
/// <c>counterclockwise</c> adds them the other way round: the first log at the top.
/// </summary>
public sealed class LogCabin : UnitKind
{
    public static LogCabin Kind { get; } = new();

    private LogCabin() { }

    public override string Keyword => "log-cabin";

    public override string Name => "log cabin";

    public override string Example => "log-cabin upper-left 4 rounds, hearth light dark";

    public override bool TryDraw(
        UnitDesign design,
        Length width,
        Length height,
        [NotNullWhen(true)] out DrawnUnit? drawn,
        [NotNullWhen(false)] out UnitProblem? problem
    ) =>
        TryDrawAround(
            this,
            design,
            (width, height),
            [LogSide.Left, LogSide.Top, LogSide.Right, LogSide.Bottom],
            [LogSide.Top, LogSide.Left, LogSide.Bottom, LogSide.Right],
            out drawn,
            out problem
        );

    /// <summary>Logs whose first two lie in a corner.</summary>
    internal static bool TryDrawAround(
        UnitKind kind,
        UnitDesign design,
        (Length Width, Length Height) region,
        ImmutableArray<LogSide> clockwise,
        ImmutableArray<LogSide> counterclockwise,
        [NotNullWhen(true)] out DrawnUnit? drawn,
        [NotNullWhen(false)] out UnitProblem? problem
    )
    {
        drawn = null;
        problem = UnitWords.Unwanted(kind, design, places: true, rounds: true);
        if (problem is not null)
        {
            return false;
        }
        bool reversed = design.Places.Any(p => p.Value == "counterclockwise");
        UnitDesign corners = design with
        {
            Places =
            [
                .. design.Places.Where(p => p.Value is not ("clockwise" or "counterclockwise")),
            ],
        };
        if (
            !UnitWords.TryPlace(
                kind,
                corners,
                Corner.Words,
                Corner.UpperLeft,
                out int corner,
                out problem
            )
        )
        {
            return false;
        }
        bool swaps = corner % 2 == 1;
        return new LogWords(kind, reversed ? counterclockwise : clockwise).TryDraw(
            design,
            swaps ? region.Height : region.Width,
            swaps ? region.Width : region.Height,
            new Turn(corner),
            out drawn,
            out problem
        );
    }
}
