using System.Collections.Immutable;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Tables;

namespace PatternPress.Booklet.Sections;

/// <summary>
/// What a fabric is used for, all of it and in the pattern's own words: parts of blocks, sashing, borders, binding, backing.
/// </summary>
internal static class FabricUses
{
    /// <summary>In the order in which they are sewn.</summary>
    /// <param name="fabric">Fabric key.</param>
    /// <param name="size">Only what it is in this size; null for any size.</param>
    public static ImmutableArray<string> Of(string fabric, SectionContext context, int? size = null)
    {
        string? said = context.Pattern.Fabric(fabric)?.Use;
        var uses = new List<string>();
        if (!string.IsNullOrWhiteSpace(said))
        {
            uses.Add(said);
        }
        foreach (string other in Parts(fabric, context, size).Concat(Others(fabric, context, size)))
        {
            // A designer's own word for it is not said twice.
            if (!uses.Any(u => Says(u, other)))
            {
                uses.Add(other);
            }
        }
        return [.. uses.Distinct()];
    }

    /// <summary>Whether a word says what another does, more exactly or for several of its kind: "borders" says "outer border".
    /// </summary>
    private static bool Says(string said, string other) =>
        said.Contains(other, StringComparison.OrdinalIgnoreCase)
        || (
            said.EndsWith('s')
            && said.Length > 1
            && other.EndsWith(" " + said[..^1], StringComparison.OrdinalIgnoreCase)
        );

    private static IEnumerable<string> Parts(string fabric, SectionContext context, int? size)
    {
        foreach (BlockRow row in context.Tables.Blocks)
        {
            if (
                (size is { } only && row.BySize[only] is null)
                || context.Pattern.Coloring(row.Coloring) is not { } coloring
            )
            {
                continue;
            }
            if (row.Block is null)
            {
                if (coloring.Fabrics.GetValueOrDefault(Coloring.PlainPart) == fabric)
                {
                    yield return context.Labels["for-plain-block"];
                }
                continue;
            }
            foreach (Sourced<string> part in context.Pattern.Block(row.Block)?.Parts ?? [])
            {
                if (coloring.Fabrics.GetValueOrDefault(part.Value) == fabric)
                {
                    yield return part.Value;
                }
            }
        }
    }

    private static IEnumerable<string> Others(string fabric, SectionContext context, int? size)
    {
        Labels labels = context.Labels;
        IEnumerable<Quilt> quilts = size is { } only
            ? context.Manuscript.Quilts.Skip(only).Take(1)
            : context.Manuscript.Quilts;
        IEnumerable<Sash> sashes = quilts.SelectMany(q => q.Sashes).Where(s => s.Fabric == fabric);
        foreach (
            bool stone in sashes.Select(s => s.Kind == SashKind.Cornerstone).Distinct().Order()
        )
        {
            yield return labels[stone ? "use-cornerstones" : "use-sashing"];
        }
        foreach (
            SettingPieceKind kind in quilts
                .SelectMany(q => q.Pieces)
                .Where(p => p.Fabric == fabric)
                .Select(p => p.Kind)
                .Distinct()
                .Order()
        )
        {
            yield return labels[
                kind switch
                {
                    SettingPieceKind.Side => "use-side-triangles",
                    SettingPieceKind.Corner => "use-corner-triangles",
                    SettingPieceKind.Triangle => "patch-triangles",
                    SettingPieceKind.Diamond => "patch-diamonds",
                    SettingPieceKind.HalfHexagon => "patch-half-hexagons",
                    _ => "patch-ends",
                }
            ];
        }
        foreach (
            (int number, bool corner) in quilts
                .SelectMany(q => q.Borders)
                .SelectMany(b => b.Pieces.Select(p => (b.Number, p)))
                .Where(p => p.p.Fabric == fabric)
                .Select(p => (p.Number, p.p.Side == BorderSide.Corner))
                .Distinct()
                .Order()
        )
        {
            string name = CutWords.BorderName(number, context);
            yield return corner ? labels.Format("border-corners", name) : name;
        }
        bool Within(int i) => size is null || i == size;
        if (context.Tables.Binding.Where((b, i) => Within(i) && b?.Fabric == fabric).Any())
        {
            yield return labels["use-binding"];
        }
        if (context.Tables.Backing.Where((b, i) => Within(i) && b?.Fabric == fabric).Any())
        {
            yield return labels["use-backing"];
        }
    }
}
