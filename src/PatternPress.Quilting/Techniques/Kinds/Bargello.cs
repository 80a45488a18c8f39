using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Techniques.Kinds;

/// <summary>
/// Columns of equal cells that show the same fabrics in the same order, each begun at another one: a number behind <c>shifts</c> for
/// each column, from the left, says by how many cells it is moved up; what leaves at the top comes back at the bottom. <c>level</c>:
/// rows from the top, moved to the left. In canonical orientation the fabrics run from left to right and every row is a segment.
/// </summary>
public sealed class Bargello : UnitKind
{
    /// <summary>More strips or segments than anyone would sew into one unit; bounds what a source file can ask for.</summary>
    public const int Most = 24;

    public static Bargello Kind { get; } = new();

    private Bargello() { }

    public override string Keyword => "bargello";

    public override string Name => "bargello unit";

    public override string Example => "bargello shifts 0 1 2 1, sky mist foam sand";

    public override bool TryDraw(
        UnitDesign design,
        Length width,
        Length height,
        [NotNullWhen(true)] out DrawnUnit? drawn,
        [NotNullWhen(false)] out UnitProblem? problem
    )
    {
        drawn = null;
        problem = UnitWords.Unwanted(this, design, places: true, shifts: true);
        if (
            problem is not null
            || !UnitWords.TryPlace(this, design, ["upright", "level"], 0, out int way, out problem)
        )
        {
            return false;
        }
        if (design.Ground is { } ground)
        {
            problem = UnitWords.Problem(
                this,
                ground.Span,
                "a bargello unit lies on no other part",
                $"\"on {ground.Value}\" is written"
            );
            return false;
        }
        if (design.Shifts.Length is < 2 or > Most)
        {
            problem = UnitWords.Problem(
                this,
                design.Shifts.IsEmpty ? design.Kind.Span : design.Shifts[^1].Span,
                $"a bargello unit has 2 to {Most} shifts, one for each column",
                design.Shifts.IsEmpty
                    ? "none is written"
                    : $"{design.Shifts.Length} {(design.Shifts.Length == 1 ? "is" : "are")} written"
            );
            return false;
        }
        if (
            !UnitWords.TryParts(
                this,
                design,
                3,
                Most,
                $"3 to {Most} parts, one for each strip",
                out ImmutableArray<string> parts,
                out problem
            )
        )
        {
            return false;
        }
        bool upright = way == 0;
        ImmutableArray<int> shifts = [.. design.Shifts.Select(s => s.Value)];
        // A quarter turn clockwise brings the first row to the right.
        drawn = new DrawnUnit(
            FormOf(
                upright ? height : width,
                upright ? width : height,
                parts.Length,
                upright ? [.. shifts.Reverse()] : shifts
            ),
            new Turn(upright ? 1 : 0),
            parts
        );
        return true;
    }

    /// <summary>The form in canonical orientation: strips side by side, a segment a row.</summary>
    /// <param name="width">Across all strips.</param>
    /// <param name="height">Of all segments.</param>
    public static UnitForm FormOf(
        Length width,
        Length height,
        int strips,
        ImmutableArray<int> shifts
    ) => Grid(strips, shifts).Form(Kind, width, height);

    internal static CellGrid GridOf(UnitForm form) => CellGrid.Of(form) with { Tube = true };

    private static CellGrid Grid(int strips, ImmutableArray<int> shifts) =>
        new(
            strips,
            [
                .. shifts.Select(shift =>
                    Enumerable
                        .Range(0, strips)
                        .Select(i => (((i + shift) % strips) + strips) % strips)
                        .ToImmutableArray()
                ),
            ]
        );
}
