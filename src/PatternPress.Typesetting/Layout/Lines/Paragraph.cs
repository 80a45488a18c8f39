using System.Collections.Immutable;
using System.Text;
using PatternPress.Typesetting.Fonts;
using PatternPress.Typesetting.Inlines;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Typesetting.Layout.Lines;

/// <summary>A paragraph's pieces measured and taken apart at the places where lines may end.</summary>
sealed class Paragraph
{
    const char NoBreakSpace = '\u00A0';
    const char SoftHyphen = '\u00AD';
    const char ZeroWidthSpace = '\u200B';

    readonly ImmutableArray<Atom>.Builder atoms = ImmutableArray.CreateBuilder<Atom>();
    readonly LayoutContext context;
    readonly Dictionary<(int Start, Points Width), ImmutableArray<Line>> broken = [];
    readonly List<(LayoutProblemKind Kind, string Message)> problems = [];
    WidthRange? widths;
    readonly TextStyle style;
    readonly Figures figures;

    Paragraph(LayoutContext context, TextStyle style)
    {
        (this.context, this.style) = (context, style);
        figures = style.TabularFigures ? Figures.Tabular : Figures.Lining;
        var face = context.Measurer.Fonts.Find(style.Family, style.Bold, style.Italic);
        Baseline = BaselineWithin(face, style);
        Atoms = [];
    }

    public ImmutableArray<Atom> Atoms { get; private set; }

    public TextStyle Style => style;

    /// <summary>From the top of a line to its baseline: capitals stand in the middle of the line.</summary>
    public Points Baseline { get; }

    /// <summary>Whether it shows page numbers, which change from pass to pass and page to page.</summary>
    public bool HasPageFields { get; private set; }

    public static Paragraph Prepare(
        LayoutContext context,
        TextStyle style,
        ImmutableArray<Inline> content
    )
    {
        var paragraph = new Paragraph(context, style);
        foreach (var inline in content)
        {
            paragraph.Add(inline);
        }

        paragraph.Atoms = paragraph.atoms.DrainToImmutable();
        return paragraph;
    }

    public static Points BaselineWithin(FontFace face, TextStyle style) =>
        (style.Leading + TextMeasurer.CapHeight(face, style.Size)) / 2;

    /// <summary>Notes what was wrong with the paragraph's pieces, at whatever block shows them.</summary>
    public void ReportTo(LayoutContext shown)
    {
        foreach (var (kind, message) in problems)
        {
            shown.Report(kind, message);
        }
    }

    /// <summary>The lines from an atom on, broken for a width.</summary>
    public ImmutableArray<Line> Lines(int start, Points width)
    {
        if (!broken.TryGetValue((start, width), out var lines))
        {
            var first = start == 0 ? width - style.Indent : width;
            lines = LineBreaker.Break(Atoms, start, width, first, style.Balanced);
            broken[(start, width)] = lines;
        }

        return lines;
    }

    /// <summary>The widest part that cannot be broken, and the longest line when nothing is broken.</summary>
    public WidthRange Widths() => widths ??= MeasureWidths();

    WidthRange MeasureWidths()
    {
        var (least, natural, part, line) = (Points.Zero, Points.Zero, Points.Zero, style.Indent);
        var space = Points.Zero;
        foreach (var atom in Atoms)
        {
            switch (atom.Kind)
            {
                case AtomKind.LineEnd:
                    (part, line, space) = (Points.Zero, Points.Zero, Points.Zero);
                    break;
                case AtomKind.Space:
                    part = Points.Zero;
                    space += atom.Width;
                    break;
                default:
                    part += atom.Width;
                    line += space + atom.Width;
                    space = Points.Zero;
                    least = Points.Max(least, part + atom.HyphenWidth);
                    natural = Points.Max(natural, line);
                    part = atom.BreakAfter ? Points.Zero : part;
                    break;
            }
        }

        return new(least, Points.Max(least, natural));
    }

    /// <summary>Whether its first letters are a number.</summary>
    public bool BeginsWithNumber => Atoms.Length > 0 && Atoms[0].NumberEnd is not null;

    /// <summary>The width before the end of the first whole number, where columns of numbers line up.</summary>
    public Points WidthBeforeNumberEnd()
    {
        var width = Points.Zero;
        foreach (var atom in Atoms)
        {
            if (atom.NumberEnd is { } characters)
            {
                return width
                    + TextMeasurer.ToPoints(
                        atom.Look.Face!,
                        atom.Look.Size,
                        atom.Shape.AdvanceOfFirst(characters)
                    );
            }

            width += atom.Width;
        }

        return width;
    }

    void Add(Inline inline)
    {
        var look = Look(inline);
        switch (inline)
        {
            case Run run:
                AddWords(style.Capitals ? run.Text.ToUpperInvariant() : run.Text, look);
                break;
            case Fraction fraction:
                AddFraction(fraction, look);
                break;
            case PageField field:
                HasPageFields = true;
                AddLetters(PageNumber(field), look);
                break;
            case InlineDrawing drawing:
                var width = drawing.Drawing.WidthWithin(Points.Unlimited, drawing.Height);
                atoms.Add(new Atom(AtomKind.Drawing, width) { Drawing = drawing, Look = look });
                break;
            case LineBreak:
                atoms.Add(new Atom(AtomKind.LineEnd, Points.Zero));
                break;
            default:
                throw new ArgumentException($"A paragraph cannot hold {inline.GetType().Name}.");
        }
    }

    AtomLook Look(Inline inline)
    {
        var own = inline.Style;
        var face = context.Measurer.Fonts.Find(
            own.Family ?? style.Family,
            own.Bold ?? style.Bold,
            own.Italic ?? style.Italic
        );
        if (inline.Link is LinkTarget.ToAnchor { Name: var name } && context.PageOf(name) is null)
        {
            problems.Add(
                (
                    LayoutProblemKind.UnknownAnchor,
                    $"a link leads to '{name}', which is nowhere in the document"
                )
            );
        }

        return new AtomLook(
            face,
            style.Size * own.Percent / 100,
            own.Ink ?? (inline.Link is null ? null : style.LinkInk) ?? style.Ink,
            style.Size * own.RaisePercent / 100,
            own.Underlined,
            own.Language,
            inline.Link
        );
    }

    void AddWords(string text, AtomLook look)
    {
        var start = 0;
        for (var i = 0; i <= text.Length; i++)
        {
            var letter = i < text.Length ? text[i] : ' ';
            var ends =
                i == text.Length
                || letter is ' ' or '\t' or '\n' or '\r' or ZeroWidthSpace or SoftHyphen;
            if (!ends && !BreaksAfter(text, i))
            {
                continue;
            }

            var stop = ends ? i : i + 1;
            if (stop > start)
            {
                var last = i < text.Length && letter is not (' ' or '\t' or '\n' or '\r');
                AddLetters(
                    text[start..stop],
                    look,
                    breakAfter: last,
                    hyphen: ends && last && letter == SoftHyphen
                );
            }

            if (i < text.Length && letter is ' ' or '\t' or '\n' or '\r' && i < text.Length)
            {
                AddSpace(look);
            }

            start = i + 1;
        }
    }

    // After a hyphen between letters and after dashes, but not in "1-2" or before a closing mark.
    static bool BreaksAfter(string text, int at) =>
        text[at] is '-' or '\u2013' or '\u2014'
        && at > 0
        && at + 1 < text.Length
        && char.IsLetterOrDigit(text[at + 1])
        && (text[at] == '\u2014' || !char.IsDigit(text[at + 1]) || !char.IsDigit(text[at - 1]));

    void AddSpace(AtomLook look)
    {
        // Spaces that follow one another count once.
        if (atoms.Count > 0 && atoms[^1].Kind == AtomKind.Space)
        {
            return;
        }

        var shape = context.Measurer.Shape(look.Face!, " ", figures);
        atoms.Add(
            new Atom(
                AtomKind.Space,
                TextMeasurer.ToPoints(look.Face!, look.Size, shape.Advance) + style.LetterSpacing
            )
            {
                Look = look,
                Shape = shape,
            }
        );
    }

    void AddLetters(
        string letters,
        AtomLook look,
        bool breakAfter = false,
        bool hyphen = false,
        int? numberEnd = null
    )
    {
        var shape = Shape(letters.Replace(NoBreakSpace, ' '), look);
        CheckGlyphs(shape, look);
        var dash = hyphen ? Shape("-", look) : null;
        atoms.Add(
            new Atom(AtomKind.Letters, TextMeasurer.ToPoints(look.Face!, look.Size, shape.Advance))
            {
                Shape = shape,
                Look = look,
                BreakAfter = breakAfter,
                Hyphen = dash,
                HyphenWidth = dash is null
                    ? Points.Zero
                    : TextMeasurer.ToPoints(look.Face!, look.Size, dash.Advance),
                NumberEnd = numberEnd ?? EndOfWholeNumber(letters),
            }
        );
    }

    ShapedText Shape(string letters, AtomLook look)
    {
        var shape = context.Measurer.Shape(look.Face!, letters, figures);
        return style.LetterSpacing == Points.Zero ? shape : Spaced(shape, look);
    }

    ShapedText Spaced(ShapedText shape, AtomLook look)
    {
        var extra = (int)(
            style.LetterSpacing.Thousandths * look.Face!.Font.UnitsPerEm / look.Size.Thousandths
        );
        return new(
            shape.Characters,
            [.. shape.Glyphs.Select(glyph => glyph with { Advance = glyph.Advance + extra })]
        );
    }

    static int? EndOfWholeNumber(string letters)
    {
        var end = 0;
        while (
            end < letters.Length
            && (
                char.IsAsciiDigit(letters[end])
                || (letters[end] == ',' && end > 0 && end + 1 < letters.Length)
            )
        )
        {
            end++;
        }

        return end == 0 ? null : end;
    }

    void AddFraction(Fraction fraction, AtomLook look)
    {
        var whole = fraction.Whole.Length;
        var (above, below) = ($"{fraction.Numerator}", $"{fraction.Denominator}");
        var single = FractionText.SingleCharacter(fraction.Numerator, fraction.Denominator);
        var own = FractionForm.HasLegible(context.Measurer, look.Face!);
        if (own && single is { } character && look.Face!.Font.GlyphOf(character) != 0)
        {
            AddLetters(fraction.Whole + character, look, numberEnd: whole);
            return;
        }

        var span = new AtomSpan(fraction.Plain);
        // A space keeps 12 5/16 from being copied as 125/16; a narrow one looks right.
        var front =
            whole > 0
                ? Joined(
                    Shape(fraction.Whole, look),
                    FractionForm.Gap(context.Measurer, look.Face!)
                )
                : ShapedText.Empty;
        if (own)
        {
            var part = context.Measurer.Shape(
                look.Face!,
                above + FractionForm.Slash + below,
                figures
            );
            AddShape(Joined(front, part), look, span, whole);
            return;
        }

        if (whole > 0)
        {
            AddShape(front, look, span, whole);
        }

        var small = look with { Size = FractionForm.NumeralSize(look.Size) };
        var rise =
            TextMeasurer.CapHeight(look.Face!, look.Size)
            - TextMeasurer.CapHeight(look.Face!, small.Size);
        var raised = small with { Raise = look.Raise + rise };
        AddShape(Shape(above, raised), raised, span, whole == 0 ? 0 : null);
        AddShape(Shape($"{FractionForm.Slash}", look), look, span, null);
        AddShape(Shape(below, small), small, span, null);
    }

    void AddShape(ShapedText shape, AtomLook look, AtomSpan span, int? numberEnd) =>
        atoms.Add(
            new Atom(AtomKind.Letters, TextMeasurer.ToPoints(look.Face!, look.Size, shape.Advance))
            {
                Shape = shape,
                Look = look,
                Span = span,
                NumberEnd = numberEnd,
            }
        );

    internal static ShapedText Joined(ShapedText first, ShapedText second) =>
        first.Glyphs.IsEmpty ? second
        : second.Glyphs.IsEmpty ? first
        : new(
            first.Characters + second.Characters,
            [
                .. first.Glyphs,
                .. second.Glyphs.Select(glyph =>
                    glyph with
                    {
                        Cluster = glyph.Cluster + first.Characters.Length,
                    }
                ),
            ]
        );

    void CheckGlyphs(ShapedText shape, AtomLook look)
    {
        foreach (var glyph in shape.Glyphs)
        {
            if (glyph.Id == 0)
            {
                Rune.TryGetRuneAt(shape.Characters, glyph.Cluster, out var rune);
                problems.Add(
                    (
                        LayoutProblemKind.MissingGlyph,
                        $"the font {look.Face} has no shape for '{rune}' (U+{rune.Value:X4})"
                    )
                );
            }
        }
    }

    string PageNumber(PageField field)
    {
        // Two digits are reserved until the number is known.
        const string unknown = "00";
        if (field.Kind == PageFieldKind.PageOfAnchor && context.PageOf(field.Anchor ?? "") is null)
        {
            problems.Add(
                (
                    LayoutProblemKind.UnknownAnchor,
                    $"a page number is asked for '{field.Anchor}', which is nowhere in the document"
                )
            );
            return "?";
        }

        var number = field.Kind switch
        {
            PageFieldKind.Page => context.PageNumber,
            PageFieldKind.PageCount => context.PageCount ?? 0,
            _ => context.PageOf(field.Anchor ?? "") ?? 0,
        };
        return number == 0 ? unknown : $"{number}";
    }
}
