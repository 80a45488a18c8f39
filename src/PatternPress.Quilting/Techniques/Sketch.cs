using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;

namespace PatternPress.Quilting.Techniques;

/// <summary>
/// What a step's diagram shows, as geometry in inches at true proportion: shapes in back-to-front order, the lines
/// drawn, sewn and cut, arrows, measures. No line weights, no paper: how it is drawn is decided elsewhere.
/// </summary>
/// <param name="Frames">Pictures side by side: before and after, or one per piece. Each has its own origin.</param>
public sealed record Sketch(ImmutableArray<SketchFrame> Frames);

public sealed record SketchFrame(
    ImmutableArray<SketchShape> Shapes,
    ImmutableArray<SketchLine> Lines,
    ImmutableArray<SketchLabel> Labels
);

/// <param name="Role">Whose fabric fills it; −1 for none.</param>
/// <param name="Side">Right side up, or the wrong side of the fabric showing.</param>
public sealed record SketchShape(Polygon Shape, int Role, FabricSide Side);

public enum FabricSide
{
    Right,
    Wrong,
}

public sealed record SketchLine(SketchLineKind Kind, Point From, Point To);

public enum SketchLineKind
{
    /// <summary>Drawn by the maker on the fabric.</summary>
    Marked,

    /// <summary>A seam to sew.</summary>
    Sewn,

    /// <summary>A cut with the rotary cutter.</summary>
    Cut,

    /// <summary>An edge to fold or a seam seen from the right side.</summary>
    Fold,

    /// <summary>The direction in which a seam is pressed.</summary>
    Press,

    /// <summary>From one state to the next.</summary>
    Then,

    /// <summary>A dimension along an edge; the label beside it tells the measure.</summary>
    Dimension,
}

/// <param name="Measure">Name of one of the recipe's measures, or of a piece, to be printed; or null.</param>
/// <param name="Text">Fixed text where no measure is meant: "1/4 in" comes as a measure, "×2" as text.</param>
public sealed record SketchLabel(Point At, string? Measure, string? Text);
