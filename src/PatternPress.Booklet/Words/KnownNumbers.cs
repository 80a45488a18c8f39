using System.Collections.Frozen;
using System.Globalization;
using System.Text.RegularExpressions;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Tables;

namespace PatternPress.Booklet.Words;

/// <summary>
/// The numbers that a pattern's documents may show: those of its tables, size by size, what is reckoned from them in one
/// step (a size with its seams), and in running text those that the house or the designer typed.
/// </summary>
public sealed partial class KnownNumbers
{
    private readonly FrozenDictionary<string, FrozenSet<string>> _bySize;
    private readonly FrozenSet<string> _ofAny;
    private readonly FrozenSet<string> _typed;

    private KnownNumbers(
        FrozenDictionary<string, FrozenSet<string>> bySize,
        FrozenSet<string> typed
    )
    {
        _bySize = bySize;
        _ofAny = bySize.Values.SelectMany(numbers => numbers).ToFrozenSet();
        _typed = typed;
    }

    public static KnownNumbers Of(Manuscript manuscript, Templates templates)
    {
        PrintedTables tables = manuscript.Tables;
        var numbers = new NumberWords(tables.Unit, templates.Labels);
        var bySize = new Dictionary<string, HashSet<string>>(StringComparer.Ordinal);
        var seams = new Dictionary<string, Length>(StringComparer.Ordinal);
        foreach (SizeColumn size in tables.Sizes)
        {
            bySize[size.Name] = [];
            seams[size.Name] = size.Seam * 2;
        }
        var names = tables.Sizes.ToDictionary(size => size.Key, size => size.Name);
        LengthUnit unit = numbers.IsMetric ? LengthUnit.Centimetre : LengthUnit.Inch;
        foreach (PrintedFact fact in PrintedFacts.Of(tables))
        {
            foreach (
                string size in fact.Size.Length == 0
                    ? names.Values
                    : (IEnumerable<string>)[names[fact.Size]]
            )
            {
                HashSet<string> known = bySize[size];
                known.UnionWith(In(fact.Value));
                known.UnionWith(In(fact.Item));
                known.UnionWith(In(fact.Row));
                if (
                    fact.Unit is "in" or "cm"
                    && (
                        LengthText.TryParse(fact.Value, unit, out Length length, out _)
                        || LengthText.TryParseExact(fact.Value, out length)
                    )
                )
                {
                    // A length with a root in it is printed to the ruler's next mark; pieced parts with their seams.
                    known.Add(numbers.Number(length));
                    known.Add(numbers.Number(length + seams[size]));
                }
            }
        }
        for (int i = 0; i < tables.Sizes.Length; i++)
        {
            // What a fabric takes for all its purposes together.
            foreach (Purchase purchase in tables.Requirements.Purchases())
            {
                if (purchase.Bought(i) is { } bought)
                {
                    bySize[tables.Sizes[i].Name].UnionWith(In(numbers.Bought(bought)));
                }
            }
            // Blocks of the field, of rounds and of borders together.
            bySize[tables.Sizes[i].Name]
                .Add($"{tables.Blocks.Sum(block => block.BySize[i]?.Count ?? 0)}");
            if (tables.Backing[i] is { } backing)
            {
                // What the panels measure when they are joined.
                bySize[tables.Sizes[i].Name]
                    .Add(
                        numbers.Number(
                            (backing.FabricWidth * backing.Panels)
                                - (backing.JoinLoss * (backing.Panels - 1))
                        )
                    );
            }
        }
        for (int i = 0; i < tables.Sizes.Length; i++)
        {
            bySize[tables.Sizes[i].Name].UnionWith(Sums(tables, i));
        }
        House house = manuscript.Pattern.House;
        return new KnownNumbers(
            bySize.ToFrozenDictionary(size => size.Key, size => size.Value.ToFrozenSet()),
            templates
                .Texts.Concat(templates.Labels.Names.Select(name => templates.Labels[name]))
                .Append(manuscript.Source?.Source.Text ?? "")
                .SelectMany(In)
                .Concat(OfHouse(house, tables).Select(numbers.Number))
                .Concat(Customary(numbers.IsMetric))
                .Append(Told(tables.Fabrics.Length))
                .Append(Told(tables.Sizes.Length))
                .Append(Told(manuscript.Pattern.Info.Date.Year))
                .ToFrozenSet()
        );
    }

    // What texts may quote of several rows together.
    private static IEnumerable<string> Sums(PrintedTables tables, int size)
    {
        foreach (var cutting in tables.Cutting.GroupBy(table => table.Fabric))
        {
            yield return Told(
                cutting.Sum(table => table.BySize[size]?.Strips.Sum(strip => strip.Count) ?? 0)
            );
        }
        yield return Told(tables.Borders.Count(row => row.BySize[size] is not null));
        foreach (int count in tables.Placement[size].Counts().Values)
        {
            yield return Told(count);
        }
        foreach (var design in tables.Blocks.GroupBy(row => row.Block))
        {
            yield return Told(design.Sum(row => row.BySize[size]?.Count ?? 0));
        }
    }

    // House rules, and what follows from them alone.
    private static IEnumerable<Length> OfHouse(House house, PrintedTables tables)
    {
        Length[] rules =
        [
            house.Seam,
            house.Ruler.Step,
            house.Oversize,
            house.UsableWidth,
            house.EndSquaring,
            house.Squaring,
            house.MiterAllowance,
            house.BackingOverhang,
            house.BackingWidth,
            house.BackingSeam,
            house.BattingOverhang,
            house.BindingWidth,
            house.BindingExtra,
        ];
        foreach (Length rule in rules)
        {
            yield return rule;
            // Stay stitching runs in the middle of the allowance.
            yield return rule / 2;
        }
        foreach (
            Length width in tables
                .Requirements.Fabrics.SelectMany(row => row.BySize)
                .OfType<RequirementCell>()
                .Where(cell => cell.Panels is null)
                .Select(cell => cell.UsableWidth)
                .Append(house.UsableWidth)
                .Distinct()
        )
        {
            yield return house.StripLength(width);
        }
        // Three strips sewn side by side to test the seam.
        foreach (Length seam in tables.Sizes.Select(size => size.Seam).Distinct())
        {
            yield return (Length.FromCentimetres(4) * 3) - (seam * 4);
            yield return (Length.FromInches(1, 1, 2) * 3) - (seam * 4);
        }
    }

    // Tails, gaps and distances of pins, the same in every pattern (common practice, no source).
    private static string[] Customary(bool metric) =>
        metric
            ? ["2", "4", "5", "10", "20", "30", "0.75"]
            : ["1", "1 1/2", "2", "4", "8", "12", "1/4"];

    private static string Told(long count) => count.ToString(CultureInfo.InvariantCulture);

    /// <summary>Whether a size bears this name.</summary>
    public bool IsSize(string name) => _bySize.ContainsKey(name);

    /// <summary>The numbers in some words that nothing accounts for.</summary>
    /// <param name="size">The name of the size that the words are for; null if for all.</param>
    public IEnumerable<string> Unknown(string words, string? size)
    {
        FrozenSet<string>? own = size is null ? null : _bySize.GetValueOrDefault(size);
        foreach (string number in In(words))
        {
            if (
                own is not null
                    ? !own.Contains(number)
                    : !_ofAny.Contains(number) && !_typed.Contains(number)
            )
            {
                yield return number;
            }
        }
    }

    /// <summary>"3", "3 1/2", "1/2", "1.5"; not the number in a name, as in A4.</summary>
    private static IEnumerable<string> In(string words) =>
        Number().Matches(words.Replace('\u00a0', ' ')).Select(match => match.Value);

    [GeneratedRegex(@"(?<![\p{L}\d./#&])\d+(?: \d+/\d+|/\d+|\.\d+)?(?![\d/]|\.\d|\p{L})")]
    private static partial Regex Number();
}
