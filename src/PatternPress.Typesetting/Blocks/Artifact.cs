using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Pages;

namespace PatternPress.Typesetting.Blocks;

/// <summary>Shows a block without reading it aloud: decoration, or what is said elsewhere.</summary>
public sealed record Artifact(Block Content) : Wrapper(Content)
{
    public override Fit Fit(LayoutContext context, Room room) =>
        context.Fit(Content, room) switch
        {
            Fit.Fits { Fragment: var all } => new Fit.Fits(Wrap(all)),
            Fit.Splits { Fragment: var part, Rest: var rest } => new Fit.Splits(
                Wrap(part),
                this with
                {
                    Content = rest,
                }
            ),
            var moves => moves,
        };

    static Fragment Wrap(Fragment inner) =>
        FragmentBuilder.Wrap(
            new PageItem.ArtifactBegin(ArtifactKind.Layout),
            inner,
            new PageItem.ArtifactEnd()
        );
}
