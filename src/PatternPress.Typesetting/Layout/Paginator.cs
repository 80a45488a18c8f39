using System.Collections.Immutable;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Inlines;
using PatternPress.Typesetting.Pages;

namespace PatternPress.Typesetting.Layout;

/// <summary>Fills page after page with the body of each sequence.</summary>
static class Paginator
{
    // A document of more pages than this is a mistake of the input; the rest is cut off with a problem.
    const int MostPages = 20_000;

    public static List<BodyPage> Paginate(LayoutContext context, Document document)
    {
        var pages = new List<BodyPage>();
        foreach (var sequence in document.Sequences)
        {
            Fill(context, sequence, pages);
        }

        return pages;
    }

    /// <summary>Whether any part of the body shows a page number, so that a second pass can change it.</summary>
    public static bool UsesPageNumbers(Document document) =>
        document.Sequences.Any(sequence => Uses(sequence.Body));

    static bool Uses(Block block) =>
        block is Contents
        || (block is Text text && text.Content.Any(inline => inline is PageField))
        || block.Children.Any(Uses);

    static void Fill(LayoutContext context, PageSequence sequence, List<BodyPage> pages)
    {
        var place = sequence.Frame.Body;
        var first = true;
        for (
            Block? left = sequence.Body;
            left is not null && pages.Count < MostPages;
            first = false
        )
        {
            context.PageNumber = pages.Count + 1;
            var room = new Room(place.Width, place.Height, AtTop: true);
            var fit = context.Fit(left, room);
            if (fit is Fit.Moves)
            {
                // Nothing of it fits an empty page: place it all the same, and let it say so.
                fit = context.Fit(left, room with { Forced = true });
            }

            var (fragment, rest) = fit switch
            {
                Fit.Fits fits => (fits.Fragment, null),
                Fit.Splits splits => (splits.Fragment, splits.Rest),
                _ => (Fragment.Empty, null),
            };
            if (fit is Fit.Moves moves)
            {
                context.Report(LayoutProblemKind.TooTall, moves.Reason, moves.Needed, place.Height);
            }

            pages.Add(
                new(
                    pages.Count + 1,
                    sequence.Frame,
                    first,
                    fragment,
                    Anchors(fragment, place, pages.Count + 1)
                )
            );
            left = rest is { IsBlank: false } ? rest : null;
        }
    }

    static ImmutableArray<PlacedAnchor> Anchors(Fragment fragment, PageRect place, int page)
    {
        var anchors = ImmutableArray.CreateBuilder<PlacedAnchor>();
        Collect(fragment, place.X, place.Y, artifact: false);
        return anchors.DrainToImmutable();

        void Collect(Fragment inner, Points x, Points y, bool artifact)
        {
            foreach (var part in inner.Parts)
            {
                switch (part)
                {
                    case FragmentPart.Child child:
                        Collect(child.Fragment, x + child.X, y + child.Y, artifact);
                        break;
                    case FragmentPart.Item { PageItem: PageItem.ArtifactBegin }:
                        artifact = true;
                        break;
                    case FragmentPart.Item { PageItem: PageItem.ArtifactEnd }:
                        artifact = false;
                        break;
                    case FragmentPart.Item { PageItem: PageItem.Anchor anchor } when !artifact:
                        anchors.Add(
                            new(
                                anchor.Name,
                                anchor.Level,
                                anchor.Title,
                                page,
                                x + part.X + anchor.X,
                                y + part.Y + anchor.Y
                            )
                        );
                        break;
                }
            }
        }
    }
}
