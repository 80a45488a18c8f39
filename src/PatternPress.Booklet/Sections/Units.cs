using System.Collections.Immutable;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Tables;
using PatternPress.Quilting.Techniques;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Inlines;

namespace PatternPress.Booklet.Sections;

/// <summary>The units to sew: what a batch takes, how many to make, the steps with their diagrams.</summary>
internal sealed class Units : Section
{
    public override string Name => "units";

    public override ImmutableArray<Block> Build(SectionContext context) =>
        context.Tables.Units.IsEmpty
            ? []
            : context.Fill(
                Name,
                null,
                new Dictionary<string, ImmutableArray<Block>>
                {
                    ["units"] = [.. context.Tables.Units.SelectMany(u => Unit(u, context))],
                },
                Name
            );

    private static IEnumerable<Block> Unit(UnitTable unit, SectionContext context)
    {
        UnitWords words = new(unit, context);
        ImmutableArray<Block> filled = context.Fill(
            "unit",
            words.Data,
            new Dictionary<string, ImmutableArray<Block>>
            {
                ["intro"] = context.StepIntro(unit.Technique, words.Data),
                ["counts"] = Counts(unit, words, context),
                ["measures"] = Measures(unit, words, context),
                ["steps"] = [.. UnitSteps.Of(unit, words, context)],
            }
        );
        // What comes before the steps stays on one page, unless a long table would leave much of the page before empty.
        int steps = filled.ToList().FindIndex(b => b is List);
        int head = steps < 0 ? filled.Length : steps;
        yield return new KeepTogether(
            new Stack([
                new Heading(
                    3,
                    FractionText.Parse(
                        context.Headed(
                            context.Labels.Format("unit-heading", unit.Number, unit.TechniqueName),
                            i => unit.Rows.Any(row => row.BySize[i] is not null)
                        )
                    )
                )
                {
                    Name = $"unit-{unit.Number}",
                },
                .. context.Note($"unit-{unit.Number}"),
                .. filled[..head],
            ])
        )
        {
            MostEmpty = MostEmpty,
        };
        foreach (Block block in filled[head..])
        {
            yield return block;
        }
    }

    /// <summary>The part of a page that may be left empty to keep together what comes before the steps.</summary>
    private const double MostEmpty = 0.3;

    /// <summary>More combinations than this are shown smaller, so that their table leaves room for the steps.</summary>
    private const int ManyRows = 6;

    /// <summary>A row for each combination of fabrics: picture, pieces of a batch, how many to make.</summary>
    private static ImmutableArray<Block> Counts(
        UnitTable unit,
        UnitWords words,
        SectionContext context
    )
    {
        Labels labels = context.Labels;
        bool measured = words.IsMeasured;
        bool sets = unit.Rows.Any(r => r.BySize.Any(c => c is { StripSets.IsEmpty: false }));
        var table = new SizeTable(
            context,
            labels["unit"],
            "",
            labels[
                sets ? "one-set"
                : unit.Rows.Any(r => r.BySize.Any(c => c is { Yield: > 1 })) ? "one-batch"
                : "one-unit"
            ]
        )
        {
            Summary = labels.Format("summary-unit", unit.Number),
        };
        foreach (UnitRow row in unit.Rows)
        {
            UnitCell? first = row.BySize.FirstOrDefault(c => c is not null);
            if (first is null)
            {
                continue;
            }
            var lead = ImmutableArray.CreateBuilder<TableCell>();
            List<Block> about = [Cells.Strong(row.Label)];
            if (words.Legend(row) is { } legend)
            {
                about.Add(Cells.Small(legend));
            }
            if (unit.Rows.Length > 1 && context.Only(i => row.BySize[i] is not null) is { } only)
            {
                about.Add(Cells.Small(only));
            }
            lead.Add(Cells.Head(about.Count == 1 ? about[0] : new Stack(about)));
            lead.Add(
                new TableCell(
                    context.Figures.Unit(
                        unit,
                        row,
                        context.Grown(unit.Rows.Length > ManyRows ? 24.Pt : 38.Pt)
                    )
                )
                {
                    Vertical = VerticalAlignment.Middle,
                }
            );
            lead.Add(
                new TableCell(new Stack(first.Pieces.Select(p => PieceLine(p, !measured, context))))
            );
            table.Add(
                lead.ToImmutable(),
                i => row.BySize[i] is { } cell ? Make(cell, labels) : null
            );
        }
        return table.ToBlocks();
    }

    /// <summary>"2 × B3 large square, 7 1/4 in": in a narrow column broken at the comma only.</summary>
    private static Text PieceLine(UnitPiece piece, bool showSize, SectionContext context)
    {
        string size = piece.WholeStrip
            ? context.Numbers.Measure(piece.Height)
            : context.Numbers.Square(piece.Width, piece.Height);
        return new Text(
            [
                new Run($"{piece.Count}\u00a0×\u00a0"),
                .. FractionText.Parse(piece.Cut, new InlineStyle { Bold = true }),
                .. FractionText.Parse(
                    "\u00a0"
                        + piece.Name.Replace(' ', '\u00a0')
                        + (showSize ? $", {size.Replace(' ', '\u00a0')}" : "")
                ),
            ],
            "table"
        );
    }

    /// <summary>How many to make, and below it in how many batches or strip sets.</summary>
    private static Stack Make(UnitCell cell, Labels labels)
    {
        if (!cell.StripSets.IsEmpty)
        {
            return new Stack([
                Cells.Strong(labels.Format("make", cell.Needed)),
                .. cell.StripSets.Select(s => Cells.Small(labels.Count("strip-set-count", s.Sets))),
                .. cell.StripSets.Select(s =>
                    Cells.Small(labels.Format("segment-count", s.Segments, s.SegmentsPerSet))
                ),
            ]);
        }
        List<Block> lines = [Cells.Strong(labels.Format("make", cell.Made))];
        if (cell.Yield > 1)
        {
            lines.Add(Cells.Small(labels.Count("batch-count", cell.Batches)));
        }
        if (cell.Made != cell.Needed)
        {
            lines.Add(Cells.Small(labels.Format("use", cell.Needed)));
        }
        return new Stack(lines);
    }

    /// <summary>Sizes of pieces where they differ, and the size each unit must have.</summary>
    private static ImmutableArray<Block> Measures(
        UnitTable unit,
        UnitWords words,
        SectionContext context
    )
    {
        Labels labels = context.Labels;
        UnitCell?[] bySize =
        [
            .. context.Sizes.Select(
                (_, i) => unit.Rows.Select(r => r.BySize[i]).FirstOrDefault(c => c is not null)
            ),
        ];
        if (!words.IsMeasured)
        {
            return [];
        }
        var table = new SizeTable(context, "")
        {
            Summary = labels.Format("summary-unit-sizes", unit.Number),
        };
        foreach (string name in bySize.SelectMany(c => Names(c)).Distinct())
        {
            table.Add(
                name,
                i =>
                    bySize[i]?.Pieces.FirstOrDefault(p => p.Name == name) is { } piece
                        ? piece.WholeStrip
                            ? context.Numbers.Measure(piece.Height)
                            : context.Numbers.Square(piece.Width, piece.Height)
                        : null
            );
        }
        table.Add(
            labels["check-size"],
            i =>
                bySize[i] is { } cell
                    ? Cells.Strong(
                        context.Numbers.Square(cell.UnfinishedWidth, cell.UnfinishedHeight)
                    )
                    : null
        );
        return table.ToBlocks();
    }

    private static IEnumerable<string> Names(UnitCell? cell) =>
        cell is null ? [] : cell.Pieces.Select(p => p.Name);
}
