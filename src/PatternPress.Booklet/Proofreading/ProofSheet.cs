using System.Collections.Immutable;
using System.Globalization;
using System.Net;
using System.Text;
using Markdig;
using PatternPress.Booklet.Sections;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Tables;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Inlines;

namespace PatternPress.Booklet.Proofreading;

/// <summary>
/// The sheet for whoever proofreads the tables before print: every printed requirement and cut with its derivation in one
/// line and a box to tick. The same parts as pages and as HTML.
/// </summary>
public sealed class ProofSheet(
    DocumentComposer composer,
    Templates templates,
    PrintedTables tables,
    ProofNotes notes
)
{
    private const string Name = "proof-sheet";

    private static readonly MarkdownPipeline _markdown = new MarkdownPipelineBuilder()
        .DisableHtml()
        .Build();

    private readonly DocumentPlan _plan = new(
        Name,
        "proof",
        templates.Labels[Name],
        ["masthead", Name],
        [],
        Covered: false
    );

    public ComposedDocument Compose(PaperSize paper) =>
        composer.Compose(_plan, paper, new Sheet(notes));

    /// <summary>A page of its own, without anything to load from elsewhere.</summary>
    public string Html()
    {
        SectionContext context = composer.Begin(_plan, PaperSize.Letter);
        Labels labels = templates.Labels;
        string title = Encode($"{tables.Title}: {labels[Name]}");
        var html = new StringBuilder();
        html.Append(
            $"<!doctype html>\n<html lang=\"{Encode(templates.Language)}\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width\">\n<title>{title}</title>\n<style>\n{Style}</style>\n</head>\n<body>\n"
        );
        html.Append(
            $"<h1>{title}</h1>\n<p>{Encode(labels.Format("edition", tables.Edition))}</p>\n"
        );
        html.Append(
            Markdown.ToHtml(
                string.Join(
                    '\n',
                    // Title and tables are written here already.
                    context
                        .Words(Name, DataOf(notes))
                        .Split('\n')
                        .Where(line => !line.StartsWith('#') && !line.StartsWith('!'))
                ),
                _markdown
            )
        );
        foreach (SheetPart part in SheetParts.Of(notes, tables, labels))
        {
            if (part.Table is { Rows.IsEmpty: true })
            {
                continue;
            }
            string level = (part.Level + 1).ToString(CultureInfo.InvariantCulture);
            html.Append($"<h{level}>{Encode(part.Heading)}</h{level}>\n");
            if (part.Words.Length > 0)
            {
                html.Append($"<p>{Encode(part.Words)}</p>\n");
            }
            if (part.Table is { } table)
            {
                Write(html, table, labels);
            }
        }
        return html.Append("</body>\n</html>\n").ToString();
    }

    private static WordData DataOf(ProofNotes notes) => WordData.Empty.With("holds", notes.Holds);

    private static void Write(StringBuilder html, SheetTable table, Labels labels)
    {
        html.Append("<table>\n<thead><tr>");
        if (table.Ticked)
        {
            html.Append($"<th>{Encode(labels["proof-tick"])}</th>");
        }
        foreach (string head in table.Heads)
        {
            html.Append($"<th>{Encode(head)}</th>");
        }
        html.Append("</tr></thead>\n<tbody>\n");
        foreach (ImmutableArray<string> row in table.Rows)
        {
            html.Append("<tr>");
            if (table.Ticked)
            {
                html.Append($"<td><input type=\"checkbox\" aria-label=\"{Encode(row[0])}\"></td>");
            }
            for (int i = 0; i < row.Length; i++)
            {
                html.Append(
                    i == 0
                        ? $"<th scope=\"row\">{Encode(row[i])}</th>"
                        : $"<td>{Encode(row[i])}</td>"
                );
            }
            html.Append("</tr>\n");
        }
        html.Append("</tbody>\n</table>\n");
    }

    private static string Encode(string words) => WebUtility.HtmlEncode(words);

    private const string Style = """
        body { font: 15px/1.45 sans-serif; color: #222; max-width: 62em; margin: 2em auto; padding: 0 1em; }
        table { border-collapse: collapse; width: 100%; margin: .5em 0 1.5em; }
        th, td { text-align: left; vertical-align: top; padding: .25em .6em; border-bottom: 1px solid #ccc; }
        thead th { border-bottom: 2px solid #555; background: #f3f1ec; }
        tbody th { white-space: nowrap; }
        input { width: 1.1em; height: 1.1em; }
        @media print { body { margin: 0; max-width: none; font-size: 11px; } h2 { break-after: avoid; } tr { break-inside: avoid; } }

        """;

    private sealed class Sheet(ProofNotes notes) : Section
    {
        private static readonly Drawing Box = new DrawingBuilder()
            .Area(VectorPath.Rectangle(0.5, 0.5, 9, 9), stroke: new Stroke(0.8.Pt, Ink.Black))
            .ToDrawing(10, 10);

        public override string Name => ProofSheet.Name;

        public override ImmutableArray<Block> Build(SectionContext context) =>
            context.Fill(
                Name,
                DataOf(notes),
                new Dictionary<string, ImmutableArray<Block>> { ["sheet"] = [.. Blocks(context)] },
                Name
            );

        private IEnumerable<Block> Blocks(SectionContext context)
        {
            foreach (SheetPart part in SheetParts.Of(notes, context.Tables, context.Labels))
            {
                if (part.Table is { Rows.IsEmpty: true })
                {
                    continue;
                }
                yield return new Heading(part.Level + 1, part.Heading);
                if (part.Words.Length > 0)
                {
                    // The words of a size open what follows.
                    var words = new Text(part.Words);
                    yield return part.Table is null && !part.IsWhole
                        ? new KeepWithNext(words)
                        : words;
                }
                if (part.Table is { } table)
                {
                    yield return TableOf(table, context);
                }
            }
        }

        private static Table TableOf(SheetTable table, SectionContext context)
        {
            // The last column holds what is longest: the derivation.
            var columns = ImmutableArray.CreateBuilder<TableColumn>();
            if (table.Ticked)
            {
                columns.Add(TableColumn.Natural());
            }
            for (int i = 0; i < table.Heads.Length; i++)
            {
                columns.Add(
                    i == table.Heads.Length - 1 ? TableColumn.Share() : TableColumn.Natural()
                );
            }
            return new Table(
                columns.ToImmutable(),
                [.. table.Rows.Select(row => RowOf(row, table.Ticked, context.Labels))]
            )
            {
                Header =
                [
                    new TableRow(
                        (table.Ticked ? table.Heads.Insert(0, "") : table.Heads).Select(
                            head => new TableCell(new Text(head, "table-head"))
                        )
                    ),
                ],
                Style = TableLooks.Of(context.Theme),
                SpaceAfter = 12.Pt,
            };
        }

        private static TableRow RowOf(ImmutableArray<string> row, bool ticked, Labels labels)
        {
            var cells = ImmutableArray.CreateBuilder<TableCell>();
            if (ticked)
            {
                cells.Add(
                    new TableCell(
                        new Text([new InlineDrawing(Box, 8.Pt, labels["proof-tick"])], "table")
                    )
                );
            }
            for (int i = 0; i < row.Length; i++)
            {
                cells.Add(
                    i == 0 ? Cells.Head(Cells.Plain(row[i]))
                    : i == row.Length - 1 && row.Length > 2 ? new TableCell(Cells.Small(row[i]))
                    : new TableCell(Cells.Strong(row[i]))
                );
            }
            return new TableRow(cells.ToImmutable());
        }
    }
}
