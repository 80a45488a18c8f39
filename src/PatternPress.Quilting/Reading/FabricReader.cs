using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Pictures;
using PatternPress.Quilting.Rules;
using PatternPress.Source.Syntax;

namespace PatternPress.Quilting.Reading;

/// <summary>Reads <c>fabrics:</c>.</summary>
internal static class FabricReader
{
    private const string LookAlike = "0oO1lI";

    public static ImmutableArray<Fabric> Read(MapNode? map, ReadContext context)
    {
        var fabrics = ImmutableArray.CreateBuilder<Fabric>();
        var folded = new Dictionary<string, Entry>(StringComparer.Ordinal);
        foreach (Entry entry in map?.Entries ?? [])
        {
            string key = entry.Key.Value;
            if (folded.TryGetValue(Fold(key), out Entry? earlier))
            {
                context.Report(
                    PP0228_LookalikeKeys.Found(
                        entry.Key.Span,
                        key,
                        earlier.Key.Span,
                        earlier.Key.Value,
                        "fabric"
                    )
                );
            }
            else
            {
                folded.Add(Fold(key), entry);
            }
            if (entry.Value is not MapNode value)
            {
                continue;
            }
            Cloth? cloth = ClothReader.Read(value, context);
            // A color of the wrong form was reported with the shape of the file.
            if (
                !Color.TryParse(
                    ReadContext.Text(value, "color")?.Value.Trim() ?? "",
                    out Color color
                ) && cloth is not null
            )
            {
                color = MeanColor.Of(cloth.Picture);
            }
            (Length From, Length? To)? width = context.MeasureRange(
                value,
                "usable-width",
                "usable width"
            );
            string? Plain(string name) => ReadContext.Text(value, name)?.Value.Trim();
            fabrics.Add(
                new Fabric(
                    key,
                    Plain("name") ?? key,
                    color,
                    Plain("print"),
                    Plain("use"),
                    Plain("collection"),
                    ReadContext.Flag(value, "directional", otherwise: false),
                    width?.From,
                    width?.To,
                    fabrics.Count,
                    entry.Key.Span
                )
                {
                    Panel = PanelReader.Read(value["buy"], $"fabric \"{key}\"", context),
                    Cloth = cloth,
                }
            );
        }
        return fabrics.ToImmutable();
    }

    // Letters that a reader of a printed chart would take for one another fold to the same.
    private static string Fold(string key) =>
        string.Create(
            key.Length,
            key,
            (to, from) =>
            {
                for (int i = 0; i < from.Length; i++)
                {
                    int at = LookAlike.IndexOf(from[i]);
                    to[i] = at < 0 ? from[i] : LookAlike[at / 3 * 3];
                }
            }
        );
}
