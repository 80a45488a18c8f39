using System.Collections.Immutable;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Finishing;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Tables;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;

namespace PatternPress.Booklet.Sections;

/// <summary>From quilt top to quilt: backing, batting, layering, basting, quilting, trimming, binding.</summary>
internal sealed class Finishing : Section
{
    public override string Name => "finishing";

    public override ImmutableArray<Block> Build(SectionContext context)
    {
        PrintedTables tables = context.Tables;
        NumberWords numbers = context.Numbers;
        Length seam = tables.Sizes.IsEmpty ? context.Pattern.House.Seam : tables.Sizes[0].Seam;
        return context.Fill(
            Name,
            WordData
                .Empty.With("panels", tables.Backing.Any(b => b is { Panels: > 1 }))
                .With(
                    "backing_overhang",
                    context.Sized(i => Optional(tables.Backing[i]?.Overhang, numbers))
                )
                .With(
                    "backing_seam",
                    context.Sized(i =>
                        tables.Backing[i] is { Panels: > 1 } backing
                            ? numbers.Measure(backing.JoinLoss / 2)
                            : null
                    )
                )
                .With("stay", numbers.Measure(seam / 2))
                .With("excess", numbers.IsMetric ? Range(2, 5, numbers) : Range(1, 2, numbers))
                .With(
                    "binding_width",
                    context.Sized(i => Optional(tables.Binding[i]?.StripWidth, numbers))
                )
                .With("binding_tail", numbers.Measure(Plain(numbers, 8, 20)))
                .With("binding_gap", numbers.Measure(Plain(numbers, 12, 30)))
                .With(
                    "line_gap",
                    numbers.Measure(
                        Plain(
                            numbers,
                            Length.FromInches(0, 1, 4),
                            Length.FromCentimetres(new Rational(3, 4))
                        )
                    )
                )
                .With("pin_gap", numbers.Measure(Plain(numbers, 4, 10))),
            new Dictionary<string, ImmutableArray<Block>>
            {
                ["backing"] = Backing(context),
                ["backing-diagrams"] = BackingDiagrams(context),
                ["layers"] = Pictured(
                    context.Figures.Layers(
                        (context.Sizes.Length - 1) / 2,
                        context.TextWidth.Scale(0.6),
                        150.Pt
                    )
                ),
                ["corner"] = Pictured(
                    context.Figures.BindingTurn(context.TextWidth.Scale(0.8), 130.Pt)
                ),
                ["batting"] = Batting(context),
                ["binding"] = Binding(context),
            },
            Name
        );
    }

    private static ImmutableArray<Block> Backing(SectionContext context)
    {
        Labels labels = context.Labels;
        ImmutableArray<BackingCell?> backing = context.Tables.Backing;
        var table = new SizeTable(context, "") { Summary = labels["summary-backing"] };
        table.Add(
            labels["panels"],
            i =>
                backing[i] is { } cell
                    ? Cells.Lines(
                        labels.Count("panel-count", cell.Panels),
                        labels.Format(
                            cell.Panels == 1 ? "panel-length-one" : "panel-length-many",
                            context.Numbers.Measure(cell.PanelLength)
                        )
                    )
                    : null
        );
        table.Add(
            labels["backing-seams"],
            i =>
                backing[i] is not { } cell
                    ? null
                    : cell.Seams switch
                    {
                        BackingSeams.Upright => labels["seams-upright"],
                        BackingSeams.Level => labels["seams-level"],
                        _ => labels["seams-none"],
                    }
        );
        table.Add(
            labels["backing-trimmed"],
            i => backing[i] is { } cell ? context.Numbers.Size(cell.Width, cell.Height) : null
        );
        return table.ToBlocks();
    }

    /// <summary>One diagram for each way the panels run, side by side.</summary>
    private static ImmutableArray<Block> BackingDiagrams(SectionContext context)
    {
        List<int> shown =
        [
            .. Enumerable
                .Range(0, context.Sizes.Length)
                .Where(i => context.Tables.Backing[i] is { Panels: > 1 })
                .GroupBy(i => (context.Tables.Backing[i]!.Seams, context.Tables.Backing[i]!.Panels))
                .Select(g => g.First())
                .Take(3),
        ];
        if (shown.Count == 0)
        {
            return [];
        }
        Points width = (context.TextWidth - (20.Pt * 2)) / 3;
        var columns = ImmutableArray.CreateBuilder<Column>();
        foreach (int i in shown)
        {
            if (context.Figures.Backing(i, width, 130.Pt) is not { } figure)
            {
                continue;
            }
            columns.Add(
                Column.Fixed(
                    width,
                    figure with
                    {
                        Caption = new Text(context.Labels.List(SizesLike(i, context)), "caption"),
                    }
                )
            );
        }
        return columns.Count == 0
            ? []
            :
            [
                new Gap(8.Pt),
                new KeepTogether(new Columns(columns.ToImmutable()) { Gap = 20.Pt }),
                new Gap(8.Pt),
            ];
    }

    private static IEnumerable<string> SizesLike(int shown, SectionContext context) =>
        context
            .Sizes.Where(
                (_, i) =>
                    context.Tables.Backing[i] is { } other
                    && other.Seams == context.Tables.Backing[shown]!.Seams
                    && other.Panels == context.Tables.Backing[shown]!.Panels
            )
            .Select(s => s.Name);

    private static ImmutableArray<Block> Pictured(Figure? figure) =>
        figure is null
            ? []
            :
            [
                figure with
                {
                    SpaceBefore = 4.Pt,
                    SpaceAfter = 10.Pt,
                    MinWidth = figure.Drawing.NaturalWidth.Scale(0.75),
                },
            ];

    private static ImmutableArray<Block> Batting(SectionContext context)
    {
        Labels labels = context.Labels;
        ImmutableArray<BattingCell?> batting = context.Tables.Requirements.Batting;
        var table = new SizeTable(context, "") { Summary = labels["summary-batting"] };
        table.Add(
            labels["batting-at-least"],
            i => batting[i] is { } cell ? context.Numbers.Size(cell.Width, cell.Height) : null
        );
        table.Add(
            labels["batting-package-row"],
            i =>
                batting[i] is not { } cell ? null
                : cell.Package is { } package
                    ? Cells.Lines(package.Name, context.Numbers.Size(package.Width, package.Height))
                : Cells.Plain(labels["batting-none"])
        );
        return table.ToBlocks();
    }

    private static ImmutableArray<Block> Binding(SectionContext context)
    {
        Labels labels = context.Labels;
        ImmutableArray<BindingCell?> binding = context.Tables.Binding;
        string? id = binding.Select(b => b?.Cut).FirstOrDefault(c => c is not null);
        var table = new SizeTable(context, "") { Summary = labels["summary-binding"] };
        table.Add(
            labels.Format("binding-to-join", id),
            i =>
                binding[i] is { } cell
                    ? Cells.Lines(
                        labels.Count("strip-count", cell.Strips),
                        labels.Format("strips-wide", context.Numbers.Measure(cell.StripWidth))
                    )
                    : null
        );
        table.Add(
            labels["binding-joined"],
            i => binding[i] is { } cell ? context.Numbers.Measure(cell.Length) : null
        );
        table.Add(
            labels["way-round"],
            i => binding[i] is { } cell ? context.Numbers.Measure(cell.Perimeter) : null
        );
        return table.ToBlocks();
    }

    private static string? Optional(Length? length, NumberWords numbers) =>
        length is { } value ? numbers.Measure(value) : null;

    private static string Range(int from, int to, NumberWords numbers) =>
        numbers.Labels.Format(
            "range",
            from,
            numbers.Measure(numbers.IsMetric ? Length.FromCentimetres(to) : Length.FromInches(to))
        );

    private static Length Plain(NumberWords numbers, int inches, int centimetres) =>
        Plain(numbers, Length.FromInches(inches), Length.FromCentimetres(centimetres));

    private static Length Plain(NumberWords numbers, Length inches, Length centimetres) =>
        numbers.IsMetric ? centimetres : inches;
}
