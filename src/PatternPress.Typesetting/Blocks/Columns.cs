using System.Collections.Immutable;
using PatternPress.Typesetting.Layout;

namespace PatternPress.Typesetting.Blocks;

/// <summary>Blocks side by side; as tall as the tallest. Divided only if every column fits or can be divided.</summary>
public sealed record Columns(ImmutableArray<Column> Items) : Block
{
    public Columns(params IEnumerable<Column> items)
        : this([.. items]) { }

    /// <summary>The space between columns.</summary>
    public Points Gap { get; init; } = new(12_000);

    /// <summary>When a sharing column would get less than this, the columns are stacked instead; zero for never.</summary>
    public Points StackBelow { get; init; }

    public override Fit Fit(LayoutContext context, Room room)
    {
        if (Items.IsEmpty)
        {
            return new Fit.Fits(Fragment.Empty);
        }

        var widths = ColumnWidths.Resolve(
            [.. Items.Select(item => item.Width)],
            [.. Items.Select(item => Needs(context, item))],
            room.Width - (Gap * (Items.Length - 1))
        );
        if (
            Items
                .Select((item, i) => item.Width is ColumnWidth.Share && widths[i] < StackBelow)
                .Any(narrow => narrow)
        )
        {
            return context.Fit(new Stack(Items.Select(item => item.Content)) { Gap = Gap }, room);
        }

        var fits = new Fit[Items.Length];
        for (var i = 0; i < Items.Length; i++)
        {
            fits[i] = context.Fit(Items[i].Content, room with { Width = widths[i], Top = null });
            if (fits[i] is Fit.Moves moves)
            {
                return moves;
            }
        }

        var fragments = fits.Select(fit =>
                fit switch
                {
                    Fit.Fits { Fragment: var all } => all,
                    Fit.Splits { Fragment: var part } => part,
                    _ => Fragment.Empty,
                }
            )
            .ToArray();
        var placed = Place(fragments, widths);
        return fits.Any(fit => fit is Fit.Splits)
            ? new Fit.Splits(
                placed,
                this with
                {
                    Items =
                    [
                        .. Items.Select(
                            (item, i) =>
                                item with
                                {
                                    Content = fits[i] is Fit.Splits { Rest: var rest }
                                        ? rest
                                        : new Stack(),
                                    Width = new ColumnWidth.Fixed(widths[i]),
                                }
                        ),
                    ],
                }
            )
            : new Fit.Fits(placed);
    }

    public override WidthRange Widths(LayoutContext context)
    {
        var (least, natural) = (Points.Zero, Points.Zero);
        foreach (var item in Items)
        {
            var needs = item.Width is ColumnWidth.Fixed { Width: var width }
                ? new WidthRange(width, width)
                : Needs(context, item);
            (least, natural) = (least + needs.Least, natural + needs.Natural);
        }

        return new WidthRange(least, natural).Plus(Gap * Math.Max(0, Items.Length - 1));
    }

    public override IEnumerable<Block> Children => Items.Select(item => item.Content);

    static WidthRange Needs(LayoutContext context, Column item) =>
        item.Width is ColumnWidth.Fixed ? default : item.Content.Widths(context);

    Fragment Place(Fragment[] fragments, ImmutableArray<Points> widths)
    {
        var baseline = Points.Zero;
        for (var i = 0; i < fragments.Length; i++)
        {
            if (Items[i].Vertical == VerticalAlignment.Baseline)
            {
                baseline = Points.Max(baseline, fragments[i].FirstBaseline ?? Points.Zero);
            }
        }

        var height = Points.Zero;
        for (var i = 0; i < fragments.Length; i++)
        {
            height = Points.Max(height, fragments[i].Height + Drop(i));
        }

        var builder = new FragmentBuilder();
        var x = Points.Zero;
        for (var i = 0; i < fragments.Length; i++)
        {
            var y = Items[i].Vertical switch
            {
                VerticalAlignment.Middle => (height - fragments[i].Height) / 2,
                VerticalAlignment.Bottom => height - fragments[i].Height,
                _ => Drop(i),
            };
            builder.Add(fragments[i], x, y);
            x += widths[i] + Gap;
        }

        return builder.ToFragment(x - Gap, height);

        Points Drop(int i) =>
            Items[i].Vertical == VerticalAlignment.Baseline && fragments[i].FirstBaseline is { } own
                ? baseline - own
                : Points.Zero;
    }
}
