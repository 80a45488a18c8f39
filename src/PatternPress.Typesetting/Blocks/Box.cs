using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Pages;

namespace PatternPress.Typesetting.Blocks;

/// <summary>A block with padding, a border and a background. Divided, each part has its whole border.</summary>
public sealed record Box(Block Content) : Block
{
    public Insets Padding { get; init; } = Insets.All(new(8_000));

    public Stroke? Border { get; init; }

    /// <summary>A heavier stroke along the left edge, as beside a note.</summary>
    public Stroke? LeftBar { get; init; }

    public Ink? Background { get; init; }

    /// <summary>Radius of the corners; zero for square ones.</summary>
    public Points CornerRadius { get; init; }

    public Points SpaceBefore { get; init; }

    public Points SpaceAfter { get; init; }

    /// <summary>Whether the box is only as wide as its content wants, not as wide as its place.</summary>
    public bool Tight { get; init; }

    public override Fit Fit(LayoutContext context, Room room)
    {
        var width = Tight ? Points.Min(room.Width, Widths(context).Natural) : room.Width;
        var inner = room with
        {
            Width = width - Padding.Across,
            Height = room.Height - Padding.Down,
            Top = null,
        };
        return context.Fit(Content, inner) switch
        {
            Fit.Fits { Fragment: var all } when all.Height <= inner.Height || room.Forced =>
                new Fit.Fits(Frame(all, width)),
            Fit.Fits { Fragment: var all } => new Fit.Moves(
                "no room is left for the padding of a box",
                all.Height + Padding.Down
            ),
            // No empty box is begun on the next page for a break or gap at the end.
            Fit.Splits { Fragment: var all, Rest.IsBlank: true } => new Fit.Fits(Frame(all, width)),
            Fit.Splits { Fragment: var part, Rest: var rest } => new Fit.Splits(
                Frame(part, width),
                this with
                {
                    Content = rest,
                }
            ),
            Fit.Moves moves => moves with { Needed = moves.Needed + Padding.Down },
            _ => throw new InvalidOperationException("A block answers with fits, splits or moves."),
        };
    }

    public override WidthRange Widths(LayoutContext context) =>
        Content.Widths(context).Plus(Padding.Across);

    public override Spacing Spacing(LayoutContext context) => new(SpaceBefore, SpaceAfter);

    public override IEnumerable<Block> Children => [Content];

    Fragment Frame(Fragment inner, Points width)
    {
        var height = inner.Height + Padding.Down;
        var region = new PageRect(Points.Zero, Points.Zero, width, height);
        return new FragmentBuilder()
            .AddArtifact(Decoration(width.Value, height.Value))
            .Add(new PageItem.RegionBegin(region, "box"))
            .Add(inner, Padding.Left, Padding.Top)
            .Add(new PageItem.RegionEnd())
            .ToFragment(width, height);
    }

    IEnumerable<PageItem> Decoration(double width, double height)
    {
        var inset = (Border?.Width.Value ?? 0) / 2;
        if (Background is not null || Border is not null)
        {
            var outline = VectorPath.RoundedRectangle(
                inset,
                inset,
                width - (2 * inset),
                height - (2 * inset),
                CornerRadius.Value
            );
            yield return new PageItem.Path(outline, Background, Border);
        }

        if (LeftBar is not null)
        {
            var x = LeftBar.Width.Value / 2;
            yield return new PageItem.Path(
                VectorPath.Polyline(new(x, 0), new(x, height)),
                null,
                LeftBar
            );
        }
    }
}
