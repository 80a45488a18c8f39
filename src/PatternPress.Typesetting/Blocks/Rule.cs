using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Pages;

namespace PatternPress.Typesetting.Blocks;

/// <summary>A line across, set as an artifact.</summary>
public sealed record Rule(Stroke Stroke) : Block
{
    public Points SpaceBefore { get; init; }

    public Points SpaceAfter { get; init; }

    public override Fit Fit(LayoutContext context, Room room)
    {
        if (Stroke.Width > room.Height && !room.Forced)
        {
            return new Fit.Moves("no room is left for a rule", Stroke.Width);
        }

        var middle = Stroke.Width.Value / 2;
        var line = VectorPath.Polyline(new(0, middle), new(room.Width.Value, middle));
        return new Fit.Fits(
            new FragmentBuilder()
                .AddArtifact([new PageItem.Path(line, null, Stroke)])
                .ToFragment(room.Width, Stroke.Width)
        );
    }

    public override Spacing Spacing(LayoutContext context) => new(SpaceBefore, SpaceAfter);
}
