using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A place of a one-patch quilt is filled with a block.</summary>
public sealed class PP0257_BlockAmongPatches : ReadingRule
{
    public static PP0257_BlockAmongPatches Instance { get; } = new();

    private PP0257_BlockAmongPatches()
        : base("PP0257", Severity.Error, "Block among patches") { }

    /// <param name="place">Where the coloring stands in the fill.</param>
    public static Diagnostic Found(Span place, string coloring, string block) =>
        Instance.Report(
            place,
            $"coloring \"{coloring}\" is of block \"{block}\", and a one-patch quilt has no blocks",
            "a place for one fabric",
            hint: "fill the places with plain colorings: P: plain A"
        );
}
