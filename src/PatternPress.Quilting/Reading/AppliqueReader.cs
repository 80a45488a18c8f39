using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Rules;
using PatternPress.Source.Syntax;

namespace PatternPress.Quilting.Reading;

/// <summary>Reads <c>appliques:</c>: shapes drawn as path data.</summary>
internal static class AppliqueReader
{
    /// <summary>More shapes than anyone traces for one block.</summary>
    private const int MostShapes = 100;

    public static ImmutableDictionary<string, AppliqueDesign> Read(
        MapNode? map,
        ReadContext context
    )
    {
        var found = ImmutableDictionary.CreateBuilder<string, AppliqueDesign>(
            StringComparer.Ordinal
        );
        foreach (Entry entry in map?.Entries ?? [])
        {
            if (entry.Value is MapNode value && ReadOne(entry.Key, value, context) is { } design)
            {
                found[entry.Key.Value] = design;
            }
        }
        return found.ToImmutable();
    }

    private static AppliqueDesign? ReadOne(ScalarNode key, MapNode map, ReadContext context)
    {
        if (
            ReadContext.Text(map, "grid") is not { } text
            || map["shapes"] is not ListNode { Items.Length: > 0 } list
        )
        {
            return null;
        }
        bool whole = ReadContext.TryGrid(text.Value, out (int Columns, int Rows) grid);
        if (!whole)
        {
            context.Report(
                PP0273_UnreadablePath.Found(
                    text.Span,
                    key.Value,
                    $"\"{text.Value}\" is no grid",
                    "write units across x units down: 24 x 24"
                )
            );
        }
        var shapes = ImmutableArray.CreateBuilder<AppliqueShape>();
        foreach (MapNode item in list.Items.Take(MostShapes).OfType<MapNode>())
        {
            if (
                ReadContext.Text(item, "part") is { } part
                && ReadContext.Text(item, "path") is { } data
            )
            {
                if (Outline(key.Value, data, context) is { } outline)
                {
                    shapes.Add(new AppliqueShape(part.Value.Trim(), outline, data.Span));
                    continue;
                }
                whole = false;
            }
        }
        return whole && shapes.Count > 0
            ? new AppliqueDesign(key.Value, grid.Columns, grid.Rows, shapes.ToImmutable(), key.Span)
            : null;
    }

    private static PathPart? Outline(string key, ScalarNode data, ReadContext context)
    {
        if (!PathData.TryParse(data.Value, out PathData path, out int at, out string wanted))
        {
            Slice rest = data.Whole.Sub(Math.Min(at, Math.Max(0, data.Value.Length - 1)), 1);
            context.Report(
                PP0273_UnreadablePath.Found(
                    rest.Span,
                    key,
                    at >= data.Value.Length
                        ? "the path data ends too early"
                        : $"the path data cannot be read from \"{data.Value[at]}\" on",
                    $"here stands {wanted}; the letters and numbers are those of SVG path data"
                )
            );
            return null;
        }
        if (path.Parts.Length != 1 || Math.Abs(path.Parts[0].Area) < 1e-6)
        {
            context.Report(
                PP0273_UnreadablePath.Found(
                    data.Span,
                    key,
                    path.Parts.Length > 1
                        ? $"it has {path.Parts.Length} outlines"
                        : "it encloses nothing",
                    "a shape is one closed outline: give each outline a shape of its own"
                )
            );
            return null;
        }
        return path.Parts[0];
    }
}
