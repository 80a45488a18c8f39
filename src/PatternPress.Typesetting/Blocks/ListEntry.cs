using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Pages;

namespace PatternPress.Typesetting.Blocks;

/// <summary>An item of a list with its label hanging on the baseline of its first line.</summary>
sealed record ListEntry(string Label, string LabelStyle, Points Indent, Block Content)
    : Wrapper(Content)
{
    (Tag Item, Tag Body)? Continued { get; init; }

    public Inlines.LinkTarget? LabelLink { get; init; }

    public override Fit Fit(LayoutContext context, Room room)
    {
        var tags = Continued ?? (new Tag(TagRole.ListItem), new Tag(TagRole.ListBody));
        var label = Continued is null ? SetLabel(context) : Fragment.Empty;
        return context.Fit(Content, room with { Width = room.Width - Indent }) switch
        {
            Fit.Fits { Fragment: var all } => new Fit.Fits(Place(label, all, tags)),
            Fit.Splits { Fragment: var part, Rest: var rest } => new Fit.Splits(
                Place(label, part, tags),
                this with
                {
                    Content = rest,
                    Continued = tags,
                }
            ),
            var moves => moves,
        };
    }

    public override WidthRange Widths(LayoutContext context) =>
        Content.Widths(context).Plus(Indent);

    Fragment SetLabel(LayoutContext context)
    {
        var text = new Text([new Inlines.Run(Label) { Link = LabelLink }], LabelStyle)
        {
            Role = TagRole.Label,
            Alignment = Styles.Alignment.Left,
        };
        return
            context.Fit(text, Room.Endless(Points.Max(Indent, text.Widths(context).Natural)))
                is Fit.Fits fits
            ? fits.Fragment
            : Fragment.Empty;
    }

    Fragment Place(Fragment label, Fragment body, (Tag Item, Tag Body) tags)
    {
        var (labelY, bodyY) = (Points.Zero, Points.Zero);
        if (label.FirstBaseline is { } own && body.FirstBaseline is { } first)
        {
            (labelY, bodyY) = (
                Points.Max(Points.Zero, first - own),
                Points.Max(Points.Zero, own - first)
            );
        }

        var height = Points.Max(label.Height + labelY, body.Height + bodyY);
        return new FragmentBuilder()
            .Add(new PageItem.TagBegin(tags.Item))
            .Add(label, Points.Zero, labelY)
            .Add(new PageItem.TagBegin(tags.Body))
            .Add(body, Indent, bodyY)
            .Add(new PageItem.TagEnd(tags.Body))
            .Add(new PageItem.TagEnd(tags.Item))
            .ToFragment(Indent + body.Width, height);
    }
}
