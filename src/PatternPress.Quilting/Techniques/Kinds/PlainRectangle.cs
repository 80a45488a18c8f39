using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Techniques.Kinds;

/// <summary>One patch that fills any region. A square region gives a plain square.</summary>
public sealed class PlainRectangle : UnitKind
{
    public static PlainRectangle Kind { get; } = new();

    private PlainRectangle() { }

    public override string Keyword => "rectangle";

    public override string Name => "plain rectangle";

    public override string Example => "rectangle core";

    public override bool TryDraw(
        UnitDesign design,
        Length width,
        Length height,
        [NotNullWhen(true)] out DrawnUnit? drawn,
        [NotNullWhen(false)] out UnitProblem? problem
    ) => TryDrawPlain(this, design, width, height, out drawn, out problem);

    internal static bool TryDrawPlain(
        UnitKind kind,
        UnitDesign design,
        Length width,
        Length height,
        [NotNullWhen(true)] out DrawnUnit? drawn,
        [NotNullWhen(false)] out UnitProblem? problem
    )
    {
        drawn = null;
        problem = UnitWords.Unwanted(kind, design);
        if (
            problem is not null
            || !UnitWords.TryParts(
                kind,
                design,
                1,
                1,
                "1 part",
                out ImmutableArray<string> parts,
                out problem
            )
        )
        {
            return false;
        }
        // Canonical: wider than high.
        bool tall = height > width;
        (Length w, Length h) = tall ? (height, width) : (width, height);
        var form = new UnitForm(
            w == h ? PlainSquare.Kind : Kind,
            "",
            w,
            h,
            Length.Zero,
            [new RolePatch(new Rect(Length.Zero, Length.Zero, w, h).ToPolygon(), 0, [])],
            1
        );
        drawn = new DrawnUnit(form, new Turn(tall ? 1 : 0), parts);
        return true;
    }
}
