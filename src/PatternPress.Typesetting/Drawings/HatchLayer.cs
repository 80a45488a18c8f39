using System.Collections.Immutable;

namespace PatternPress.Typesetting.Drawings;

/// <summary>One layer of a hatch. Lengths are points on paper at scale 1; angles are degrees, 0 across, 90 down.</summary>
public abstract record HatchLayer
{
    /// <summary>Parallel lines.</summary>
    public sealed record Lines(double Degrees, double Spacing, double Width) : HatchLayer
    {
        /// <summary>How far the first line is moved, in points across the lines.</summary>
        public double Offset { get; init; }

        /// <summary>Dash, gap, dash, gap ...; none for solid lines. A dash of 0 is a dot.</summary>
        public ImmutableArray<double> Dashes { get; init; } = [];

        /// <summary>How far the dashes of every other line are moved along.</summary>
        public double Stagger { get; init; }
    }

    /// <summary>Parallel zigzag or wavy lines.</summary>
    public sealed record Waves(
        double Degrees,
        double Spacing,
        double Width,
        double Length,
        double Height
    ) : HatchLayer
    {
        /// <summary>Curved rather than pointed.</summary>
        public bool Round { get; init; }
    }

    /// <summary>Small shapes on a grid.</summary>
    public sealed record Shapes(HatchShape Shape, double Size, double Spacing, double Width)
        : HatchLayer
    {
        /// <summary>Every other row moved by half the spacing.</summary>
        public bool Staggered { get; init; } = true;

        /// <summary>Filled rather than outlined.</summary>
        public bool Filled { get; init; }
    }
}
