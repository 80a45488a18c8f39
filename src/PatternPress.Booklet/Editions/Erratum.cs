using System.Collections.Immutable;
using System.Text;
using PatternPress.Booklet.Sections;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Editions;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;

namespace PatternPress.Booklet.Editions;

/// <summary>The notice to makers who hold an older edition: what to correct in it. One text, as pages and as Markdown.</summary>
public sealed class Erratum(DocumentComposer composer, Labels labels, EditionComparison comparison)
{
    private const string Name = "erratum";

    private readonly DocumentPlan _plan = new(
        Name,
        Name,
        labels[Name],
        ["masthead", Name],
        [],
        Covered: false
    );

    public ComposedDocument Compose(PaperSize paper) =>
        composer.Compose(_plan, paper, new Notice(comparison));

    public string Markdown()
    {
        SectionContext context = composer.Begin(_plan, PaperSize.Letter);
        var text = new StringBuilder();
        text.Append(
            $"# {MarkdownText.Escape(context.Pattern.Info.Title.Value)}\n\n*{MarkdownText.Escape(context.Pattern.Info.Designer)}*\n\n"
        );
        // One heading further down, below the pattern's own.
        string words = context.Words(Name, DataOf(comparison, context));
        bool blank = false;
        foreach (string line in words.Trim().Split('\n'))
        {
            // What a text leaves out leaves blank lines behind.
            bool again = blank && line.Length == 0;
            blank = line.Length == 0;
            if (again)
            {
                continue;
            }
            text.Append(line.StartsWith('#') ? "#" + line : PlaceIn(line) ?? line).Append('\n');
        }
        return text.ToString();

        string? PlaceIn(string line) =>
            line.Trim() switch
            {
                "![hurts](place:hurts)" => TableOf(context, ChangeEffect.Hurts),
                "![spends](place:spends)" => TableOf(context, ChangeEffect.Spends),
                _ => null,
            };
    }

    private string TableOf(SectionContext context, ChangeEffect effect)
    {
        var table = new StringBuilder();
        table.Append(
            $"| {string.Join(" | ", Heads(context, comparison))} |\n| --- | --- | --- | --- |"
        );
        foreach (string[] row in Rows(context, comparison, effect))
        {
            table.Append($"\n| {string.Join(" | ", row.Select(MarkdownText.Escape))} |");
        }
        return table.ToString();
    }

    private static WordData DataOf(EditionComparison comparison, SectionContext context) =>
        WordData
            .Empty.With("old", MarkdownText.Escape(comparison.Old.Number))
            .With("new", MarkdownText.Escape(comparison.New.Number))
            .With("hurts", comparison.Changes.Count(c => c.Effect == ChangeEffect.Hurts))
            .With("spends", comparison.Changes.Count(c => c.Effect == ChangeEffect.Spends))
            .With(
                "altered",
                comparison
                    .Altered.Select(key => MarkdownText.Escape(SizeName(context, key)))
                    .ToImmutableArray()
            );

    private static string[] Heads(SectionContext context, EditionComparison comparison) =>
        [
            context.Labels["erratum-size"],
            context.Labels["erratum-where"],
            context.Labels.Format("erratum-old", comparison.Old.Number),
            context.Labels["erratum-new"],
        ];

    private static IEnumerable<string[]> Rows(
        SectionContext context,
        EditionComparison comparison,
        ChangeEffect effect
    ) =>
        comparison
            .Changes.Where(change => change.Effect == effect)
            .Select(change =>
                new[]
                {
                    change.Size.Length == 0
                        ? context.Labels["erratum-all-sizes"]
                        : SizeName(context, change.Size),
                    $"{change.Table}, {change.Row}: {change.Item}",
                    change.Old ?? context.Labels["erratum-not-printed"],
                    change.New ?? context.Labels["erratum-not-printed"],
                }
            );

    private static string SizeName(SectionContext context, string key) =>
        context.Sizes.FirstOrDefault(size => size.Key == key)?.Name ?? key;

    private sealed class Notice(EditionComparison comparison) : Section
    {
        public override string Name => Erratum.Name;

        public override ImmutableArray<Block> Build(SectionContext context) =>
            context.Fill(
                Name,
                DataOf(comparison, context),
                new Dictionary<string, ImmutableArray<Block>>
                {
                    ["hurts"] = [Table(context, ChangeEffect.Hurts)],
                    ["spends"] = [Table(context, ChangeEffect.Spends)],
                },
                Name
            );

        private Table Table(SectionContext context, ChangeEffect effect) =>
            new(
                [
                    TableColumn.Natural(),
                    TableColumn.Share(),
                    TableColumn.Natural(),
                    TableColumn.Natural(),
                ],
                [
                    .. Rows(context, comparison, effect)
                        .Select(row => new TableRow(
                            Cells.Head(Cells.Plain(row[0])),
                            new TableCell(Cells.Plain(row[1])),
                            new TableCell(Cells.Plain(row[2])),
                            new TableCell(Cells.Strong(row[3]))
                        )),
                ]
            )
            {
                Header =
                [
                    new TableRow(
                        Heads(context, comparison)
                            .Select(head => new TableCell(new Text(head, "table-head")))
                    ),
                ],
                Style = TableLooks.Of(context.Theme),
                Summary = context.Labels["summary-erratum"],
                SpaceAfter = 12.Pt,
            };
    }
}
