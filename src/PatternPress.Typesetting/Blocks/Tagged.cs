using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Pages;

namespace PatternPress.Typesetting.Blocks;

/// <summary>Says what a block is, for those who hear it. Divided, the parts belong to the same tag.</summary>
public sealed record Tagged(TagRole Role, Block Content) : Wrapper(Content)
{
    /// <summary>Read aloud instead of the content.</summary>
    public string? Alt { get; init; }

    /// <summary>The characters that the content stands for.</summary>
    public string? ActualText { get; init; }

    /// <summary>The language where it differs (BCP 47).</summary>
    public string? Language { get; init; }

    /// <summary>Of lists: whether the labels are numbers.</summary>
    public bool Numbered { get; init; }

    /// <summary>The tag of the part on an earlier page.</summary>
    internal Tag? Continued { get; init; }

    public override Fit Fit(LayoutContext context, Room room)
    {
        var tag =
            Continued
            ?? new Tag(Role)
            {
                Alt = Alt,
                ActualText = ActualText,
                Language = Language,
                Numbered = Numbered,
            };
        return context.Fit(Content, room) switch
        {
            Fit.Fits { Fragment: var all } => new Fit.Fits(Wrap(tag, all)),
            Fit.Splits { Fragment: var part, Rest: var rest } => new Fit.Splits(
                Wrap(tag, part),
                this with
                {
                    Content = rest,
                    Continued = tag,
                }
            ),
            var moves => moves,
        };
    }

    static Fragment Wrap(Tag tag, Fragment inner) =>
        FragmentBuilder.Wrap(
            new PageItem.TagBegin(tag)
            {
                Place = new PageRect(Points.Zero, Points.Zero, inner.Width, inner.Height),
            },
            inner,
            new PageItem.TagEnd(tag)
        );
}
