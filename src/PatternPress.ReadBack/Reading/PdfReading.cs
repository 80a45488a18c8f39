using System.Collections.Immutable;
using System.Text;
using PatternPress.Typesetting;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Tokens;

namespace PatternPress.ReadBack.Reading;

/// <summary>Reads a file's pages: their words, where these stand, and whether their fonts are there.</summary>
internal static class PdfReading
{
    public static ImmutableArray<ReadPage> Read(byte[] file)
    {
        using PdfDocument document = PdfDocument.Open(file);
        var pages = ImmutableArray.CreateBuilder<ReadPage>(document.NumberOfPages);
        foreach (Page page in document.GetPages())
        {
            pages.Add(Read(document, page));
        }
        return pages.MoveToImmutable();
    }

    private static ReadPage Read(PdfDocument document, Page page)
    {
        var pieces = ImmutableArray.CreateBuilder<ReadPiece>();
        int marked = 0;
        foreach (
            MarkedContentElement content in page.GetMarkedContents()
                .OrderBy(content => content.Index)
        )
        {
            var piece = new PieceReader(page.Height);
            string words = piece.Read(content);
            marked += piece.Letters;
            if (piece.Letters > 0)
            {
                pieces.Add(
                    new ReadPiece(content.IsArtifact, content.Tag ?? "", words, piece.Boxes)
                );
            }
        }
        return new ReadPage(
            page.Number,
            Points.Of(page.Width),
            Points.Of(page.Height),
            pieces.ToImmutable(),
            page.Letters.Count - marked,
            FontsOutside(document, page)
        );
    }

    // A font is in the file when its descriptor, or that of the font it descends from, holds the font's own file.
    private static ImmutableArray<string> FontsOutside(PdfDocument document, Page page)
    {
        if (
            !Find(page.Dictionary, "Resources", out DictionaryToken? resources)
            || !Find(resources, "Font", out DictionaryToken? fonts)
        )
        {
            return [];
        }
        var outside = ImmutableArray.CreateBuilder<string>();
        foreach ((string name, IToken token) in fonts.Data)
        {
            if (Resolve(token) is not DictionaryToken font || !HasFile(font))
            {
                outside.Add(name);
            }
        }
        return outside.ToImmutable();

        bool HasFile(DictionaryToken font)
        {
            if (
                font.TryGet(NameToken.Create("DescendantFonts"), out IToken? descendants)
                && Resolve(descendants) is ArrayToken { Data: [var first, ..] }
            )
            {
                return Resolve(first) is DictionaryToken descendant && HasFile(descendant);
            }
            return Find(font, "FontDescriptor", out DictionaryToken? descriptor)
                && new[] { "FontFile", "FontFile2", "FontFile3" }.Any(key =>
                    descriptor.TryGet(NameToken.Create(key), out IToken? file)
                    && Resolve(file) is StreamToken { Data.Length: > 0 }
                );
        }

        bool Find(
            DictionaryToken at,
            string key,
            [System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out DictionaryToken? found
        )
        {
            found = at.TryGet(NameToken.Create(key), out IToken? token)
                ? Resolve(token) as DictionaryToken
                : null;
            return found is not null;
        }

        IToken Resolve(IToken token) =>
            token is IndirectReferenceToken reference
                ? document.Structure.GetObject(reference.Data).Data
                : token;
    }

    /// <summary>Reads one run of marked content: words, and boxes around the ink of each.</summary>
    private sealed class PieceReader(double pageHeight)
    {
        // Letters further apart than this share of their size are of different words.
        private const double WordGap = 0.15;

        private readonly ImmutableArray<ReadWord>.Builder _boxes =
            ImmutableArray.CreateBuilder<ReadWord>();
        private readonly StringBuilder _word = new();
        private (double Left, double Bottom, double Right, double Top)? _ink;
        private double _baseline;
        private Letter? _last;

        public int Letters { get; private set; }

        public ImmutableArray<ReadWord> Boxes
        {
            get
            {
                EndWord();
                return _boxes.ToImmutable();
            }
        }

        public string Read(MarkedContentElement content)
        {
            // Letters come in the order of the stream; a span stands where its first letter does.
            var spans = content
                .Children.Where(child => child.Letters.Count > 0)
                .ToDictionary(child => child.Letters[0].TextSequence);
            HashSet<int> inSpans =
            [
                .. content
                    .Children.SelectMany(child => child.Letters)
                    .Select(letter => letter.TextSequence),
            ];
            var text = new StringBuilder();
            foreach (
                Letter letter in spans.Count == 0
                    ? content.Letters.AsEnumerable()
                    : content
                        .Letters.Concat(content.Children.SelectMany(child => child.Letters))
                        .DistinctBy(letter => (letter.TextSequence, letter.StartBaseLine))
                        .OrderBy(letter => letter.TextSequence)
            )
            {
                if (spans.Remove(letter.TextSequence, out MarkedContentElement? span))
                {
                    text.Append(ReadSpan(span));
                }
                else if (!inSpans.Contains(letter.TextSequence))
                {
                    text.Append(letter.Value);
                    Add(letter, keep: false);
                }
            }
            return text.ToString();
        }

        // Numerator, bar and denominator stand on lines of their own and are one word all the same.
        private string ReadSpan(MarkedContentElement span)
        {
            bool whole = span.ActualText is { Length: > 0 };
            int start = -1;
            foreach (Letter letter in span.Letters)
            {
                Add(letter, keep: whole && start >= 0);
                start = start < 0 ? Math.Max(0, _word.Length - letter.Value.Length) : start;
            }
            if (whole && start >= 0)
            {
                _word.Length = Math.Min(_word.Length, start);
                _word.Append(span.ActualText);
            }
            return span.ActualText is { Length: > 0 } actual
                ? actual
                : string.Concat(span.Letters.Select(letter => letter.Value));
        }

        private void Add(Letter letter, bool keep)
        {
            Letters++;
            PdfRectangle ink = letter.BoundingBox;
            if (string.IsNullOrWhiteSpace(letter.Value))
            {
                if (!keep)
                {
                    EndWord();
                }
                return;
            }
            if (!keep && _last is { } last && Apart(last, letter))
            {
                EndWord();
            }
            if (_ink is null)
            {
                _baseline = letter.StartBaseLine.Y;
            }
            double left = Math.Min(
                    Math.Min(ink.TopLeft.X, ink.TopRight.X),
                    Math.Min(ink.BottomLeft.X, ink.BottomRight.X)
                ),
                right = Math.Max(
                    Math.Max(ink.TopLeft.X, ink.TopRight.X),
                    Math.Max(ink.BottomLeft.X, ink.BottomRight.X)
                ),
                bottom = Math.Min(
                    Math.Min(ink.TopLeft.Y, ink.TopRight.Y),
                    Math.Min(ink.BottomLeft.Y, ink.BottomRight.Y)
                ),
                top = Math.Max(
                    Math.Max(ink.TopLeft.Y, ink.TopRight.Y),
                    Math.Max(ink.BottomLeft.Y, ink.BottomRight.Y)
                );
            _ink = _ink is var (l, b, r, t)
                ? (Math.Min(l, left), Math.Min(b, bottom), Math.Max(r, right), Math.Max(t, top))
                : (left, bottom, right, top);
            _word.Append(letter.Value);
            _last = letter;
        }

        private static bool Apart(Letter a, Letter b)
        {
            double far = Math.Max(1, Math.Abs(a.PointSize) * WordGap);
            return Math.Abs(a.EndBaseLine.X - b.StartBaseLine.X) > far
                || Math.Abs(a.EndBaseLine.Y - b.StartBaseLine.Y) > far;
        }

        private void EndWord()
        {
            if (_ink is var (left, bottom, right, top))
            {
                _boxes.Add(
                    new ReadWord(
                        _word.ToString(),
                        new PageRect(
                            Points.Of(left),
                            Points.Of(pageHeight - top),
                            Points.Of(right - left),
                            Points.Of(top - bottom)
                        ),
                        Points.Of(pageHeight - _baseline)
                    )
                );
            }
            _word.Clear();
            (_ink, _last) = (null, null);
        }
    }
}
