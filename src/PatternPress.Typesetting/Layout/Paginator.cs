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

        ReportNearlyEmpty(context, pages);
        return pages;
    }

    /// <summary>Whether any part of the body shows a page number, so that a second pass can change it.</summary>
    public static bool UsesPageNumbers(Document document) =>
        document.Sequences.Any(sequence => Uses(sequence.Body));

    static bool Uses(Block block) =>
        block is Contents
        || (block is Text text && text.Content.Any(inline => inline is PageField))
        || block.Children.Any(Uses);

    static void ReportNearlyEmpty(LayoutContext context, List<BodyPage> pages)
    {
        foreach (var page in pages.SkipLast(1))
        {
            var height = page.Frame.Body.Height;
            if (page.Body.Height < height.Scale(page.LeastFilled))
            {
                context.PageNumber = page.Number;
                context.Report(
                    LayoutProblemKind.NearlyEmpty,
                    $"{page.Body.Height} pt of {height} pt are filled",
                    height.Scale(page.LeastFilled),
                    page.Body.Height
                );
            }
        }
    }

    // Tries the densities of the sequence and keeps the first that needs the fewest pages.
    static void Fill(LayoutContext context, PageSequence sequence, List<BodyPage> pages)
    {
        var before = context.Reported();
        List<BodyPage>? best = null;
        var reported = before;
        foreach (var density in sequence.Densities)
        {
            context.Return(before);
            context.Density = density;
            var attempt = Attempt(context, sequence, pages);
            if (best is null || attempt.Count < best.Count)
            {
                (best, reported) = (attempt, context.Reported());
            }

            if (best.Count - pages.Count <= 1)
            {
                break;
            }
        }

        context.Density = 1;
        context.Return(reported);
        pages.Clear();
        pages.AddRange(best!);
    }

    static List<BodyPage> Attempt(
        LayoutContext context,
        PageSequence sequence,
        List<BodyPage> earlier
    )
    {
        var pages = new List<BodyPage>(earlier);
        var place = sequence.Frame.Body;
        context.BodyHeight = place.Height;
        Block? left = sequence.Body;
        var first = true;
        if (sequence.Joins is { } least && pages.Count > 0)
        {
            (left, first) = Join(context, sequence, least, pages);
        }

        for (; left is not null && pages.Count < MostPages; first = false)
        {
            context.PageNumber = pages.Count + 1;
            var room = new Room(place.Width, place.Height, AtTop: true, Top: Points.Zero);
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
                {
                    LeastFilled = sequence.LeastFilled,
                }
            );
            left = rest is { IsBlank: false } ? rest : null;
        }

        return pages;
    }

    // Begins a sequence below the last one, if enough of its page is left and anything of it fits there.
    static (Block? Left, bool First) Join(
        LayoutContext context,
        PageSequence sequence,
        Points least,
        List<BodyPage> pages
    )
    {
        var last = pages[^1];
        var place = sequence.Frame.Body;
        var y = last.Body.Height + context.Space(sequence.Body.Spacing(context).Before);
        if (last.Frame.Body != place || place.Height - y < least)
        {
            return (sequence.Body, true);
        }

        context.PageNumber = last.Number;
        var (fragment, rest) = context.Fit(
            sequence.Body,
            new Room(place.Width, place.Height - y, AtTop: false, Top: y)
        ) switch
        {
            Fit.Fits fits => (fits.Fragment, null),
            Fit.Splits splits => (splits.Fragment, splits.Rest),
            _ => ((Fragment?)null, (Block?)sequence.Body),
        };
        if (fragment is null)
        {
            return (rest, true);
        }

        var body = new FragmentBuilder()
            .Add(last.Body, Points.Zero, Points.Zero)
            .Add(fragment, Points.Zero, y)
            .ToFragment(place.Width, y + fragment.Height);
        pages[^1] = last with { Body = body, Anchors = Anchors(body, place, last.Number) };
        return (rest is { IsBlank: false } ? rest : null, false);
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
