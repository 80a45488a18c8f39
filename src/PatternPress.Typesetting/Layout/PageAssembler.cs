using System.Collections.Immutable;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Pages;

namespace PatternPress.Typesetting.Layout;

/// <summary>Lays the parts of fragments flat onto a page: every item at its place on the sheet.</summary>
sealed class PageAssembler(LayoutContext context)
{
    readonly ImmutableArray<PageItem>.Builder items = ImmutableArray.CreateBuilder<PageItem>();
    int artifactDepth;

    public ImmutableArray<PageItem> ToItems() => items.ToImmutable();

    public void Add(Fragment fragment, Points x, Points y)
    {
        foreach (var part in fragment.Parts)
        {
            switch (part)
            {
                case FragmentPart.Child child:
                    Add(child.Fragment, x + child.X, y + child.Y);
                    break;
                case FragmentPart.Picture picture:
                    Add(picture.Drawing, x + picture.X, y + picture.Y, picture.Width);
                    break;
                case FragmentPart.Item item:
                    Add(item.PageItem, x + item.X, y + item.Y);
                    break;
            }
        }
    }

    /// <summary>A fragment that is not read aloud.</summary>
    public void AddArtifact(ArtifactKind kind, Fragment fragment, Points x, Points y)
    {
        Add(new PageItem.ArtifactBegin(kind), Points.Zero, Points.Zero);
        Add(fragment, x, y);
        Add(new PageItem.ArtifactEnd(), Points.Zero, Points.Zero);
    }

    /// <summary>A drawing at a width on paper.</summary>
    public void Add(Drawing drawing, Points x, Points y, Points width)
    {
        var place = new PageRect(x, y, width, drawing.HeightFor(width));
        items.Add(new PageItem.RegionBegin(place, "figure"));
        DrawingPainter.Paint(context, drawing, place, items);
        items.Add(new PageItem.RegionEnd());
    }

    void Add(PageItem item, Points x, Points y)
    {
        switch (item)
        {
            case PageItem.ArtifactBegin when artifactDepth++ > 0:
            case PageItem.ArtifactEnd when --artifactDepth > 0:
                // Artifacts within artifacts are one artifact.
                return;
            case PageItem.TagBegin
            or PageItem.TagEnd
            or PageItem.Link
            or PageItem.Anchor when artifactDepth > 0:
                // Nothing in an artifact is read, linked or listed: it stands elsewhere already.
                return;
            default:
                items.Add(Moved(item, x, y));
                return;
        }
    }

    /// <summary>An item at another place.</summary>
    internal static PageItem Moved(PageItem item, Points x, Points y)
    {
        if (x == Points.Zero && y == Points.Zero)
        {
            return item;
        }

        return item switch
        {
            PageItem.Text text => text with { X = text.X + x, Baseline = text.Baseline + y },
            PageItem.Path path => path with
            {
                Outline = path.Outline.Transformed(Move()),
                Image = path.Image is { } image
                    ? image with
                    {
                        Tile = image.Tile.Then(Move()),
                    }
                    : null,
            },
            PageItem.Clip clip => clip with
            {
                Outline = clip.Outline.Transformed(Move()),
                Items = [.. clip.Items.Select(inner => Moved(inner, x, y))],
            },
            PageItem.Link link => link with { Place = link.Place.MovedBy(x, y) },
            PageItem.Anchor anchor => anchor with { X = anchor.X + x, Y = anchor.Y + y },
            PageItem.TagBegin { Place: { } place } begin => begin with
            {
                Place = place.MovedBy(x, y),
            },
            PageItem.RegionBegin begin => begin with { Place = begin.Place.MovedBy(x, y) },
            _ => item,
        };

        Transform Move() => Transform.Move(x.Value, y.Value);
    }
}
