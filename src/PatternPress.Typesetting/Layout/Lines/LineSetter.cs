using System.Collections.Immutable;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Fonts;
using PatternPress.Typesetting.Inlines;
using PatternPress.Typesetting.Pages;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Typesetting.Layout.Lines;

/// <summary>Turns the lines of a paragraph into a fragment: letters on baselines, links, underlines, small drawings.</summary>
sealed class LineSetter(Paragraph paragraph, Points width, Alignment alignment)
{
    readonly ImmutableArray<FragmentPart>.Builder parts =
        ImmutableArray.CreateBuilder<FragmentPart>();
    Tag? linkTag;
    LinkTarget? link;
    (AtomSpan? Span, string? Language) spanOf;
    PageRect? linkPlace;
    int linkAtom;
    readonly List<FragmentPart> underlines = [];

    /// <summary>The height of a line: the style's leading, more if something in it is taller.</summary>
    public Points HeightOf(Line line)
    {
        var (above, below) = Extent(line);
        return above + below;
    }

    /// <summary>The fragment of some lines.</summary>
    /// <param name="opens">Whether the first of them opens the paragraph and so may be indented.</param>
    public Fragment Set(ReadOnlySpan<Line> lines, bool opens, Tag? tag)
    {
        if (lines.IsEmpty)
        {
            return Fragment.Empty;
        }

        if (tag is not null)
        {
            parts.Add(new FragmentPart.Item(Points.Zero, Points.Zero, new PageItem.TagBegin(tag)));
        }

        var (y, used, lastBaseline, lastEnd) = (Points.Zero, Points.Zero, Points.Zero, Points.Zero);
        Points? firstBaseline = null;
        for (var i = 0; i < lines.Length; i++)
        {
            var indent = opens && i == 0 ? paragraph.Style.Indent : Points.Zero;
            var (above, below) = Extent(lines[i]);
            lastBaseline = y + above;
            firstBaseline ??= lastBaseline;
            lastEnd = SetLine(lines[i], indent, lastBaseline);
            used = Points.Max(used, lastEnd);
            y += above + below;
        }

        CloseLink();
        if (tag is not null)
        {
            parts.Add(new FragmentPart.Item(Points.Zero, Points.Zero, new PageItem.TagEnd(tag)));
        }

        return new Fragment(used, y, parts.DrainToImmutable())
        {
            FirstBaseline = firstBaseline,
            LastBaseline = lastBaseline,
            LastLineEnd = lastEnd,
        };
    }

    (Points Above, Points Below) Extent(Line line)
    {
        var (above, below) = (paragraph.Baseline, paragraph.Style.Leading - paragraph.Baseline);
        for (var i = line.First; i < line.End; i++)
        {
            var atom = paragraph.Atoms[i];
            if (atom.Drawing is { } drawing)
            {
                above = Points.Max(above, drawing.Height - drawing.Drop);
                below = Points.Max(below, drawing.Drop);
            }
            else if (atom.Look.Size > paragraph.Style.Size)
            {
                above = Points.Max(
                    above,
                    paragraph.Baseline.Scale(atom.Look.Size.Value / paragraph.Style.Size.Value)
                        + atom.Look.Raise
                );
            }
        }

        return (above, below);
    }

    // Returns where the line ends.
    Points SetLine(Line line, Points indent, Points baseline)
    {
        var slack = Points.Max(Points.Zero, width - indent - line.Width);
        var x =
            indent
            + alignment switch
            {
                Alignment.Centre => slack / 2,
                Alignment.Right => slack,
                _ => Points.Zero,
            };
        var stretch =
            alignment == Alignment.Justified && !line.Closes
                ? SpaceStretch(line, slack)
                : Points.Zero;
        var segment = new Segment(x);
        for (var i = line.First; i < line.End; i++)
        {
            var atom = paragraph.Atoms[i];
            if (atom.Kind == AtomKind.Drawing)
            {
                Flush(ref segment, baseline);
                CloseSpan();
                SetDrawing(atom, x, baseline);
                x += atom.Width;
                segment = new Segment(x);
                continue;
            }

            if (!segment.Accepts(atom))
            {
                Flush(ref segment, baseline);
                segment = new Segment(x);
            }

            var advance = atom.Kind == AtomKind.Space ? atom.Width + stretch : atom.Width;
            segment.Add(
                atom,
                i,
                atom.Kind == AtomKind.Space ? stretch + paragraph.Style.LetterSpacing : Points.Zero,
                advance
            );
            x += advance;
            if (i == line.End - 1 && line.Hyphenated)
            {
                segment.AddHyphen(atom);
                x += atom.HyphenWidth;
            }
        }

        AddSpaceAtEnd(line, ref segment, x, baseline);
        Flush(ref segment, baseline);
        CloseSpan();
        PlaceLink();
        parts.AddRange(underlines);
        underlines.Clear();
        return x;
    }

    // The space at which a line ends is kept, though it takes no room: who copies or hears the text needs it.
    void AddSpaceAtEnd(Line line, ref Segment segment, Points x, Points baseline)
    {
        if (line.Closes || line.End == line.Next)
        {
            return;
        }

        var space = paragraph.Atoms[line.End];
        if (!segment.Accepts(space))
        {
            Flush(ref segment, baseline);
            segment = new Segment(x);
        }

        segment.Add(space, line.End, Points.Zero, Points.Zero);
    }

    Points SpaceStretch(Line line, Points slack)
    {
        var spaces = 0;
        for (var i = line.First; i < line.End; i++)
        {
            spaces += paragraph.Atoms[i].Kind == AtomKind.Space ? 1 : 0;
        }

        return spaces == 0 ? Points.Zero : slack / spaces;
    }

    void Flush(ref Segment segment, Points baseline)
    {
        if (segment.Look?.Face is not { } face)
        {
            return;
        }

        var look = segment.Look;
        var shape = segment.ToShape();
        // Spaced letters look like words of one letter to programs that copy text.
        var span =
            segment.Span
            ?? (
                paragraph.Style.LetterSpacing > Points.Zero ? new AtomSpan(shape.Characters) : null
            );
        if (spanOf != (span, look.Language))
        {
            CloseSpan();
        }

        if (look.Link != link)
        {
            CloseSpan();
            CloseLink();
            OpenLink(look.Link);
        }

        OpenSpan(span, look.Language);
        parts.Add(
            new FragmentPart.Item(
                Points.Zero,
                Points.Zero,
                new PageItem.Text(
                    segment.X,
                    baseline - look.Raise,
                    face,
                    look.Size,
                    look.Ink,
                    shape
                )
                {
                    Width = segment.Width,
                }
            )
        );
        if (look.Underlined)
        {
            underlines.Add(Underline(segment, look, face, baseline));
        }

        if (linkTag is not null)
        {
            var from = linkPlace?.X ?? segment.X;
            linkPlace = new PageRect(
                from,
                baseline - paragraph.Baseline,
                segment.X + segment.Width - from,
                paragraph.Style.Leading
            );
            linkAtom = segment.FirstAtom;
        }

        segment = new Segment(segment.X + segment.Width);
    }

    static FragmentPart.Item Underline(
        Segment segment,
        AtomLook look,
        FontFace face,
        Points baseline
    )
    {
        var font = face.Font;
        var y = (baseline - TextMeasurer.ToPoints(face, look.Size, font.UnderlinePosition)).Value;
        var thickness = Points.Max(
            new(350),
            TextMeasurer.ToPoints(face, look.Size, font.UnderlineThickness)
        );
        var line = VectorPath.Polyline(
            new(segment.X.Value, y),
            new((segment.X + segment.Width).Value, y)
        );
        return new(
            Points.Zero,
            Points.Zero,
            new PageItem.Path(line, null, new Stroke(thickness, look.Ink))
        );
    }

    void SetDrawing(Atom atom, Points x, Points baseline)
    {
        var drawing = atom.Drawing!;
        if (atom.Look.Link != link)
        {
            CloseLink();
        }

        var top = baseline + drawing.Drop - drawing.Height;
        var place = new PageRect(x, top, atom.Width, drawing.Height);
        PageItem begin =
            drawing.Alt.Length == 0
                ? new PageItem.ArtifactBegin(ArtifactKind.Layout)
                : new PageItem.TagBegin(new Tag(TagRole.Figure) { Alt = drawing.Alt })
                {
                    Place = place,
                };
        PageItem end = begin is PageItem.TagBegin { Tag: var tag }
            ? new PageItem.TagEnd(tag)
            : new PageItem.ArtifactEnd();
        parts.Add(new FragmentPart.Item(Points.Zero, Points.Zero, begin));
        parts.Add(new FragmentPart.Picture(x, top, atom.Width, drawing.Drawing));
        parts.Add(new FragmentPart.Item(Points.Zero, Points.Zero, end));
    }

    void OpenSpan(AtomSpan? span, string? language)
    {
        if (spanOf == (span, language))
        {
            return;
        }

        spanOf = (span, language);
        parts.Add(
            new FragmentPart.Item(
                Points.Zero,
                Points.Zero,
                new PageItem.SpanBegin(span?.ActualText, language)
            )
        );
    }

    void CloseSpan()
    {
        if (spanOf != default)
        {
            parts.Add(new FragmentPart.Item(Points.Zero, Points.Zero, new PageItem.SpanEnd()));
            spanOf = default;
        }
    }

    void OpenLink(LinkTarget? target)
    {
        link = target;
        if (target is not null)
        {
            linkTag = new Tag(TagRole.Link);
            parts.Add(
                new FragmentPart.Item(Points.Zero, Points.Zero, new PageItem.TagBegin(linkTag))
            );
        }
    }

    // What can be clicked of a link on one line.
    void PlaceLink()
    {
        if (linkPlace is { } place)
        {
            parts.Add(
                new FragmentPart.Item(
                    Points.Zero,
                    Points.Zero,
                    new PageItem.Link(place, link!, linkTag!, link!.Words ?? LinkWords(linkAtom))
                )
            );
            linkPlace = null;
        }
    }

    void CloseLink()
    {
        PlaceLink();
        if (linkTag is not null)
        {
            parts.Add(
                new FragmentPart.Item(Points.Zero, Points.Zero, new PageItem.TagEnd(linkTag))
            );
        }

        (linkTag, link) = (null, null);
    }

    // All words of a link, on whatever lines they stand: what the link is called.
    string LinkWords(int atom)
    {
        var (from, to) = (atom, atom);
        var atoms = paragraph.Atoms;
        while (from > 0 && atoms[from - 1].Look.Link == link)
        {
            from--;
        }

        while (to + 1 < atoms.Length && atoms[to + 1].Look.Link == link)
        {
            to++;
        }

        var words = new System.Text.StringBuilder();
        for (var i = from; i <= to; i++)
        {
            var span = atoms[i].Span;
            words.Append(
                span is null ? atoms[i].Shape.Characters
                : i > from && atoms[i - 1].Span == span ? ""
                : span.ActualText
            );
        }

        return words.ToString();
    }

    /// <summary>Letters of one look that stand next to each other.</summary>
    struct Segment(Points x)
    {
        ImmutableArray<Glyph>.Builder? glyphs;
        System.Text.StringBuilder? characters;

        public Points X { get; } = x;

        public Points Width { get; private set; }

        public AtomLook? Look { get; private set; }

        public int FirstAtom { get; private set; }

        public AtomSpan? Span { get; private set; }

        public readonly bool Accepts(Atom atom) =>
            Look is null
            || (Span == atom.Span && (ReferenceEquals(Look, atom.Look) || Look == atom.Look));

        public void Add(Atom atom, int index, Points extra, Points advance)
        {
            FirstAtom = Look is null ? index : FirstAtom;
            Look ??= atom.Look;
            Span = atom.Span;
            Append(atom.Shape, extra);
            Width += advance;
        }

        public void AddHyphen(Atom atom)
        {
            Append(atom.Hyphen!, Points.Zero);
            Width += atom.HyphenWidth;
        }

        public readonly ShapedText ToShape() =>
            glyphs is null ? ShapedText.Empty : new(characters!.ToString(), glyphs.ToImmutable());

        void Append(ShapedText shape, Points extra)
        {
            glyphs ??= ImmutableArray.CreateBuilder<Glyph>(64);
            characters ??= new System.Text.StringBuilder();
            var start = characters.Length;
            var units =
                extra == Points.Zero
                    ? 0
                    : (int)Math.Round(extra.Value * Look!.Face!.Font.UnitsPerEm / Look.Size.Value);
            characters.Append(shape.Characters);
            foreach (var glyph in shape.Glyphs)
            {
                glyphs.Add(
                    glyph with
                    {
                        Advance = glyph.Advance + units,
                        Cluster = glyph.Cluster + start,
                    }
                );
            }
        }
    }
}
