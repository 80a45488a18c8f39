using System.Collections.Immutable;
using PatternPress.Typesetting.Fonts;

namespace PatternPress.Typesetting.Pages;

/// <summary>Looks for words that collide or leave their place on a finished page.</summary>
public static class PageInspection
{
    // Touching is no collision: ink may overlap by this much, a hair's breadth, before it is reported.
    static readonly Points Hair = new(150);
    static readonly Points Lean = new(900);

    /// <summary>All findings of a page.</summary>
    public static ImmutableArray<PageFinding> Inspect(Page page)
    {
        var findings = ImmutableArray.CreateBuilder<PageFinding>();
        var words = Words(page, findings);
        // Sorted from top to bottom, only words that begin above the lower edge of one can meet it.
        words.Sort(
            (a, b) => (a.Place.Y, a.Place.X, a.Order).CompareTo((b.Place.Y, b.Place.X, b.Order))
        );
        for (var i = 0; i < words.Count; i++)
        {
            for (var j = i + 1; j < words.Count && words[j].Place.Y < words[i].Place.Bottom; j++)
            {
                if (Collide(words[i], words[j]))
                {
                    var shared = words[i].Place.Shared(words[j].Place);
                    findings.Add(
                        new(
                            PageFindingKind.WordsOverlap,
                            page.Number,
                            words[i].Place,
                            $"'{words[i].Words}' and '{words[j].Words}' overlap by {shared.Width} × {shared.Height} pt"
                        )
                    );
                }
            }
        }

        return findings.DrainToImmutable();
    }

    /// <summary>All findings of all pages.</summary>
    public static ImmutableArray<PageFinding> Inspect(TypesetDocument document) =>
        [.. document.Pages.SelectMany(page => Inspect(page))];

    /// <summary>The box around the ink of some words; the box between baseline and capitals for words without ink.</summary>
    public static PageRect InkOf(PageItem.Text text)
    {
        var font = text.Face.Font;
        var (left, bottom, right, top) = (int.MaxValue, int.MaxValue, int.MinValue, int.MinValue);
        var x = 0;
        foreach (var glyph in text.Shape.Glyphs)
        {
            if (font.BoundsOf(glyph.Id) is { } box)
            {
                left = Math.Min(left, x + glyph.XOffset + box.Left);
                right = Math.Max(right, x + glyph.XOffset + box.Right);
                bottom = Math.Min(bottom, glyph.YOffset + box.Bottom);
                top = Math.Max(top, glyph.YOffset + box.Top);
            }

            x += glyph.Advance;
        }

        if (left == int.MaxValue)
        {
            (left, right, bottom, top) = (0, x, 0, font.CapHeight);
        }

        return text.Degrees == 0
            ? new PageRect(
                text.X + Scaled(left),
                text.Baseline - Scaled(top),
                Scaled(right) - Scaled(left),
                Scaled(top) - Scaled(bottom)
            )
            : Turned(text, left, bottom, right, top);

        Points Scaled(int units) => TextMeasurer.ToPoints(text.Face, text.Size, units);
    }

    static PageRect Turned(PageItem.Text text, int left, int bottom, int right, int top)
    {
        var scale = text.Size.Value / text.Face.Font.UnitsPerEm;
        var place = Drawings
            .Transform.Scale(scale, -scale)
            .Then(Drawings.Transform.Turn(text.Degrees))
            .Then(Drawings.Transform.Move(text.X.Value, text.Baseline.Value));
        var box = Drawings
            .VectorPath.Polygon(
                new(left, bottom),
                new(right, bottom),
                new(right, top),
                new(left, top)
            )
            .Transformed(place)
            .Bounds();
        return new(
            Points.Of(box.Left),
            Points.Of(box.Top),
            Points.Of(box.Right) - Points.Of(box.Left),
            Points.Of(box.Bottom) - Points.Of(box.Top)
        );
    }

    /// <summary>Text that belongs together: a run of letters, or all parts of a fraction.</summary>
    readonly record struct Word(PageRect Place, string Words, Points Baseline, int Order);

    static List<Word> Words(Page page, ImmutableArray<PageFinding>.Builder findings)
    {
        var words = new List<Word>();
        var sheet = new PageRect(Points.Zero, Points.Zero, page.Paper.Width, page.Paper.Height);
        var regions = new Stack<PageItem.RegionBegin>();
        Word? span = null;
        var inSpan = false;
        Collect(page.Items);
        return words;

        void Collect(ImmutableArray<PageItem> items)
        {
            foreach (var item in items)
            {
                switch (item)
                {
                    case PageItem.RegionBegin begin:
                        regions.Push(begin);
                        break;
                    case PageItem.RegionEnd:
                        regions.Pop();
                        break;
                    case PageItem.Clip clip:
                        Collect(clip.Items);
                        break;
                    case PageItem.SpanBegin:
                        (inSpan, span) = (true, null);
                        break;
                    case PageItem.SpanEnd when span is { } whole:
                        (inSpan, span) = (false, null);
                        Add(whole);
                        break;
                    case PageItem.SpanEnd:
                        inSpan = false;
                        break;
                    case PageItem.Text text when text.Characters.AsSpan().Trim().Length > 0:
                        var word = new Word(InkOf(text), text.Characters, text.Baseline, 0);
                        if (inSpan)
                        {
                            span = span is { } before ? Joined(before, word) : word;
                        }
                        else
                        {
                            Add(word);
                        }

                        break;
                }
            }
        }

        void Add(Word word)
        {
            words.Add(word with { Order = words.Count });
            if (!sheet.Contains(word.Place))
            {
                findings.Add(
                    new(
                        PageFindingKind.OutsidePage,
                        page.Number,
                        word.Place,
                        $"'{word.Words}' leaves the page"
                    )
                );
            }
            else if (regions.TryPeek(out var region) && !Grown(region.Place).Contains(word.Place))
            {
                findings.Add(
                    new(
                        PageFindingKind.OutsidePlace,
                        page.Number,
                        word.Place,
                        $"'{word.Words}' leaves its {region.Name} of {region.Place.Width} × {region.Place.Height} pt"
                    )
                );
            }
        }
    }

    static Word Joined(Word a, Word b)
    {
        var (left, top) = (Points.Min(a.Place.X, b.Place.X), Points.Min(a.Place.Y, b.Place.Y));
        var (right, bottom) = (
            Points.Max(a.Place.Right, b.Place.Right),
            Points.Max(a.Place.Bottom, b.Place.Bottom)
        );
        return a with
        {
            Place = new(left, top, right - left, bottom - top),
            Words = a.Words + b.Words,
        };
    }

    // Letters that follow one another on a line may lean into each other, as an italic f before a bracket does.
    static bool Collide(Word a, Word b)
    {
        var shared = a.Place.Shared(b.Place);
        var least = a.Baseline == b.Baseline ? Lean : Hair;
        return shared.Width > least && shared.Height > Hair;
    }

    static PageRect Grown(PageRect place) =>
        new(place.X - Hair, place.Y - Hair, place.Width + (Hair * 2), place.Height + (Hair * 2));
}
