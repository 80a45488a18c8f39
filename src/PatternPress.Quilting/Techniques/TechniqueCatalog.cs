using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Techniques.Ways;

namespace PatternPress.Quilting.Techniques;

/// <summary>Every technique. A new one is one file, its step text and one line here.</summary>
public static class TechniqueCatalog
{
    /// <summary>Kind by kind; within a kind the one that is preferred where two cost the same comes first.</summary>
    public static ImmutableArray<Technique> All { get; } =
    [
        new PlainSquares(),
        new PlainRectangles(),
        new HalfSquareTwoAtATime(),
        new HalfSquareEightAtATime(),
        new HalfSquareSingleTriangles(),
        new QuarterSquareTwoAtATime(),
        new QuarterSquareSingleTriangles(),
        new GeeseFourAtATime(),
        new GeeseStitchAndFlip(),
        new SquareInSquareQuickCorners(),
        new SquareInSquareSetInTriangles(),
        new CornersStitchAndFlip(),
        new RailStripSets(),
        new RailSingleStrips(),
        new FourPatchStripSets(),
        new FourPatchPiecedSingly(),
        new NinePatchStripSets(),
        new NinePatchPiecedSingly(),
        new CheckerboardStripSets(),
        new CheckerboardPiecedSingly(),
    ];

    private static readonly FrozenDictionary<string, Technique> ByKeyword = All.ToFrozenDictionary(
        t => t.Keyword,
        StringComparer.Ordinal
    );

    private static readonly FrozenDictionary<string, ImmutableArray<Technique>> ByKind =
        All.GroupBy(t => t.Kind)
            .ToFrozenDictionary(g => g.Key, g => g.ToImmutableArray(), StringComparer.Ordinal);

    /// <summary>The keywords, in the same order, for suggestions and the schema.</summary>
    public static ImmutableArray<string> Keywords { get; } = [.. All.Select(t => t.Keyword)];

    public static bool TryFind(string keyword, [NotNullWhen(true)] out Technique? technique) =>
        ByKeyword.TryGetValue(keyword, out technique);

    /// <summary>The techniques for a kind of unit, the preferred one first.</summary>
    public static ImmutableArray<Technique> For(UnitKind kind) =>
        ByKind.TryGetValue(kind.Keyword, out ImmutableArray<Technique> techniques)
            ? techniques
            : [];
}
