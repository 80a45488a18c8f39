using System.Collections.Immutable;
using System.Globalization;
using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Editions;

/// <summary>Two editions of a pattern side by side.</summary>
/// <param name="Old">What makers may hold.</param>
/// <param name="Changes">The gravest first, then by size, in the order of the tables.</param>
/// <param name="Altered">Keys of sizes that are another quilt now.</param>
public sealed record EditionComparison(
    Edition Old,
    Edition New,
    ImmutableArray<EditionChange> Changes,
    ImmutableArray<string> Altered
)
{
    public static EditionComparison Of(Edition old, Edition now)
    {
        var before = new Dictionary<(string, string, string, string), EditionFact>();
        foreach (EditionFact fact in old.Facts)
        {
            before[KeyOf(fact)] = fact;
        }
        var differences = new List<(EditionFact? Old, EditionFact? New)>();
        var met = new HashSet<(string, string, string, string)>();
        foreach (EditionFact fact in now.Facts)
        {
            met.Add(KeyOf(fact));
            EditionFact? was = before.GetValueOrDefault(KeyOf(fact));
            if (was?.Value != fact.Value)
            {
                differences.Add((was, fact));
            }
        }
        differences.AddRange(
            old.Facts.Where(fact => !met.Contains(KeyOf(fact)))
                .Select(fact => ((EditionFact?)fact, (EditionFact?)null))
        );
        ImmutableArray<string> both = [.. old.Sizes.Intersect(now.Sizes)];
        HashSet<string> altered =
        [
            .. differences
                .Where(d => ShowsQuilt(d.New ?? d.Old!))
                .SelectMany(d =>
                    (d.New ?? d.Old!).Size is { Length: > 0 } size
                        ? (IEnumerable<string>)[size]
                        : both
                )
                .Where(both.Contains),
        ];
        List<string> order = [.. now.Sizes, .. old.Sizes.Except(now.Sizes)];
        return new EditionComparison(
            old,
            now,
            [
                .. differences
                    .Select(d => ChangeOf(d.Old, d.New, both, altered))
                    .OrderBy(change => change.Effect)
                    .ThenBy(change => order.IndexOf(change.Size)),
            ],
            [.. both.Where(altered.Contains)]
        );
    }

    private static (string, string, string, string) KeyOf(EditionFact fact) =>
        (fact.Table, fact.Row, fact.Item, fact.Size);

    // What the finished quilt looks like, as opposed to how it is made.
    private static bool ShowsQuilt(EditionFact fact) =>
        fact.Table switch
        {
            "sizes" => fact.Item is not ("name" or "seam"),
            "placement" => true,
            "blocks" => fact.Item.StartsWith("finished", StringComparison.Ordinal),
            "borders" or "sashing" or "triangles" => fact.Item.StartsWith(
                "finished",
                StringComparison.Ordinal
            ),
            _ => false,
        };

    private static EditionChange ChangeOf(
        EditionFact? old,
        EditionFact? now,
        ImmutableArray<string> both,
        HashSet<string> altered
    )
    {
        EditionFact fact = (now ?? old)!;
        return new EditionChange(
            fact.Table,
            fact.Row,
            fact.Item,
            fact.Size,
            old?.Value,
            now?.Value,
            EffectOf(fact, old?.Value, now?.Value, both, altered)
        );
    }

    private static ChangeEffect EffectOf(
        EditionFact fact,
        string? old,
        string? now,
        ImmutableArray<string> both,
        HashSet<string> altered
    )
    {
        if (fact.Size.Length > 0 && !both.Contains(fact.Size))
        {
            // A size that is new harms nobody; one that is gone is still right for those who hold it.
            return ChangeEffect.Harmless;
        }
        if (altered.Contains(fact.Size) || (fact.Size.Length == 0 && altered.Count > 0))
        {
            return ChangeEffect.Alters;
        }
        ChangeEffect unequal = ChangeEffect.Hurts;
        switch (fact.Table, fact.Item)
        {
            // What is bought and how many pieces are cut or made: less was short, more was in vain.
            case ("requirements", "buy" or "width" or "height"):
            case ("substitutes", "buy"):
            case ("scraps", "count"):
            case ("cutting", "count"):
            case ("units", "made" or "batches"):
            case ("finishing", "strips" or "panels" or "joined length" or "panel length"):
                return Compare(old, now) switch
                {
                    < 0 => ChangeEffect.Hurts,
                    > 0 => ChangeEffect.Spends,
                    _ => unequal,
                };
            // How much of it there is to spare, and packages on a shelf.
            case ("requirements", _):
            // Another way of laying the same pieces on the fabric.
            case ("strips" or "substitute strips" or "substitutes", _):
            case ("sizes", "name"):
            case ("units", "kind" or "technique"):
                return ChangeEffect.Harmless;
            // Sizes to cut, to sew and to trim to, what goes where, and how often.
            default:
                return unequal;
        }
    }

    /// <summary>Below zero if the first is less; null where either is no number.</summary>
    private static int? Compare(string? old, string? now)
    {
        if (old is null || now is null)
        {
            return old is null ? -1 : 1;
        }
        return Number(old) is { } a && Number(now) is { } b ? a.CompareTo(b) : null;
    }

    private static Length? Number(string value)
    {
        if (
            long.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out long count)
            && count <= LengthText.LargestInches
        )
        {
            return Length.FromInches(count);
        }
        return LengthText.TryParse(value, LengthUnit.Inch, out Length length, out _)
            ? length
            : null;
    }
}
