using System.Collections.Concurrent;
using System.Collections.Immutable;
using HarfBuzzSharp;
using Buffer = HarfBuzzSharp.Buffer;

namespace PatternPress.Typesetting.Fonts;

/// <summary>
/// Measures words with kerning, ligatures and the wanted figures; the same shapes are drawn later, so measure and print
/// agree. Remembers each word of each face. Safe to use from several threads.
/// </summary>
public sealed class TextMeasurer(FontLibrary fonts)
{
    static readonly Feature[] LiningFeatures = [On("lnum")];
    static readonly Feature[] TabularFeatures = [On("lnum"), On("tnum")];

    readonly ConcurrentDictionary<(FontFace, Figures, string), ShapedText> words = new();
    readonly ConcurrentDictionary<FontFace, Lazy<Shaper>> shapers = new();

    public FontLibrary Fonts { get; } = fonts;

    /// <summary>
    /// The glyphs of some characters, left to right, on one line. Figures around a fraction slash (U+2044) become a
    /// fraction where the font has the shapes.
    /// </summary>
    public ShapedText Shape(FontFace face, string characters, Figures figures = Figures.Lining) =>
        characters.Length == 0 ? ShapedText.Empty
        : words.TryGetValue((face, figures, characters), out var known) ? known
        : words.GetOrAdd((face, figures, characters), Shaped(face, characters, figures));

    /// <summary>The width of some characters on one line.</summary>
    public Points Width(
        FontFace face,
        Points size,
        string characters,
        Figures figures = Figures.Lining
    ) => ToPoints(face, size, Shape(face, characters, figures).Advance);

    /// <summary>The height of a face's capitals.</summary>
    public static Points CapHeight(FontFace face, Points size) =>
        ToPoints(face, size, face.Font.CapHeight);

    /// <summary>A distance in units of a face's font as a distance on paper at a size, rounded to the nearest.</summary>
    public static Points ToPoints(FontFace face, Points size, long units)
    {
        long em = face.Font.UnitsPerEm;
        var product = units * size.Thousandths * 2;
        return new((product >= 0 ? product + em : product - em) / (2 * em));
    }

    ShapedText Shaped(FontFace face, string characters, Figures figures) =>
        shapers
            .GetOrAdd(face, one => new Lazy<Shaper>(() => new Shaper(one.Font)))
            .Value.Shape(characters, figures == Figures.Tabular ? TabularFeatures : LiningFeatures);

    static Feature On(string tag) => new(Tag.Parse(tag), 1u, 0u, uint.MaxValue);

    /// <summary>A HarfBuzz font; one word at a time.</summary>
    [System.Diagnostics.CodeAnalysis.SuppressMessage(
        "Design",
        "CA1001",
        Justification = "The native font lives as long as the measurer; its finalizer frees it."
    )]
    sealed class Shaper
    {
        readonly Lock turn = new();
        readonly Font font;

        public Shaper(TrueTypeFont source)
        {
            using var blob = ToBlob(source.Data);
            using var face = new Face(blob, 0) { UnitsPerEm = source.UnitsPerEm };
            font = new Font(face);
            font.SetScale(source.UnitsPerEm, source.UnitsPerEm);
        }

        public ShapedText Shape(string characters, Feature[] features)
        {
            lock (turn)
            {
                using var buffer = new Buffer
                {
                    Direction = Direction.LeftToRight,
                    Script = Script.Latin,
                };
                buffer.AddUtf16(characters);
                font.Shape(buffer, features);
                var infos = buffer.GetGlyphInfoSpan();
                var positions = buffer.GetGlyphPositionSpan();
                var glyphs = ImmutableArray.CreateBuilder<Glyph>(infos.Length);
                for (var i = 0; i < infos.Length; i++)
                {
                    var at = positions[i];
                    glyphs.Add(
                        new(
                            (ushort)infos[i].Codepoint,
                            at.XAdvance,
                            at.XOffset,
                            at.YOffset,
                            (int)infos[i].Cluster
                        )
                    );
                }

                return new(characters, glyphs.MoveToImmutable());
            }
        }

        static Blob ToBlob(byte[] data)
        {
            var pinned = System.Runtime.InteropServices.GCHandle.Alloc(
                data,
                System.Runtime.InteropServices.GCHandleType.Pinned
            );
            return new Blob(
                pinned.AddrOfPinnedObject(),
                data.Length,
                MemoryMode.ReadOnly,
                pinned.Free
            );
        }
    }
}
