using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;

namespace PatternPress.Quilting.Techniques;

/// <summary>
/// What a step's diagram shows, as geometry in inches at true proportion: shapes in back-to-front order, the lines
/// drawn, sewn and cut, arrows, measures. No line weights, no paper, no words: how it is drawn is decided elsewhere.
/// All frames of a recipe are meant to be drawn to one scale.
/// </summary>
/// <param name="Frames">Pictures side by side, from left to right. Each has its own origin.</param>
public sealed record Sketch(ImmutableArray<SketchFrame> Frames);

/// <param name="Shapes">Back to front.</param>
/// <param name="Lines">Over the shapes.</param>
/// <param name="Labels">Over the lines, centered on their points.</param>
public sealed record SketchFrame(
    ImmutableArray<SketchShape> Shapes,
    ImmutableArray<SketchLine> Lines,
    ImmutableArray<SketchLabel> Labels
)
{
    /// <summary>What stands between the frame before and this one.</summary>
    public FrameLink Link { get; init; }

    /// <summary>
    /// How many of these there are in one batch: printed as "× 2" below the frame; 1 is not printed. The same in all
    /// sizes, so strip sets, whose number depends on the size, leave it at 1.
    /// </summary>
    public int Count { get; init; } = 1;

    /// <summary>What the shapes and lines take up; dimension lines stand outside it by a distance on paper.</summary>
    public Rect Bounds
    {
        get
        {
            ImmutableArray<Point> points =
            [
                .. Shapes.SelectMany(s => s.Shape.Corners),
                .. Lines.SelectMany(l => new[] { l.From, l.To }),
            ];
            return points.IsEmpty ? default : new Polygon(points).Bounds;
        }
    }
}

/// <summary>What stands between two frames.</summary>
public enum FrameLink
{
    /// <summary>Nothing: the first frame, or one that is simply beside the other.</summary>
    None,

    /// <summary>An arrow: the frame before becomes this one.</summary>
    Then,

    /// <summary>A plus sign: the frame before and this one are put together.</summary>
    And,
}

/// <param name="Role">Whose fabric fills it; −1 for none.</param>
/// <param name="Side">Right side up, or the wrong side of the fabric showing.</param>
public sealed record SketchShape(Polygon Shape, int Role, FabricSide Side);

public enum FabricSide
{
    Right,
    Wrong,
}

/// <param name="Measure">For a dimension: the name of the recipe's measure to print beside it.</param>
public sealed record SketchLine(SketchLineKind Kind, Point From, Point To, string? Measure = null);

public enum SketchLineKind
{
    /// <summary>Drawn by the maker on the fabric.</summary>
    Marked,

    /// <summary>A seam to sew.</summary>
    Sewn,

    /// <summary>A cut with the rotary cutter.</summary>
    Cut,

    /// <summary>A fold, a crease, or a seam that is already there.</summary>
    Fold,

    /// <summary>An arrow in the direction in which a seam allowance is pressed.</summary>
    Press,

    /// <summary>
    /// A dimension. From and To are the ends of the edge measured, clockwise round the shape; the dimension line
    /// stands outside, on the left hand of one going from From to To.
    /// </summary>
    Dimension,
}

/// <param name="Measure">Name of one of the recipe's measures, to be printed; or null.</param>
/// <param name="Text">Fixed text that is the same in every language; or null.</param>
public sealed record SketchLabel(Point At, string? Measure, string? Text);
