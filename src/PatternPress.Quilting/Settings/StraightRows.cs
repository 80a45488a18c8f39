using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;

namespace PatternPress.Quilting.Settings;

/// <summary>The rows in which an upright field is sewn: blocks and the strips beside them, and rows of sashing, from the
/// top down.</summary>
public static class StraightRows
{
    public static ImmutableArray<LayoutRow> Of(
        IReadOnlyList<BlockPlace> places,
        IReadOnlyList<Sash> sashes
    )
    {
        var blockRows = new SortedDictionary<int, List<(Length X, LayoutPart Part)>>();
        var heads = new List<(Length Y, int Row, List<(Length X, LayoutPart Part)> Parts)>();
        for (int i = 0; i < places.Count; i++)
        {
            BlockPlace place = places[i];
            if (!blockRows.TryGetValue(place.Row, out List<(Length, LayoutPart)>? row))
            {
                blockRows.Add(place.Row, row = []);
                heads.Add((place.Place.Y, place.Row, row));
            }
            row.Add((place.Place.X, new LayoutPart(LayoutPartKind.Block, i)));
        }
        var sashRows = new Dictionary<Length, List<(Length X, LayoutPart Part)>>();
        for (int i = 0; i < sashes.Count; i++)
        {
            Sash sash = sashes[i];
            List<(Length, LayoutPart)>? row;
            if (sash.Kind == SashKind.Upright)
            {
                row = blockRows[sash.Row];
            }
            else if (!sashRows.TryGetValue(sash.Place.Y, out row))
            {
                sashRows.Add(sash.Place.Y, row = []);
                heads.Add((sash.Place.Y, -1, row));
            }
            row.Add((sash.Place.X, new LayoutPart(LayoutPartKind.Sash, i)));
        }
        heads.Sort((a, b) => a.Y.CompareTo(b.Y));
        var rows = ImmutableArray.CreateBuilder<LayoutRow>(heads.Count);
        foreach ((Length _, int row, List<(Length X, LayoutPart Part)> parts) in heads)
        {
            parts.Sort((a, b) => a.X.CompareTo(b.X));
            rows.Add(
                new LayoutRow(
                    row < 0 ? LayoutRowKind.Sashing : LayoutRowKind.Blocks,
                    row,
                    [.. parts.Select(p => p.Part)]
                )
            );
        }
        return rows.MoveToImmutable();
    }
}
