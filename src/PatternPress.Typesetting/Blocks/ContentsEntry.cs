using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Inlines;
using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Pages;

namespace PatternPress.Typesetting.Blocks;

/// <summary>A line of the contents: title, leader dots, page number; the whole of it a link.</summary>
sealed record ContentsEntry(int AnchorIndex, string Title, string Style, Points Indent) : Block
{
    static readonly Points DotsApart = new(4_000);
    static readonly Points DotsClear = new(4_000);

    public override Fit Fit(LayoutContext context, Room room)
    {
        var anchor = context.Anchors[AnchorIndex];
        var style = context.Style(Style);
        var link = new LinkTarget.ToAnchorAt(AnchorIndex);
        var number = Words(anchor.Page == 0 ? "00" : $"{anchor.Page}");
        var numberWidth = number.Widths(context).Natural;
        var titleWidth = room.Width - Indent - numberWidth - (DotsClear * 2);
        if (
            context.Fit(Words(Title), Room.Endless(titleWidth))
            is not Fit.Fits { Fragment: var title }
        )
        {
            return new Fit.Moves("an entry of the contents does not fit", style.Leading);
        }

        if (title.Height > room.Height && !room.Forced)
        {
            return new Fit.Moves(
                $"an entry of the contents needs {title.Height} pt and has {room.Height} pt",
                title.Height
            );
        }

        var numberSet = ((Fit.Fits)context.Fit(number, Room.Endless(numberWidth))).Fragment;
        var numberY =
            (title.LastBaseline ?? Points.Zero) - (numberSet.FirstBaseline ?? Points.Zero);
        var (item, reference, linkTag) = (
            new Tag(TagRole.ContentsItem),
            new Tag(TagRole.Reference),
            new Tag(TagRole.Link)
        );
        var place = new PageRect(Indent, Points.Zero, room.Width - Indent, title.Height);
        var builder = new FragmentBuilder()
            .Add(new PageItem.TagBegin(item))
            .Add(new PageItem.TagBegin(reference))
            .Add(new PageItem.TagBegin(linkTag))
            .Add(title, Indent, Points.Zero);
        var from = Indent + (title.LastLineEnd ?? title.Width) + DotsClear;
        var to = room.Width - (numberWidth + DotsClear).UpTo(DotsApart);
        if (to - from > DotsApart * 2)
        {
            builder.AddArtifact([Dots(from, to, title.LastBaseline ?? title.Height, style.Ink)]);
        }

        builder
            .Add(numberSet, room.Width - numberWidth, numberY)
            .Add(new PageItem.Link(place, link, linkTag, $"{Title}, {anchor.Page}"))
            .Add(new PageItem.TagEnd(linkTag))
            .Add(new PageItem.TagEnd(reference))
            .Add(new PageItem.TagEnd(item));
        return new Fit.Fits(builder.ToFragment(room.Width, title.Height));
    }

    public override Spacing Spacing(LayoutContext context)
    {
        var style = context.Style(Style);
        return new(style.SpaceBefore, style.SpaceAfter);
    }

    Text Words(string words) => new(FractionText.Parse(words), Style) { Role = null };

    // Dots at whole multiples of their distance from the right edge, so that they line up from entry to entry.
    static PageItem.Path Dots(Points from, Points to, Points baseline, Ink ink)
    {
        var count = (to - from).Thousandths / DotsApart.Thousandths;
        var y = baseline.Value - 0.4;
        return new(
            VectorPath.Polyline(new((to - (DotsApart * count)).Value, y), new(to.Value, y)),
            null,
            Stroke.Dotted(new(800), ink, DotsApart)
        );
    }
}
