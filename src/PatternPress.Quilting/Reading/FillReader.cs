using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Rules;
using PatternPress.Quilting.Settings.Fills;
using PatternPress.Source;
using PatternPress.Source.Syntax;

namespace PatternPress.Quilting.Reading;

/// <summary>
/// Reads <c>fill:</c>. A cell is a coloring, with a turn after a stroke where the block is turned clockwise: "L1/90".
/// </summary>
internal static class FillReader
{
    private static readonly string[] Turns = ["0", "90", "180", "270"];

    /// <param name="known">The colorings that could be read.</param>
    public static Fill? Read(Node node, ImmutableArray<Coloring> known, ReadContext context)
    {
        if (node is ScalarNode text)
        {
            return ReadRows(FillKind.Repeat, text, 0, known, context);
        }
        if (node is not MapNode map)
        {
            return null;
        }
        int seed = 0;
        if (
            ReadContext.Text(map, "seed") is { } seedText
            && !int.TryParse(seedText.Value.Trim(), out seed)
        )
        {
            context.Report(PP0219_NotACount.NotANumber(seedText.Span, seedText.Value, "seed"));
        }
        foreach (Entry entry in map.Entries)
        {
            if (FillCatalog.Find(entry.Key.Value) is { } fill)
            {
                return ReadRows(fill.Kind, entry.Value, seed, known, context);
            }
        }
        return null;
    }

    /// <summary>A whole layout drawn for one size.</summary>
    public static Fill? ReadMap(
        ScalarNode text,
        ImmutableArray<Coloring> known,
        ReadContext context
    ) => ReadRows(FillKind.Map, text, 0, known, context);

    private static Fill? ReadRows(
        FillKind kind,
        Node node,
        int seed,
        ImmutableArray<Coloring> known,
        ReadContext context
    )
    {
        ImmutableArray<ImmutableArray<Slice>> lines = node switch
        {
            ScalarNode text => [.. text.Lines().Select(l => l.Words()).Where(w => w.Length > 0)],
            ListNode list =>
            [
                .. list.Items.OfType<ScalarNode>().Select(s => s.Words()).Where(w => w.Length > 0),
            ],
            _ => [],
        };
        // A drawing whose rows run together has its finding.
        if (
            lines.IsEmpty
            || (FillCatalog.Of(kind).IsDrawn && node is ScalarNode { RunsTogether: true })
        )
        {
            return null;
        }
        if (
            kind is FillKind.Checkerboard or FillKind.Diagonals or FillKind.Rows or FillKind.Scatter
        )
        {
            // These take one list, however it is broken into lines.
            lines =
            [
                [.. lines.SelectMany(line => line)],
            ];
        }
        else if (kind == FillKind.Rings && lines.Length == 1)
        {
            // "A B C" on one line is one coloring a ring; several lines give each ring its own list.
            lines = [.. lines[0].Select(word => ImmutableArray.Create(word))];
        }
        var rows = ImmutableArray.CreateBuilder<ImmutableArray<FillCell>>(lines.Length);
        bool whole = true;
        foreach (ImmutableArray<Slice> line in lines)
        {
            var cells = ImmutableArray.CreateBuilder<FillCell>(line.Length);
            foreach (Slice word in line)
            {
                if (ReadCell(word, known, context) is { } cell)
                {
                    cells.Add(cell);
                }
                else
                {
                    whole = false;
                }
            }
            rows.Add(cells.ToImmutable());
        }
        if (whole && kind == FillKind.Repeat)
        {
            for (int i = 1; i < lines.Length; i++)
            {
                if (lines[i].Length != lines[0].Length)
                {
                    whole = false;
                    context.Report(
                        PP0201_UnevenMapRows.Found(
                            "the fill",
                            lines[i][0].Span,
                            i + 1,
                            lines[i].Length,
                            lines[0][0].Span,
                            lines[0].Length
                        )
                    );
                }
            }
        }
        return whole ? new Fill(kind, rows.MoveToImmutable(), seed, node.Span) : null;
    }

    /// <summary>Reads a coloring and its turn; reports and returns null where there is none of that name.</summary>
    public static FillCell? ReadCell(
        Slice word,
        ImmutableArray<Coloring> known,
        ReadContext context
    )
    {
        // A list may have commas between its colorings.
        word = word.Text is [.., _, ','] ? word.Sub(0, word.Length - 1) : word;
        int stroke = word.Characters.IndexOf('/');
        Slice name = stroke < 0 ? word : word.Sub(0, stroke);
        int quarters = 0;
        if (stroke >= 0)
        {
            Slice turn = word.From(stroke + 1);
            quarters = Array.IndexOf(Turns, turn.Text);
            if (quarters < 0)
            {
                context.Report(PP0221_UnknownWord.Found(turn.Span, turn.Text, "turn", Turns));
                return null;
            }
        }
        if (!known.Any(c => c.Key == name.Text))
        {
            if (!context.IsComplete || context.Named.Colorings.Contains(name.Text))
            {
                return null;
            }
            context.ReportFirst(
                PP0213_UnknownColoring.Found(
                    name.Span,
                    name.Text,
                    [.. known.Select(c => c.Key)],
                    context.Named.Blocks.Contains(name.Text)
                )
            );
            return null;
        }
        return new FillCell(name.Text, new Turn(quarters), word.Span);
    }
}
