using System.Collections.Immutable;
using PatternPress.Quilting.Tables;

namespace PatternPress.Quilting.Editions;

/// <summary>All that one edition of a pattern prints, fixed.</summary>
/// <param name="Pattern">The pattern's id.</param>
/// <param name="Number">"1.0.0".</param>
/// <param name="Date">Of the edition, as the pattern gives it.</param>
/// <param name="Sizes">Keys of the sizes, in the pattern's order.</param>
/// <param name="Facts">In the order of the tables.</param>
public sealed record Edition(
    string Pattern,
    string Title,
    string Number,
    DateOnly Date,
    ImmutableArray<string> Sizes,
    ImmutableArray<EditionFact> Facts
)
{
    public static Edition Of(PrintedTables tables, DateOnly date) =>
        new(
            tables.Pattern,
            tables.Title,
            tables.Edition,
            date,
            [.. tables.Sizes.Select(size => size.Key)],
            [
                .. PrintedFacts
                    .Of(tables)
                    .Select(fact => new EditionFact(
                        fact.Table,
                        fact.Row,
                        fact.Item,
                        fact.Size,
                        fact.Unit.Length == 0 ? fact.Value : $"{fact.Value} {fact.Unit}"
                    )),
            ]
        );
}

/// <summary>One printed value.</summary>
/// <param name="Size">Key of the size; empty where it holds for all.</param>
/// <param name="Value">With its unit: "1 3/8 yd".</param>
public sealed record EditionFact(string Table, string Row, string Item, string Size, string Value);
