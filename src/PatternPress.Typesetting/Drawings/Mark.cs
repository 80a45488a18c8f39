using System.Collections.Immutable;
using PatternPress.Typesetting.Inlines;

namespace PatternPress.Typesetting.Drawings;

/// <summary>One entry of a drawing's display list. Later marks cover earlier ones.</summary>
public abstract record Mark
{
    /// <summary>A path filled, covered with an image, hatched and outlined, in that order.</summary>
    public sealed record Outline(VectorPath Path) : Mark
    {
        public Ink? Fill { get; init; }

        /// <summary>Covers the flat fill; it scales with the drawing.</summary>
        public ImageFill? Image { get; init; }

        public HatchFill? Hatch { get; init; }

        public Stroke? Stroke { get; init; }

        /// <summary>Whether overlapping parts of the path cut holes into each other.</summary>
        public bool EvenOdd { get; init; }
    }

    /// <summary>A straight line, possibly with something at its ends.</summary>
    public sealed record Line(XY From, XY To, Stroke Stroke) : Mark
    {
        public Arrowhead Start { get; init; }

        public Arrowhead End { get; init; }

        /// <summary>The length of the arrowheads on paper.</summary>
        public Points HeadSize { get; init; } = new(5_000);
    }

    /// <summary>Words at a point.</summary>
    public sealed record Label(ImmutableArray<Inline> Content, XY At, LabelStyle Style) : Mark;

    /// <summary>Marks of which only what lies inside the path shows.</summary>
    public sealed record Clip(VectorPath Path, ImmutableArray<Mark> Marks) : Mark;

    /// <summary>Marks moved, turned or scaled together. Pens, letters and hatches keep their size on paper.</summary>
    public sealed record Group(Transform Transform, ImmutableArray<Mark> Marks) : Mark;
}
