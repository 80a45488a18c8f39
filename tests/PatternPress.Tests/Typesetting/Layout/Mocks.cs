using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Pages;

namespace PatternPress.Tests.Typesetting.Layout;

/// <summary>A block of a fixed size that is never divided.</summary>
sealed record Solid(string Name, int Width, int Height) : Block
{
    public override Fit Fit(LayoutContext context, Room room)
    {
        var height = Height.Pt;
        if (height > room.Height && !room.Forced)
        {
            return new Fit.Moves($"{Name} needs {height} pt", height);
        }

        if (height > room.Height)
        {
            context.Report(
                LayoutProblemKind.TooTall,
                $"{Name} is {height} pt tall",
                height,
                room.Height
            );
        }

        return new Fit.Fits(Mock.Fragment(Name, Width.Pt, height));
    }

    public override WidthRange Widths(LayoutContext context) => new(Width.Pt, Width.Pt);
}

/// <summary>A block that can be divided at every point.</summary>
sealed record Flowing(string Name, int Width, int Height) : Block
{
    public override Fit Fit(LayoutContext context, Room room)
    {
        var fits = Math.Max(0, room.Height.Thousandths / 1000);
        return Height <= fits ? new Fit.Fits(Mock.Fragment(Name, Width.Pt, Height.Pt))
            : fits == 0 ? new Fit.Moves($"{Name} needs a point", 1.Pt)
            : new Fit.Splits(
                Mock.Fragment(Name, Width.Pt, ((int)fits).Pt),
                this with
                {
                    Height = Height - (int)fits,
                }
            );
    }

    public override WidthRange Widths(LayoutContext context) => new((Width / 2).Pt, Width.Pt);
}

/// <summary>A block that takes whatever width it gets.</summary>
sealed record Wide(string Name, int Height) : Block
{
    public override Fit Fit(LayoutContext context, Room room) =>
        Height.Pt <= room.Height || room.Forced
            ? new Fit.Fits(Mock.Fragment(Name, room.Width, Height.Pt))
            : new Fit.Moves($"{Name} needs {Height} pt", Height.Pt);
}

static class Mock
{
    /// <summary>A fragment that leaves a trace of its place on the page.</summary>
    public static Fragment Fragment(string name, Points width, Points height) =>
        new FragmentBuilder()
            .Add(
                new PageItem.RegionBegin(
                    new PageRect(Points.Zero, Points.Zero, width, height),
                    name
                )
            )
            .Add(new PageItem.RegionEnd())
            .ToFragment(width, height);
}
