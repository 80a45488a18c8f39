using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Pages;

namespace PatternPress.Typesetting.Blocks;

/// <summary>A named place without height, kept with what follows.</summary>
/// <param name="Name">The name links and page references use; empty for a place that is only listed.</param>
/// <param name="Level">1 to 6 to be listed in bookmarks and contents; 0 to be linked to only.</param>
/// <param name="Title">The words listed.</param>
public sealed record Anchor(string Name, int Level = 0, string Title = "") : Block
{
    public override Fit Fit(LayoutContext context, Room room) =>
        new Fit.Fits(new FragmentBuilder().Add(ToItem()).ToFragment(Points.Zero, Points.Zero));

    public override bool StaysWithNext(LayoutContext context) => true;

    internal PageItem.Anchor ToItem() => new(Points.Zero, Points.Zero, Name, Level, Title);
}
