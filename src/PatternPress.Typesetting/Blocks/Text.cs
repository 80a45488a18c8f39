using System.Collections.Immutable;
using System.Runtime.InteropServices;
using PatternPress.Typesetting.Inlines;
using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Layout.Lines;
using PatternPress.Typesetting.Pages;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Typesetting.Blocks;

/// <summary>
/// A paragraph. Lines break where words end; at the foot and the head of a page at least two lines stay together.
/// </summary>
/// <param name="Content">Its pieces in order.</param>
/// <param name="Style">The name of a text style.</param>
public sealed record Text(ImmutableArray<Inline> Content, string Style = StyleSheet.BodyName)
    : Block
{
    const int LinesKeptTogether = 2;

    /// <summary>A paragraph of plain words; fractions written as in "2 1/2" are set as fractions.</summary>
    public Text(string words, string style = StyleSheet.BodyName)
        : this(FractionText.Parse(words), style) { }

    /// <summary>The alignment where it differs from the style's.</summary>
    public Alignment? Alignment { get; init; }

    /// <summary>What the paragraph is, for those who hear it; none when something around it says so.</summary>
    public TagRole? Role { get; init; } = TagRole.Paragraph;

    /// <summary>Where a paragraph that goes on from an earlier page starts, and the tag it belongs to.</summary>
    internal (int FirstAtom, Tag? Tag)? Continued { get; init; }

    public override Fit Fit(LayoutContext context, Room room)
    {
        var (paragraph, tag) = Prepare(context);
        var alignment = Alignment ?? paragraph.Style.Alignment;
        var first = Continued?.FirstAtom ?? 0;
        var lines = paragraph.Lines(first, room.Width);
        var setter = new LineSetter(paragraph, room.Width, alignment);
        var heights = lines.Select(setter.HeightOf).ToArray();
        var total = heights.Sum();
        foreach (var line in lines)
        {
            if (line.Width > room.Width)
            {
                ReportTooWide(context, paragraph, line, room.Width);
            }
        }

        if (total <= room.Height)
        {
            return new Fit.Fits(setter.Set(lines.AsSpan(), first == 0, tag));
        }

        var count = LinesThatFit(heights, room, paragraph.Style.KeepTogether);
        if (count == 0 && !room.Forced)
        {
            var needed =
                paragraph.Style.KeepTogether || lines.Length <= LinesKeptTogether + 1
                    ? total
                    : heights.Take(LinesKeptTogether).Sum();
            return new Fit.Moves($"the text needs {needed} pt and has {room.Height} pt", needed);
        }

        if (count == 0)
        {
            count = 1;
            context.Report(
                LayoutProblemKind.TooTall,
                $"a line of text is {heights[0]} pt tall, {room.Height} pt are left for it",
                heights[0],
                room.Height
            );
        }

        var fragment = setter.Set(lines.AsSpan()[..count], first == 0, tag);
        return count == lines.Length
            ? new Fit.Fits(fragment)
            : new Fit.Splits(fragment, this with { Continued = (lines[count].First, tag) });
    }

    public override WidthRange Widths(LayoutContext context) => Prepare(context).Paragraph.Widths();

    public override Spacing Spacing(LayoutContext context)
    {
        var style = context.Style(Style);
        return new(Continued is null ? style.SpaceBefore : Points.Zero, style.SpaceAfter);
    }

    internal override Points? RhythmicBaseline(LayoutContext context)
    {
        var style = context.Style(Style);
        var rhythm = context.Rhythm;
        return
            rhythm > Points.Zero
            && Continued is null
            && !style.KeepWithNext
            && style.Leading.Thousandths % rhythm.Thousandths == 0
            ? Prepare(context).Paragraph.Baseline
            : null;
    }

    public override bool StaysWithNext(LayoutContext context) => context.Style(Style).KeepWithNext;

    internal (Paragraph Paragraph, Tag? Tag) Prepare(LayoutContext context)
    {
        var tag =
            Continued is { } continued ? continued.Tag
            : Role is { } role ? new Tag(role)
            : null;
        var paragraph = Find(context);
        paragraph.ReportTo(context);
        return (paragraph, tag);
    }

    // The pieces are the same object for a paragraph, its rest and the next pass, so they are measured once; page numbers
    // never are, since they may differ from page to page.
    Paragraph Find(LayoutContext context)
    {
        var style = context.Style(Style);
        var key = ImmutableCollectionsMarshal.AsArray(Content)!;
        if (context.Prepared.TryGetValue(key, out var known) && known.Style == Style)
        {
            return known.Paragraph;
        }

        var paragraph = Paragraph.Prepare(context, style, Content);
        if (!paragraph.HasPageFields && !Content.IsEmpty)
        {
            context.Prepared[key] = (Style, paragraph);
        }

        return paragraph;
    }

    static int LinesThatFit(Points[] heights, Room room, bool keepTogether)
    {
        var (count, used) = (0, Points.Zero);
        while (count < heights.Length && used + heights[count] <= room.Height)
        {
            used += heights[count++];
        }

        var left = heights.Length - count;
        if (room.AtTop)
        {
            // Moving on wins nothing here; only spare the next page a lone line if this one can.
            return left == 1 && count > LinesKeptTogether ? count - 1 : count;
        }

        if (keepTogether || heights.Length <= LinesKeptTogether + 1)
        {
            return 0;
        }

        count = Math.Min(count, heights.Length - LinesKeptTogether);
        return count < LinesKeptTogether ? 0 : count;
    }

    static void ReportTooWide(LayoutContext context, Paragraph paragraph, Line line, Points width)
    {
        var words = string.Concat(
            paragraph.Atoms[line.First..line.End].Select(atom => atom.Shape.Characters)
        );
        context.Report(
            LayoutProblemKind.TooWide,
            $"'{words}' is {line.Width} pt wide, its place {width} pt",
            line.Width,
            width
        );
    }
}
