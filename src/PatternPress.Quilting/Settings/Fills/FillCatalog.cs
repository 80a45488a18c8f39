using System.Collections.Immutable;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Settings.Fills;

/// <summary>Every way of filling a setting, found by keyword or kind.</summary>
public static class FillCatalog
{
    public static ImmutableArray<FillPattern> All { get; } =
    [
        new WholeMap(),
        new Repeat(),
        new Checkerboard(),
        new Rings(),
        new Diagonals(),
        new EvenRows(),
        new Scatter(),
    ];

    public static FillPattern Of(FillKind kind) => All.First(fill => fill.Kind == kind);

    public static FillPattern? Find(string keyword) =>
        All.FirstOrDefault(fill => fill.Keyword == keyword);
}
