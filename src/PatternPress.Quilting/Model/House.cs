using System.Collections.Immutable;
using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Model;

/// <summary>
/// The house rules that every number follows: seam, ruler, fabric widths, allowances. Defaults are common practice
/// (no source) unless said otherwise; <c>templates/house.yaml</c>, a pattern and a size may change each.
/// </summary>
public sealed record House
{
    public static House Default { get; } = new();

    /// <summary>Seam allowance on every edge.</summary>
    public Length Seam { get; init; } = Length.FromInches(0, 1, 4);

    /// <summary>Usable width of fabric, selvages off; of a range of widths the narrowest, at which every number holds.
    /// </summary>
    public Length UsableWidth { get; init; } = Length.FromInches(40);

    /// <summary>The widest that the fabric may be, where the house names a range.</summary>
    public Length? UsableWidthTo { get; init; }

    /// <summary>Taken off the usable width of every strip: what squaring both of its ends costs.</summary>
    public Length EndSquaring { get; init; } = Length.FromInches(0, 1, 2);

    /// <summary>Share of its length and width that a fabric loses when it is washed before it is cut: 1/20 for 5 %.</summary>
    public Rational Shrinkage { get; init; }

    public Ruler Ruler { get; init; } = Ruler.Eighths;

    /// <summary>The unit that numbers are printed in.</summary>
    public LengthUnit Unit { get; init; } = LengthUnit.Inch;

    /// <summary>The steps a shop cuts fabric in: 1/8 yd.</summary>
    public Length YardStep { get; init; } = Length.FromYards(new Rational(1, 8));

    /// <summary>Whether a shop cuts thirds of a yard too.</summary>
    public bool Thirds { get; init; }

    /// <summary>Share of its length added to each fabric for mistakes: 1/20 for 5 %.</summary>
    public Rational Allowance { get; init; }

    /// <summary>Added once to the length of each fabric, for straightening the cut edge.</summary>
    public Length Squaring { get; init; } = Length.FromInches(2);

    /// <summary>Exact: units come out at size. Oversize: pieces are cut larger and units trimmed to size.</summary>
    public CuttingStyle Cutting { get; init; } = CuttingStyle.Exact;

    /// <summary>How much larger, where pieces are cut oversize.</summary>
    public Length Oversize { get; init; } = Length.FromInches(0, 1, 8);

    /// <summary>How much larger the squares for setting and corner triangles are cut, to be trimmed with the quilt's middle.
    /// </summary>
    public Length TriangleOversize { get; init; } = Length.Zero;

    /// <summary>Added to the length of each strip of a mitered border beyond what its points need; trimmed off.</summary>
    public Length MiterAllowance { get; init; } = Length.FromInches(2);

    /// <summary>The narrowest coping strip, finished (common practice, no source: below 1/2 in its seam allowances lie over
    /// each other).</summary>
    public Length CopingLeast { get; init; } = Length.FromInches(0, 1, 2);

    /// <summary>The widest coping strip, finished.</summary>
    public Length CopingMost { get; init; } = Length.FromInches(4);

    /// <summary>How freely a cutting plan may mix pieces within a strip.</summary>
    public PlanStyle Plan { get; init; } = PlanStyle.Plain;

    /// <summary>A freely mixed plan is taken only if it saves at least this much of what is bought: 1/8 yd.</summary>
    public Length ThriftyGain { get; init; } = Length.FromYards(new Rational(1, 8));

    public LongBorders LongBorders { get; init; } = LongBorders.LeastFabric;

    public Length BackingOverhang { get; init; } = Length.FromInches(4);

    /// <summary>Usable width of the backing fabric.</summary>
    public Length BackingWidth { get; init; } = Length.FromInches(40);

    /// <summary>Seam allowance between backing panels, wide because the selvages go with it.</summary>
    public Length BackingSeam { get; init; } = Length.FromInches(0, 1, 2);

    public Length BattingOverhang { get; init; } = Length.FromInches(4);

    /// <summary>Cut width of a binding strip.</summary>
    public Length BindingWidth { get; init; } = Length.FromInches(2, 1, 2);

    /// <summary>Added to the perimeter for mitred corners and the closing join (sources give 10 to 15 in).</summary>
    public Length BindingExtra { get; init; } = Length.FromInches(12);

    /// <summary>Whether binding is bought apart from the same fabric in the top, as a line of its own.</summary>
    public bool BindingApart { get; init; } = true;

    /// <summary>How strips longer than the fabric are joined.</summary>
    public JoinStyle Joins { get; init; } = JoinStyle.Straight;

    public PressingStyle Pressing { get; init; } = PressingStyle.Nested;

    /// <summary>Techniques the house never uses, by keyword.</summary>
    public ImmutableArray<string> Without { get; init; } = [];

    /// <summary>What a strip across fabric of a usable width gives, on the ruler's marks: the fabric shrunk, the ends
    /// squared.</summary>
    public Length StripLength(Length usableWidth) => Ruler.Down(AsCut(usableWidth) - EndSquaring);

    /// <summary>A width of fabric once it has shrunk.</summary>
    public Length AsCut(Length width) => width * (1 - Shrinkage);

    /// <summary>What to buy of a fabric of which a length is cut: the edge squared, the allowance added, before it
    /// shrinks.</summary>
    public Length NeededFor(Length cut) =>
        cut.Sign > 0 ? (cut + Squaring) * (1 + Allowance) / (1 - Shrinkage) : Length.Zero;

    /// <summary>The least unfinished size on one edge: two seams more than finished.</summary>
    public Length Unfinished(Length finished) => finished + (Seam * 2);
}
