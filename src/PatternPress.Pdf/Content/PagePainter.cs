using System.Collections.Immutable;
using PatternPress.Pdf.Fonts;
using PatternPress.Pdf.Images;
using PatternPress.Pdf.Structure;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Fonts;
using PatternPress.Typesetting.Pages;

namespace PatternPress.Pdf.Content;

/// <summary>
/// Writes a page's items as content stream. Everything is marked: as content of the innermost tag, or as an artifact. A
/// text object never crosses a mark, since each is closed before the next begins (ISO 32000-1, 14.6.1).
/// </summary>
sealed class PagePainter(
    WrittenPage page,
    FontTable fonts,
    ImageTable images,
    StructureTree structure,
    Links links,
    PdfOptions options
)
{
    static readonly MarkedContent Unmarked = new(MarkKind.None, default, null);

    readonly ContentStream stream = new();
    readonly Stack<Tag> tags = new();
    readonly Stack<GraphicsState> saved = new();
    GraphicsState state = GraphicsState.Initial;
    ArtifactKind? artifact;
    MarkedContent mark = Unmarked;
    bool inText;

    enum MarkKind
    {
        None,
        Artifact,
        Content,
    }

    readonly record struct MarkedContent(MarkKind Kind, ArtifactKind Artifact, Tag? Tag);

    public byte[] Paint()
    {
        if (options.Tagged)
        {
            structure.Begin(page);
        }

        Paint(page.Page.Items);
        DraftMark();
        EndMark();
        return stream.ToBytes();
    }

    void Paint(ImmutableArray<PageItem> items)
    {
        foreach (var item in items)
        {
            switch (item)
            {
                case PageItem.TagBegin begin:
                    tags.Push(begin.Tag);
                    structure.Open(begin.Tag, begin.Place);
                    break;
                case PageItem.TagEnd:
                    EndMark();
                    tags.Pop();
                    structure.Close();
                    break;
                case PageItem.ArtifactBegin begin:
                    artifact = begin.Kind;
                    break;
                case PageItem.ArtifactEnd:
                    EndMark();
                    artifact = null;
                    break;
                case PageItem.Link link:
                    links.Add(page, structure, link);
                    break;
                case PageItem.SpanBegin span:
                    OpenSpan(span);
                    break;
                case PageItem.SpanEnd:
                    CloseSpan();
                    break;
                case PageItem.Text text:
                    BeginMark(isText: true);
                    Text(text);
                    break;
                case PageItem.Path path:
                    BeginMark(isText: false);
                    EndText();
                    Path(path);
                    break;
                case PageItem.Clip clip:
                    BeginMark(isText: false);
                    EndText();
                    Clip(clip);
                    break;
            }
        }
    }

    // Opens the mark that the next item belongs to, unless it is open already.
    void BeginMark(bool isText)
    {
        if (saved.Count > 0 || !options.Tagged)
        {
            // Inside a clip everything belongs to what the clip belongs to.
            return;
        }

        var wanted =
            artifact is { } kind ? new MarkedContent(MarkKind.Artifact, kind, null)
            : tags.TryPeek(out var tag) && Roles.HoldsContent(tag.Role, isText)
                ? new MarkedContent(MarkKind.Content, default, tag)
            : new MarkedContent(MarkKind.Artifact, ArtifactKind.Layout, null);
        if (wanted == mark)
        {
            return;
        }

        EndMark();
        mark = wanted;
        if (wanted.Tag is null)
        {
            stream.Operator(ArtifactOperator(wanted.Artifact));
        }
        else
        {
            stream
                .Raw("/" + Roles.NameOf(wanted.Tag.Role))
                .Raw("<</MCID ")
                .Number(structure.NextMark())
                .Operator(">>BDC");
        }
    }

    void EndMark()
    {
        EndText();
        if (mark.Kind != MarkKind.None)
        {
            stream.Operator("EMC");
            mark = Unmarked;
        }
    }

    static string ArtifactOperator(ArtifactKind kind) =>
        kind switch
        {
            ArtifactKind.Header => "/Artifact<</Type/Pagination/Subtype/Header>>BDC",
            ArtifactKind.Footer => "/Artifact<</Type/Pagination/Subtype/Footer>>BDC",
            ArtifactKind.Background => "/Artifact<</Type/Background>>BDC",
            ArtifactKind.PrinterMarks => "/Artifact<</Type/Page>>BDC",
            _ => "/Artifact<</Type/Layout>>BDC",
        };

    void EndText()
    {
        if (inText)
        {
            stream.Operator("ET");
            inText = false;
        }
    }

    void Text(PageItem.Text text)
    {
        if (text.Shape.Glyphs.IsEmpty)
        {
            return;
        }

        if (!inText)
        {
            stream.Operator("BT");
            inText = true;
        }

        SetFill(text.Ink);
        var font = fonts.IndexOf(text.Face);
        if (state.Font != font || state.FontSize != text.Size)
        {
            stream.Raw($"/F{font} ").Number(text.Size.Value).Operator("Tf");
            state = state with { Font = font, FontSize = text.Size };
            page.FontsUsed.Add(font);
        }

        // Degrees turn clockwise as seen; in PDF, where y points up, that is a negative angle.
        var turn = Transform.Turn(-text.Degrees);
        stream
            .Numbers(turn.A, turn.B, turn.C, turn.D, text.X.Value, page.Flip(text.Baseline.Value))
            .Operator("Tm");
        Glyphs(font, text.Shape);
    }

    void OpenSpan(PageItem.SpanBegin span)
    {
        BeginMark(isText: true);
        EndText();
        stream.Raw("/Span<<");
        if (span.ActualText is not null)
        {
            stream.Raw("/ActualText").Words(span.ActualText);
        }

        if (span.Language is not null)
        {
            stream.Raw("/Lang").Words(span.Language);
        }

        stream.Operator(">>BDC");
    }

    void CloseSpan()
    {
        EndText();
        stream.Operator("EMC");
    }

    // One string where every glyph follows at its own width, broken by corrections (in thousandths of the size) where
    // kerning or a stretched space says otherwise. What rounding leaves over is carried on, so that errors do not add up.
    void Glyphs(int font, ShapedText shape)
    {
        var written = fonts[font];
        var em = written.Source.UnitsPerEm;
        var (open, carried, started) = (false, 0.0, false);
        var rise = 0;
        foreach (var glyph in shape.Glyphs)
        {
            if (glyph.YOffset != rise)
            {
                Close();
                rise = glyph.YOffset;
                stream.Number(rise * state.FontSize.Value / em).Operator("Ts");
            }

            Shift(-glyph.XOffset * 1000.0 / em);
            if (!started)
            {
                stream.Raw("[");
                started = true;
            }

            if (!open)
            {
                stream.Raw("<");
                open = true;
            }

            stream.Hex(written.NewIdOf(glyph.Id));
            var advance = (glyph.Advance - glyph.XOffset) * 1000.0 / em;
            Shift(written.WidthOf(glyph.Id) - advance);
        }

        Close();
        if (rise != 0)
        {
            stream.Operator("0 Ts");
        }

        void Shift(double back)
        {
            carried += back;
            var whole = Math.Round(carried, MidpointRounding.AwayFromZero);
            if (whole == 0)
            {
                return;
            }

            if (!started)
            {
                stream.Raw("[");
                started = true;
            }

            if (open)
            {
                stream.Raw(">");
                open = false;
            }

            stream.Number(whole);
            carried -= whole;
        }

        void Close()
        {
            if (started)
            {
                stream.Operator(open ? ">]TJ" : "]TJ");
            }

            (open, started) = (false, false);
        }
    }

    void Path(PageItem.Path path)
    {
        var filled = path.Fill is not null || path.Image is not null;
        if (path.Outline.IsEmpty || (!filled && path.Stroke is null))
        {
            return;
        }

        if (path.Image is { } image)
        {
            SetFill(image);
        }
        else if (path.Fill is { } fill)
        {
            SetFill(fill);
        }

        if (path.Stroke is { } stroke)
        {
            SetStroke(stroke);
        }

        Outline(path.Outline);
        stream.Operator(
            (filled, path.Stroke, path.EvenOdd) switch
            {
                (true, not null, false) => "B",
                (true, not null, true) => "B*",
                (true, null, false) => "f",
                (true, null, true) => "f*",
                _ => "S",
            }
        );
    }

    void Clip(PageItem.Clip clip)
    {
        if (clip.Outline.IsEmpty)
        {
            return;
        }

        stream.Operator("q");
        saved.Push(state);
        Outline(clip.Outline);
        stream.Operator(clip.EvenOdd ? "W* n" : "W n");
        Paint(clip.Items);
        EndText();
        state = saved.Pop();
        stream.Operator("Q");
    }

    void Outline(VectorPath path)
    {
        var at = 0;
        foreach (var verb in path.Verbs)
        {
            for (var i = 0; i < VectorPath.PointsOf(verb); i++, at++)
            {
                stream.Place(path.Points[at].X).Place(page.Flip(path.Points[at].Y));
            }

            stream.Operator(
                verb switch
                {
                    PathVerb.Move => "m",
                    PathVerb.Line => "l",
                    PathVerb.Curve => "c",
                    _ => "h",
                }
            );
        }
    }

    void SetFill(Ink ink)
    {
        ink = options.Greyscale ? ink.ToGrey() : ink;
        if (ink != state.Fill)
        {
            stream.Colour(ink, "g", "rg");
            state = state with { Fill = ink };
        }
    }

    void SetFill(ImageFill image)
    {
        var index = images.IndexOf(image, page.Page.Paper.Height.Value);
        page.TilesUsed.Add(index);
        stream.Operator($"/Pattern cs /P{index} scn");
        state = state with { Fill = null };
    }

    void SetStroke(Stroke stroke)
    {
        var ink = options.Greyscale ? stroke.Ink.ToGrey() : stroke.Ink;
        if (ink != state.Pen)
        {
            stream.Colour(ink, "G", "RG");
        }

        var before = state.Stroke;
        if (stroke.Width != before.Width)
        {
            stream.Number(stroke.Width.Value).Operator("w");
        }

        if (stroke.Cap != before.Cap)
        {
            stream.Number((int)stroke.Cap).Operator("J");
        }

        if (stroke.Join != before.Join)
        {
            stream.Number((int)stroke.Join).Operator("j");
        }

        if (!stroke.Dashes.AsSpan().SequenceEqual(before.Dashes.AsSpan()))
        {
            stream.Raw("[");
            foreach (var dash in stroke.Dashes)
            {
                stream.Number(dash.Value);
            }

            stream.Operator("]0 d");
        }

        state = state with { Pen = ink, Stroke = stroke };
    }

    // The word across the page, drawn as shapes: it is seen, but neither read aloud nor found by a search.
    void DraftMark()
    {
        if (string.IsNullOrWhiteSpace(options.DraftMark))
        {
            return;
        }

        EndMark();
        artifact = ArtifactKind.Background;
        BeginMark(isText: false);
        Path(
            new PageItem.Path(
                Content.DraftMark.Across(page.Page.Paper, options.DraftMark, fonts),
                null,
                Content.DraftMark.Pen
            )
        );
        EndMark();
        artifact = null;
    }
}
