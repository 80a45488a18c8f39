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
                    && LengthText.TryParse(fact.Value, unit, out Length length, out _)
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
                if (purchase.Total(i) is { } total)
                {
                    bySize[tables.Sizes[i].Name].UnionWith(In(numbers.Yards(total)));
                }
            }
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
        House house = manuscript.Pattern.House;
        DateOnly date = manuscript.Pattern.Info.Date;
        return new KnownNumbers(
            bySize.ToFrozenDictionary(size => size.Key, size => size.Value.ToFrozenSet()),
            templates
                .Texts.Concat(templates.Labels.Names.Select(name => templates.Labels[name]))
                .Append(manuscript.Source?.Source.Text ?? "")
                .SelectMany(In)
                .Concat(
                    new[]
                    {
                        house.Seam,
                        house.Ruler.Step,
                        house.Oversize,
                        house.UsableWidth,
                        house.Squaring,
                        house.BackingOverhang,
                        house.BackingWidth,
                        house.BackingSeam,
                        house.BattingOverhang,
                        house.BindingWidth,
                        house.BindingExtra,
                    }.Select(numbers.Number)
                )
                .Append(tables.Fabrics.Length.ToString(CultureInfo.InvariantCulture))
                .Append(tables.Sizes.Length.ToString(CultureInfo.InvariantCulture))
                .Append(date.Year.ToString(CultureInfo.InvariantCulture))
                .ToFrozenSet()
        );
    }

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
