using System.Collections.Immutable;
using PatternPress.Cli.Files;
using PatternPress.Quilting.Compiling;
using PatternPress.Quilting.Editions;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Cli.Commands;

/// <summary>Holds a pattern against its released edition of the same number.</summary>
internal static class EditionFindings
{
    /// <summary>So many changes are told in a message; "compare" tells all.</summary>
    private const int Told = 8;

    public static ImmutableArray<Diagnostic> Of(Compilation compilation, EditionFiles editions)
    {
        if (compilation is not { Tables: { } tables, Pattern: { } pattern })
        {
            return [];
        }
        string number = pattern.Info.Edition.Value;
        if (editions.Find(pattern.File, number) is not { } released)
        {
            return [];
        }
        EditionComparison comparison = EditionComparison.Of(
            released,
            Edition.Of(tables, pattern.Info.Date)
        );
        if (comparison.Changes.IsEmpty)
        {
            return [];
        }
        IEnumerable<string> told = comparison.Changes.Take(Told).Select(change => change.Text);
        int rest = comparison.Changes.Length - Told;
        return
        [
            new Diagnostic(
                "PP0601",
                Severity.Error,
                $"edition {number} was released with other numbers",
                new Label(
                    pattern.Info.Edition.Span,
                    $"released, see {EditionFiles.NameOf(pattern.File, number)}"
                ),
                [],
                string.Join("\n", told) + (rest > 0 ? $"\nand {rest} more" : ""),
                $"give the corrected pattern a new edition number; \"patternpress compare {pattern.File} {number}\" tells all changes and writes the notice for makers",
                [
                    .. comparison
                        .Changes.Select(change => change.Size)
                        .Where(size => size.Length > 0)
                        .Distinct(),
                ]
            ),
        ];
    }
}
