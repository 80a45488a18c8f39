using System.Collections.Immutable;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Pages;

namespace PatternPress.Typesetting.Imposition;

/// <summary>
/// Arranges pages for saddle stitching: two on each side of a sheet, so that the sheets, printed on both sides, laid inside
/// one another, folded in the middle and stapled through the fold, read in order. The pages come out in the order of
/// printing: the outside and the inside of each sheet, from the outermost in.
/// </summary>
public static class SaddleStitch
{
    /// <summary>Pages on a sheet: two on each side.</summary>
    public const int PagesOfSheet = 4;

    /// <summary>How many sheets some pages take; what is left over of the last stays blank.</summary>
    public static int SheetsFor(int pages) => (pages + PagesOfSheet - 1) / PagesOfSheet;

    /// <summary>
    /// The numbers of the pages on each side of each sheet, left and right, in the order of printing. Numbers past the last
    /// page are blank pages at the end.
    /// </summary>
    public static ImmutableArray<(int Left, int Right)> Order(int pages)
    {
        var sheets = SheetsFor(pages);
        var sides = ImmutableArray.CreateBuilder<(int, int)>(sheets * 2);
        for (var sheet = 0; sheet < sheets; sheet++)
        {
            var (first, last) = ((2 * sheet) + 1, (PagesOfSheet * sheets) - (2 * sheet));
            sides.Add((last, first));
            sides.Add((first + 1, last - 1));
        }

        return sides.MoveToImmutable();
    }

    /// <summary>
    /// How far the pages of a sheet are moved towards the fold. Every sheet pushes those inside it outwards by its thickness;
    /// moved in by as much, the text of all pages stands equally far from the trimmed edge. Common practice, no source.
    /// </summary>
    /// <param name="sheet">Counted from 0, the outermost.</param>
    public static Points Creep(int sheet, Points paperThickness) => paperThickness * sheet;

    /// <summary>Two pages to a side of a sheet, in the order of printing. Tags, links and bookmarks are dropped: the order in
    /// which such a file is read makes no sense.</summary>
    /// <param name="document">Pages that all have the size of half a sheet.</param>
    /// <param name="sheet">The sheet, upright or turned.</param>
    /// <param name="paperThickness">Of one sheet, for the creep.</param>
    public static TypesetDocument Impose(
        TypesetDocument document,
        PaperSize sheet,
        Points paperThickness
    )
    {
        var turned = sheet.Width >= sheet.Height ? sheet : sheet.Turned();
        var fold = turned.Width / 2;
        var order = Order(document.Pages.Length);
        var sides = order.Select(
            (pair, side) =>
            {
                var creep = Creep(side / 2, paperThickness);
                var items = ImmutableArray.CreateBuilder<PageItem>();
                if (PageAt(pair.Left) is { } left)
                {
                    items.Add(Placed(left, fold - left.Paper.Width + creep, fold, turned, true));
                }

                if (PageAt(pair.Right) is { } right)
                {
                    items.Add(Placed(right, fold - creep, fold, turned, false));
                }

                return new Page(side + 1, turned, items.ToImmutable());
            }
        );
        return document with { Pages = [.. sides], Anchors = [] };

        Page? PageAt(int number) =>
            number <= document.Pages.Length ? document.Pages[number - 1] : null;
    }

    // A page keeps to its side of the fold; past the other edges a bleed may reach.
    static PageItem.Clip Placed(Page page, Points x, Points fold, PaperSize sheet, bool left)
    {
        var beyond = sheet.Width.Value;
        var y = ((sheet.Height - page.Paper.Height) / 2);
        var half = left
            ? VectorPath.Rectangle(
                -beyond,
                -beyond,
                fold.Value + beyond,
                sheet.Height.Value + (2 * beyond)
            )
            : VectorPath.Rectangle(
                fold.Value,
                -beyond,
                fold.Value + beyond,
                sheet.Height.Value + (2 * beyond)
            );
        return new PageItem.Clip(
            half,
            [.. Shown(page.Items).Select(item => PageAssembler.Moved(item, x, y))]
        );
    }

    // What is seen, and what it reads as when it is copied.
    static IEnumerable<PageItem> Shown(ImmutableArray<PageItem> items) =>
        items.Where(item =>
            item
                is not (
                    PageItem.TagBegin
                    or PageItem.TagEnd
                    or PageItem.ArtifactBegin
                    or PageItem.ArtifactEnd
                    or PageItem.Link
                    or PageItem.Anchor
                )
        );
}
