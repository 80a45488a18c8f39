using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Pages;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Typesetting.Blocks;

/// <summary>
/// A drawing with words for those who cannot see it, and possibly a caption. It shrinks down to a least width before it
/// moves to the next page.
/// </summary>
/// <param name="Drawing">What is drawn.</param>
/// <param name="Alt">What a sighted reader sees, in words; empty for mere decoration.</param>
public sealed record Figure(Drawing Drawing, string Alt) : Block
{
    /// <summary>Set below the drawing.</summary>
    public Block? Caption { get; init; }

    /// <summary>The width on paper where there is room; none for the drawing's natural width.</summary>
    public Points? MaxWidth { get; init; }

    /// <summary>The least width on paper; none if the figure does not shrink to stay on a page.</summary>
    public Points? MinWidth { get; init; }

    /// <summary>Where a drawing narrower than its place stands.</summary>
    public Alignment Alignment { get; init; } = Alignment.Left;

    public Points SpaceBefore { get; init; }

    public Points SpaceAfter { get; init; }

    /// <summary>Between drawing and caption.</summary>
    public Points CaptionGap { get; init; } = new(4_000);

    public override Fit Fit(LayoutContext context, Room room)
    {
        var full = Points.Min(MaxWidth ?? Drawing.NaturalWidth, room.Width);
        var caption = CaptionFragment(context, room.Width);
        var below = caption is null ? Points.Zero : CaptionGap + caption.Height;
        var width = Drawing.WidthWithin(full, Points.Max(Points.Zero, room.Height - below));
        var least = Points.Min(MinWidth ?? full, full);
        if (width < least && !room.AtTop)
        {
            var needed = Drawing.HeightFor(least) + below;
            return new Fit.Moves($"the figure needs {needed} pt and has {room.Height} pt", needed);
        }

        if (width < least)
        {
            if (!room.Forced)
            {
                return new Fit.Moves(
                    "the figure is taller than a page",
                    Drawing.HeightFor(least) + below
                );
            }

            context.Report(
                LayoutProblemKind.TooTall,
                $"a figure is {Drawing.HeightFor(least) + below} pt tall at its least width, {room.Height} pt are left; it was drawn {width} pt wide",
                Drawing.HeightFor(least) + below,
                room.Height
            );
        }

        return new Fit.Fits(Place(room.Width, width, caption));
    }

    public override WidthRange Widths(LayoutContext context)
    {
        var full = MaxWidth ?? Drawing.NaturalWidth;
        var own = new WidthRange(MinWidth ?? full, full);
        return Caption is null ? own : own.Or(new(Caption.Widths(context).Least, Points.Zero));
    }

    public override Spacing Spacing(LayoutContext context) => new(SpaceBefore, SpaceAfter);

    public override IEnumerable<Block> Children => Caption is null ? [] : [Caption];

    Fragment? CaptionFragment(LayoutContext context, Points width)
    {
        Block? caption = Caption switch
        {
            null => null,
            Text { Role: TagRole.Paragraph } text => text with { Role = TagRole.Caption },
            _ => new Tagged(TagRole.Caption, Caption),
        };
        return caption is not null && context.Fit(caption, Room.Endless(width)) is Fit.Fits fits
            ? fits.Fragment
            : null;
    }

    Fragment Place(Points room, Points width, Fragment? caption)
    {
        var height = Drawing.HeightFor(width);
        var x = Alignment switch
        {
            Alignment.Centre => (room - width) / 2,
            Alignment.Right => room - width,
            _ => Points.Zero,
        };
        var place = new PageRect(x, Points.Zero, width, height);
        var builder = new FragmentBuilder();
        if (Alt.Length == 0)
        {
            builder
                .Add(new PageItem.ArtifactBegin(ArtifactKind.Layout))
                .Add(Drawing, x, Points.Zero, width)
                .Add(new PageItem.ArtifactEnd());
        }
        else
        {
            var tag = new Tag(TagRole.Figure) { Alt = Alt };
            builder
                .Add(new PageItem.TagBegin(tag) { Place = place })
                .Add(Drawing, x, Points.Zero, width)
                .Add(new PageItem.TagEnd(tag));
        }

        if (caption is null)
        {
            return builder.ToFragment(x + width, height);
        }

        builder.Add(caption, Points.Zero, height + CaptionGap);
        return builder.ToFragment(
            Points.Max(x + width, caption.Width),
            height + CaptionGap + caption.Height
        );
    }
}
