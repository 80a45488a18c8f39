using System.Collections.Immutable;
using PatternPress.Booklet.Figures;
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
        int shown = context.ShownSize;
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
                .With("bias", tables.Binding.Any(b => b?.Square is not null))
                .With(
                    "bias_line",
                    context.Sized(i => Optional(tables.Binding[i]?.StripWidth, numbers))
                )
                .With("radius", context.Sized(i => Optional(tables.Binding[i]?.Radius, numbers)))
                .With("rounded", tables.Binding.Any(b => b?.Radius is not null))
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
                ["join"] = Join(context),
                ["corner-stop"] = Corner(CornerTurn.Stop, context),
                ["corner-up"] = Corner(CornerTurn.Up, context),
                ["corner-down"] = Corner(CornerTurn.Down, context),
                ["close"] = Close(context),
                ["backing"] = Backing(context),
                ["backing-diagrams"] = BackingDiagrams(context),
                ["layers"] = Pictured(
                    context.Figures.Layers(shown, LayersWidth(context), context.Grown(120.Pt))
                        is { } layers
                        ? layers with
                        {
                            Caption = context.Shown(shown),
                        }
                        : null
                ),
                ["batting"] = Batting(context),
                ["binding"] = Binding(context),
            },
            Name
        );
    }

    // On narrow pages the picture stands below its steps and may be as wide as they are.
    private static Points LayersWidth(SectionContext context)
    {
        Points beside = context.Grown(228.Pt);
        return context.Abreast(200.Pt, 20.Pt, 2) == 1 ? context.TextWidth : beside;
    }

    private static ImmutableArray<Block> Corner(CornerTurn turn, SectionContext context) =>
        Pictured(context.Figures.BindingTurn(turn, context.Grown(88.Pt), context.Grown(88.Pt)));

    private static ImmutableArray<Block> Join(SectionContext context) =>
        context.Tables.Binding.FirstOrDefault(b => b is not null) is { } binding
            ? Pictured(
                context.Figures.DiagonalJoin(
                    binding.Fabric,
                    context.Grown(183.Pt),
                    context.Grown(66.Pt)
                )
            )
            : [];

    private static ImmutableArray<Block> Close(SectionContext context) =>
        context.Tables.Binding.FirstOrDefault(b => b is not null) is { } binding
            ? Pictured(
                context.Figures.BindingClose(
                    binding.Fabric,
                    context.Numbers.Measure(binding.StripWidth),
                    context.Grown(174.Pt),
                    context.Grown(52.Pt)
                )
            )
            : [];

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

    /// <summary>The most diagrams side by side.</summary>
    private const int MostAbreast = 3;
    private static readonly Points LeastDiagram = 140.Pt;

    /// <summary>A diagram of every size whose backing has seams.</summary>
    private static ImmutableArray<Block> BackingDiagrams(SectionContext context)
    {
        List<int> shown =
        [
            .. Enumerable
                .Range(0, context.Sizes.Length)
                .Where(i => context.Tables.Backing[i] is { Panels: > 1 }),
        ];
        if (shown.Count == 0)
        {
            return [];
        }
        Points gap = 20.Pt;
        int most = context.Abreast(LeastDiagram, gap, MostAbreast);
        int rows = (shown.Count + most - 1) / most;
        int abreast = (shown.Count + rows - 1) / rows;
        Points width = (context.TextWidth - (gap * (abreast - 1))) / abreast;
        var blocks = ImmutableArray.CreateBuilder<Block>();
        foreach (int[] row in shown.Chunk(abreast))
        {
            ImmutableArray<Column> columns =
            [
                .. row.Select(i =>
                        (
                            i,
                            Figure: context.Figures.Backing(
                                i,
                                width,
                                context.Grown(abreast < MostAbreast ? 150.Pt : 128.Pt)
                            )
                        )
                    )
                    .Where(f => f.Figure is not null)
                    .Select(f =>
                        Column.Fixed(
                            width,
                            f.Figure! with
                            {
                                Caption = new Text(context.Sizes[f.i].Name, "caption"),
                            }
                        )
                    ),
            ];
            if (!columns.IsEmpty)
            {
                blocks.Add(new KeepTogether(new Columns(columns) { Gap = gap }));
                blocks.Add(new Gap(8.Pt));
            }
        }
        return blocks.ToImmutable();
    }

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
        string? id = binding
            .Where(b => b?.Square is null)
            .Select(b => b?.Cut)
            .FirstOrDefault(c => c is not null);
        string? squares = binding
            .Where(b => b?.Square is not null)
            .Select(b => b?.Cut)
            .FirstOrDefault(c => c is not null);
        var table = new SizeTable(context, "") { Summary = labels["summary-binding"] };
        table.Add(
            labels.Format("bias-cut", squares ?? ""),
            i =>
                binding[i] is { Square: { } square } cell
                    ? Cells.Lines(
                        labels.Count("square-count", cell.Strips),
                        context.Numbers.Square(square, square)
                    )
                    : null
        );
        table.Add(
            labels["bias-strips"],
            i =>
                binding[i] is { Square: not null } cell
                    ? Cells.Lines(
                        context.Numbers.Measure(cell.StripLength),
                        labels.Format("strips-wide", context.Numbers.Measure(cell.StripWidth))
                    )
                    : null
        );
        table.Add(
            labels.Format("binding-to-join", id ?? ""),
            i =>
                binding[i] is { Square: null } cell
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
