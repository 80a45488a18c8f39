using PatternPress.Typesetting.Layout;

namespace PatternPress.Typesetting.Blocks;

/// <summary>Keeps a block on one page if it fits on one; what is taller than a page is divided from the top of a page on.</summary>
public sealed record KeepTogether(Block Content) : Wrapper(Content)
{
    /// <summary>
    /// What is taller than this share of a page is divided where it must be, rather than leave the page before half empty.
    /// </summary>
    public double MostOfPage { get; init; } = 1;

    public override Fit Fit(LayoutContext context, Room room) =>
        context.Fit(Content, room) switch
        {
            Fit.Splits _ when !room.AtTop && !IsTooTall(context, room) => new Fit.Moves(
                $"what is kept together needs more than {room.Height} pt",
                room.Height + new Points(1)
            ),
            var fit => fit,
        };

    bool IsTooTall(LayoutContext context, Room room) =>
        MostOfPage < 1
        && context.Fit(Content, Room.Endless(room.Width)) is Fit.Fits { Fragment: var whole }
        && whole.Height > context.BodyHeight.Scale(MostOfPage);
}
