using PatternPress.Booklet.Figures.Drafting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>A small empty box that the maker ticks.</summary>
public static class TickBox
{
    private const double Side = 9;

    public static Picture Draw(FigureStyle style)
    {
        var draft = new Draft(style);
        double half = style.Edge.Value / 2;
        draft.Area(
            Paths.Of(new Box(half, half, Side - (2 * half), Side - (2 * half))),
            stroke: style.Pen(style.Edge) with
            {
                Join = StrokeJoin.Miter,
            }
        );
        return new(draft.Finish(Side, Side), "");
    }
}
