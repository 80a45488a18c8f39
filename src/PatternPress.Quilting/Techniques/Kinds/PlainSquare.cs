using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Techniques.Kinds;

/// <summary>One patch that fills a square region.</summary>
public sealed class PlainSquare : UnitKind
{
    public static PlainSquare Kind { get; } = new();

    private PlainSquare() { }

    public override string Keyword => "square";

    public override string Name => "plain square";

    public override string Example => "square core";

    public override bool TryDraw(
        UnitDesign design,
        Length width,
        Length height,
        [NotNullWhen(true)] out DrawnUnit? drawn,
        [NotNullWhen(false)] out UnitProblem? problem
    )
    {
        if (!PlainRectangle.TryDrawPlain(this, design, width, height, out drawn, out problem))
        {
            return false;
        }
        if (width != height)
        {
            drawn = null;
            problem = UnitWords.Region(
                this,
                design,
                "a plain square needs a region as wide as it is high",
                width,
                height,
                $"write rectangle {design.Parts[0].Value}, or change the map"
            );
            return false;
        }
        return true;
    }
}
