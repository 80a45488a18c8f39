using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Techniques.Kinds;

namespace PatternPress.Quilting.Techniques;

/// <summary>Every kind of unit the source language knows. A new kind is one file and one line here.</summary>
public static class UnitKindCatalog
{
    /// <summary>In the order a guide presents them.</summary>
    public static ImmutableArray<UnitKind> All { get; } =
    [
        PlainSquare.Kind,
        PlainRectangle.Kind,
        HalfSquare.Kind,
        HalfRectangle.Kind,
        QuarterSquare.Kind,
        FlyingGeese.Kind,
        SquareInSquare.Kind,
        EightPointStar.Kind,
        FlippedCorners.Kind,
        Rail.Kind,
        FourPatch.Kind,
        NinePatch.Kind,
        Checkerboard.Kind,
        Bargello.Kind,
        Seminole.Kind,
        LogCabin.Kind,
        CourthouseSteps.Kind,
        HalfLogCabin.Kind,
        QuarterCircle.Kind,
        FoundationSection.Kind,
        AppliqueBlock.Kind,
    ];

    /// <summary>The keywords, in the same order, for suggestions and the schema.</summary>
    public static ImmutableArray<string> Keywords { get; } = [.. All.Select(k => k.Keyword)];

    public static bool TryFind(string keyword, [NotNullWhen(true)] out UnitKind? kind)
    {
        foreach (UnitKind candidate in All)
        {
            if (candidate.Keyword == keyword)
            {
                kind = candidate;
                return true;
            }
        }
        kind = null;
        return false;
    }
}
