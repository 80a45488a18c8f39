using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Techniques.Kinds;

/// <summary>
/// Equal strips side by side. <c>upright</c>: the strips stand upright, the first at the left. <c>level</c>: they
/// lie level, the first at the top. Every strip is a role of its own. In canonical orientation the strips stand
/// upright.
/// </summary>
public sealed class Rail : UnitKind
{
    /// <summary>More strips than anyone would sew into one unit; bounds what a source file can ask for.</summary>
    public const int MostStrips = 24;

    public static Rail Kind { get; } = new();

    private Rail() { }

    public override string Keyword => "rail";

    public override string Name => "rail unit";

    public override string Example => "rail upright, ray sky ray";

    public override bool TryDraw(
        UnitDesign design,
        Length width,
        Length height,
        [NotNullWhen(true)] out DrawnUnit? drawn,
        [NotNullWhen(false)] out UnitProblem? problem
    )
    {
        drawn = null;
        problem = UnitWords.Unwanted(this, design, places: true);
        if (
            problem is not null
            || !UnitWords.TryPlace(
                this,
                design,
                ["upright", "level"],
                null,
                out int turn,
                out problem
            )
        )
        {
            return false;
        }
        if (design.Ground is { } ground)
        {
            problem = UnitWords.Problem(
                this,
                ground.Span,
                "a rail unit lies on no other part",
                $"\"on {ground.Value}\" is written"
            );
            return false;
        }
        if (
            !UnitWords.TryParts(
                this,
                design,
                2,
                MostStrips,
                $"2 to {MostStrips} parts, one for each strip",
                out ImmutableArray<string> parts,
                out problem
            )
        )
        {
            return false;
        }
        drawn = new DrawnUnit(
            turn == 0 ? FormOf(width, height, parts.Length) : FormOf(height, width, parts.Length),
            new Turn(turn),
            // A quarter turn clockwise carries left to top, so the order of the strips stays.
            parts
        );
        return true;
    }

    /// <summary>The form in canonical orientation: strips upright, <paramref name="width"/> across all of them.</summary>
    public static UnitForm FormOf(Length width, Length height, int strips)
    {
        Length one = width / strips;
        return new UnitForm(
            Kind,
            strips.ToString(),
            width,
            height,
            Length.Zero,
            [
                .. Enumerable
                    .Range(0, strips)
                    .Select(i => new RolePatch(
                        new Rect(one * i, Length.Zero, one, height).ToPolygon(),
                        i,
                        []
                    )),
            ],
            strips
        );
    }

    /// <summary>The number of strips of a form.</summary>
    public static int StripsOf(UnitForm form) => form.RoleCount;
}
