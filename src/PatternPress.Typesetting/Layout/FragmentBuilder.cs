using System.Collections.Immutable;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Pages;

namespace PatternPress.Typesetting.Layout;

/// <summary>Collects the parts of a fragment.</summary>
public sealed class FragmentBuilder
{
    readonly ImmutableArray<FragmentPart>.Builder parts =
        ImmutableArray.CreateBuilder<FragmentPart>();
    Points? firstBaseline;
    Points? lastBaseline;

    /// <summary>How far down the fragments added so far reach.</summary>
    public Points Bottom { get; private set; }

    /// <summary>How far right they reach.</summary>
    public Points Right { get; private set; }

    public FragmentBuilder Add(Fragment fragment, Points x, Points y)
    {
        if (!fragment.Parts.IsEmpty)
        {
            parts.Add(new FragmentPart.Child(x, y, fragment));
        }

        Bottom = Points.Max(Bottom, y + fragment.Height);
        Right = Points.Max(Right, x + fragment.Width);
        firstBaseline ??= y + fragment.FirstBaseline;
        lastBaseline = y + fragment.LastBaseline ?? lastBaseline;
        return this;
    }

    /// <summary>An item whose place is relative to the fragment.</summary>
    public FragmentBuilder Add(PageItem item)
    {
        parts.Add(new FragmentPart.Item(Points.Zero, Points.Zero, item));
        return this;
    }

    public FragmentBuilder Add(Drawing drawing, Points x, Points y, Points width)
    {
        parts.Add(new FragmentPart.Picture(x, y, width, drawing));
        return this;
    }

    /// <summary>Items that are not read aloud.</summary>
    public FragmentBuilder AddArtifact(params IEnumerable<PageItem> items)
    {
        var started = false;
        foreach (var item in items)
        {
            if (!started)
            {
                Add(new PageItem.ArtifactBegin(ArtifactKind.Layout));
                started = true;
            }

            Add(item);
        }

        return started ? Add(new PageItem.ArtifactEnd()) : this;
    }

    public Fragment ToFragment(Points width, Points height) =>
        new(width, height, parts.ToImmutable())
        {
            FirstBaseline = firstBaseline,
            LastBaseline = lastBaseline,
        };

    /// <summary>A fragment between two items, as between the begin and end of a tag.</summary>
    public static Fragment Wrap(PageItem begin, Fragment inner, PageItem end) =>
        inner with
        {
            Parts =
            [
                new FragmentPart.Item(Points.Zero, Points.Zero, begin),
                new FragmentPart.Child(Points.Zero, Points.Zero, inner),
                new FragmentPart.Item(Points.Zero, Points.Zero, end),
            ],
        };
}
