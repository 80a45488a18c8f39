using System.Collections.Immutable;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Pages;

namespace PatternPress.Typesetting.Imposition;

/// <summary>
/// Puts pages on larger sheets that are printed to past the page's edge and trimmed afterwards, with marks outside the page
/// where the knife goes.
/// </summary>
public static class PressSheet
{
    static readonly Points MarkLength = new(18_000);
    static readonly Points LeastOffset = new(9_000);
    static readonly Points EdgeRoom = new(3_000);
    static readonly Stroke MarkPen = new(new(350), Ink.Black);

    /// <summary>How far the sheet reaches beyond the page on every side.</summary>
    public static Points Surround(Points bleed, bool cropMarks) =>
        cropMarks ? Offset(bleed) + MarkLength + EdgeRoom : bleed;

    /// <summary>The same pages on larger sheets.</summary>
    /// <param name="bleed">How far past the trim the print reaches.</param>
    /// <param name="cropMarks">Whether the corners are marked.</param>
    public static TypesetDocument Place(TypesetDocument document, Points bleed, bool cropMarks)
    {
        var around = Surround(bleed, cropMarks);
        return document with
        {
            Pages = [.. document.Pages.Select(page => Placed(page, around, bleed, cropMarks))],
            Anchors =
            [
                .. document.Anchors.Select(anchor =>
                    anchor with
                    {
                        X = anchor.X + around,
                        Y = anchor.Y + around,
                    }
                ),
            ],
        };
    }

    static Page Placed(Page page, Points around, Points bleed, bool cropMarks)
    {
        var trim = new PageRect(around, around, page.Paper.Width, page.Paper.Height);
        var print = new PageRect(
            trim.X - bleed,
            trim.Y - bleed,
            trim.Width + (bleed * 2),
            trim.Height + (bleed * 2)
        );
        var items = ImmutableArray.CreateBuilder<PageItem>();
        foreach (var item in page.Items)
        {
            items.Add(PageAssembler.Moved(item, around, around));
        }

        if (cropMarks)
        {
            items.Add(new PageItem.ArtifactBegin(ArtifactKind.PrinterMarks));
            items.AddRange(Marks(trim, Offset(bleed)));
            items.Add(new PageItem.ArtifactEnd());
        }

        return new Page(
            page.Number,
            new PaperSize(page.Paper.Width + (around * 2), page.Paper.Height + (around * 2)),
            items.ToImmutable()
        )
        {
            Trim = trim,
            Bleed = print,
        };
    }

    // Marks stand clear of the bleed, so that none is left on a page that is cut a little askew.
    static Points Offset(Points bleed) => Points.Max(bleed, LeastOffset);

    static IEnumerable<PageItem> Marks(PageRect trim, Points offset)
    {
        foreach (var x in new[] { trim.X, trim.Right })
        {
            yield return Line(x, trim.Y - offset, x, trim.Y - offset - MarkLength);
            yield return Line(x, trim.Bottom + offset, x, trim.Bottom + offset + MarkLength);
        }

        foreach (var y in new[] { trim.Y, trim.Bottom })
        {
            yield return Line(trim.X - offset, y, trim.X - offset - MarkLength, y);
            yield return Line(trim.Right + offset, y, trim.Right + offset + MarkLength, y);
        }
    }

    static PageItem.Path Line(Points x, Points y, Points toX, Points toY) =>
        new(VectorPath.Polyline(new(x.Value, y.Value), new(toX.Value, toY.Value)), null, MarkPen);
}
