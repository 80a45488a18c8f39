using System.Globalization;
using PatternPress.Quilting.Measures;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A size asks for more than any quilt holds.</summary>
public sealed class PP0220_TooManyBlocks : ReadingRule
{
    public static PP0220_TooManyBlocks Instance { get; } = new();

    private PP0220_TooManyBlocks()
        : base("PP0220", Severity.Error, "Too many blocks") { }

    /// <param name="what">What has that many: "size \"queen\"", "the grid of block \"lamp\"".</param>
    /// <param name="limit">The most that is read, across times down.</param>
    public static Diagnostic Found(Span span, string what, long columns, long rows, long limit) =>
        Instance.Report(
            span,
            $"{what} has {columns} × {rows} = {(Int128)columns * rows:N0} places",
            $"more than {limit:N0}",
            "No quilt that a person sews is that large.",
            "is a digit too many?"
        );

    /// <summary>The quilt would be larger than anything a measure may be.</summary>
    public static Diagnostic TooLarge(
        Span span,
        string size,
        Length width,
        Length height,
        Length limit
    ) =>
        Instance.Report(
            span,
            $"size \"{size}\" would be {Wording.Measure(width, height)}",
            $"more than {Wording.Measure(limit)}",
            "No quilt that a person sews is that large.",
            "use fewer or smaller blocks"
        );

    /// <param name="place">The first size too many.</param>
    public static Diagnostic TooManySizes(Span place, int sizes, int most) =>
        Instance.Report(
            place,
            $"the pattern has {sizes} sizes",
            $"more than {most}",
            "The sizes from here on were not looked at.",
            $"offer at most {most} sizes, or make two patterns of it"
        );

    /// <param name="place">The size with which it is too much.</param>
    public static Diagnostic TooManyTogether(Span place, string size, long blocks, long most) =>
        Instance.Report(
            place,
            $"the sizes up to \"{size}\" have {blocks.ToString("N0", CultureInfo.InvariantCulture)} places together",
            $"more than {most.ToString("N0", CultureInfo.InvariantCulture)}",
            "The sizes from here on were not looked at.",
            "use fewer or larger blocks"
        );
}
