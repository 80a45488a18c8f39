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
        new HalfRectangleTwoAtATime(),
        new HalfRectangleSingleTriangles(),
        new QuarterSquareTwoAtATime(),
        new QuarterSquareSingleTriangles(),
        new GeeseFourAtATime(),
        new GeeseStitchAndFlip(),
        new SquareInSquareQuickCorners(),
        new SquareInSquareSetInTriangles(),
        new EightPointStarSetIn(),
        new EightPointStarSplitBackground(),
        new CornersStitchAndFlip(),
        new RailStripSets(),
        new RailSingleStrips(),
        new FourPatchStripSets(),
        new FourPatchPiecedSingly(),
        new NinePatchStripSets(),
        new NinePatchPiecedSingly(),
        new CheckerboardStripSets(),
        new CheckerboardPiecedSingly(),
        new BargelloStripTubes(),
        new SeminoleAngledSegments(),
        new LogCabinCutToLength(),
        new LogCabinTrimEachRound(),
        new CourthouseStepsCutToLength(),
        new CourthouseStepsTrimEachRound(),
        new HalfLogCabinCutToLength(),
        new HalfLogCabinTrimEachRound(),
        new QuarterCircleTemplates(),
        new FoundationPaper(),
        new FusedApplique(),
    ];

    /// <summary>The keywords, in the same order, for suggestions and the schema.</summary>
    public static ImmutableArray<string> Keywords { get; } = [.. All.Select(t => t.Keyword)];

    public static bool TryFind(string keyword, [NotNullWhen(true)] out Technique? technique)
    {
        foreach (Technique candidate in All)
        {
            if (candidate.Keyword == keyword)
            {
                technique = candidate;
                return true;
            }
        }
        technique = null;
        return false;
    }

    /// <summary>The techniques for a kind of unit, the preferred one first.</summary>
    public static ImmutableArray<Technique> For(UnitKind kind) =>
        [.. All.Where(t => t.Kind == kind.Keyword)];
}
