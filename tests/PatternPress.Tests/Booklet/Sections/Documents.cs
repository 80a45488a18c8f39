using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using PatternPress.Booklet;
using PatternPress.Booklet.Sections;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;

namespace PatternPress.Tests.Booklet.Sections;

/// <summary>Composed documents taken apart.</summary>
internal static class Documents
{
    private static readonly ConditionalWeakTable<
        Manuscript,
        ConcurrentDictionary<string, ComposedDocument>
    > Composed = [];

    /// <summary>A document on Letter paper; composed once for all tests that look at it.</summary>
    public static ComposedDocument Compose(Manuscript manuscript, string plan = "booklet") =>
        Composed
            .GetValue(manuscript, _ => [])
            .GetOrAdd(
                plan,
                _ =>
                {
                    var composer = new DocumentComposer(manuscript, BookletTemplates.Templates);
                    return composer.Compose(
                        composer.Plans.Single(p => p.Key == plan),
                        PaperSize.Letter
                    );
                }
            );

    public static string TextOf(ComposedDocument composed) =>
        PlainText.Of(composed.Document.Sequences.Select(s => s.Body));

    /// <summary>All tables, in reading order.</summary>
    public static IEnumerable<Table> TablesOf(ComposedDocument composed) =>
        composed.Document.Sequences.SelectMany(s => AllOf(s.Body)).OfType<Table>();

    /// <summary>The rows of all tables with a summary, each as the words of its cells.</summary>
    public static List<string[]> RowsOf(ComposedDocument composed, string summary) =>
        [
            .. TablesOf(composed)
                .Where(t => t.Summary == summary)
                .SelectMany(t => t.Rows)
                .Select(row =>
                    row.Cells.SelectMany(cell =>
                            Enumerable.Repeat(PlainText.Of([cell.Content]).Trim(), cell.ColumnSpan)
                        )
                        .ToArray()
                ),
        ];

    public static IEnumerable<Block> AllOf(Block block) =>
        block.Children.SelectMany(AllOf).Prepend(block);
}
