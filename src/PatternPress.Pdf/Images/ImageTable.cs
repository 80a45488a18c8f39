using PatternPress.Pdf.Files;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;
using PdfSharp.Pdf;

namespace PatternPress.Pdf.Images;

/// <summary>
/// The images of a document and the tiles made of them (ISO 32000-1, 8.7.3: coloured tiling patterns), each once. Where a
/// file holds images, it says that all its colours are those of sRGB (8.6.5.6: DefaultRGB), so that flat colours and images
/// of the same cloth stay alike on every printer.
/// </summary>
sealed class ImageTable(PdfOptions options)
{
    readonly List<(ImageFill Fill, double PageHeight)> tiles = [];
    readonly Dictionary<(RasterImage, Transform, double), int> indices = [];

    /// <summary>The number of a tile on pages of a height.</summary>
    public int IndexOf(ImageFill fill, double pageHeight)
    {
        var key = (fill.Image, fill.Tile, pageHeight);
        if (!indices.TryGetValue(key, out var index))
        {
            index = tiles.Count;
            indices.Add(key, index);
            tiles.Add((fill, pageHeight));
        }

        return index;
    }

    /// <summary>Adds what the pages use to their resources.</summary>
    public void WriteTo(PdfObjects objects, List<WrittenPage> pages)
    {
        if (tiles.Count == 0)
        {
            return;
        }

        var profile = objects.AddStream(StandardProfile.Write());
        profile.Elements.SetInteger("/N", 3);
        var images = new Dictionary<RasterImage, PdfDictionary>();
        var patterns = new List<PdfDictionary>();
        foreach (var (fill, height) in tiles)
        {
            if (!images.TryGetValue(fill.Image, out var image))
            {
                image = ImageObject(objects, fill.Image);
                images.Add(fill.Image, image);
            }

            patterns.Add(Pattern(objects, fill, height, image));
        }

        foreach (var page in pages)
        {
            var resources = page.Dictionary.Elements.GetDictionary("/Resources")!;
            var spaces = new PdfDictionary(objects.Document);
            spaces.Elements["/DefaultRGB"] = objects.Array(
                PdfObjects.Name("ICCBased"),
                profile.Reference!
            );
            resources.Elements["/ColorSpace"] = spaces;
            if (page.TilesUsed.Count > 0)
            {
                var names = new PdfDictionary(objects.Document);
                foreach (var index in page.TilesUsed)
                {
                    names.Elements[$"/P{index}"] = patterns[index].Reference;
                }

                resources.Elements["/Pattern"] = names;
            }
        }
    }

    PdfDictionary ImageObject(PdfObjects objects, RasterImage image)
    {
        PdfDictionary dictionary;
        if (options.Greyscale)
        {
            dictionary = objects.AddStream(Grey(image));
            dictionary.Elements.SetName("/ColorSpace", "/DeviceGray");
        }
        else if (image.MediaType == RasterImage.Jpeg)
        {
            dictionary = objects.AddPacked([.. image.Encoded], "/DCTDecode");
            dictionary.Elements.SetName("/ColorSpace", "/DeviceRGB");
        }
        else
        {
            // Differences only pay where they are packed.
            dictionary = objects.AddStream(
                options.Compressed ? Differences(image) : [.. image.Pixels]
            );
            dictionary.Elements.SetName("/ColorSpace", "/DeviceRGB");
            if (options.Compressed)
            {
                var parameters = new PdfDictionary(objects.Document);
                parameters.Elements.SetInteger("/Predictor", 15);
                parameters.Elements.SetInteger("/Colors", 3);
                parameters.Elements.SetInteger("/Columns", image.Width);
                dictionary.Elements["/DecodeParms"] = parameters;
            }
        }

        dictionary.Elements.SetName("/Type", "/XObject");
        dictionary.Elements.SetName("/Subtype", "/Image");
        dictionary.Elements.SetInteger("/Width", image.Width);
        dictionary.Elements.SetInteger("/Height", image.Height);
        dictionary.Elements.SetInteger("/BitsPerComponent", 8);
        return dictionary;
    }

    static PdfDictionary Pattern(
        PdfObjects objects,
        ImageFill fill,
        double pageHeight,
        PdfDictionary image
    )
    {
        var (width, height) = (fill.Width, fill.Height);
        var content = new Content.ContentStream();
        content.Numbers(width, 0, 0, height, 0, 0).Operator("cm");
        content.Operator("/I Do");
        var pattern = objects.AddStream(content.ToBytes());
        var tile = fill.Tile;
        pattern.Elements.SetName("/Type", "/Pattern");
        pattern.Elements.SetInteger("/PatternType", 1);
        pattern.Elements.SetInteger("/PaintType", 1);
        pattern.Elements.SetInteger("/TilingType", 1);
        pattern.Elements["/BBox"] = objects.Numbers(0, 0, width, height);
        pattern.Elements.SetReal("/XStep", Math.Round(width, 3));
        pattern.Elements.SetReal("/YStep", Math.Round(height, 3));
        // Adding zero makes a negative zero a plain one. From the tile's own points, y up, to the page's: its lower left corner is the image's (0, 1).
        pattern.Elements["/Matrix"] = objects.Array(
            new[]
            {
                tile.A / width,
                -tile.B / width,
                -tile.C / height,
                tile.D / height,
                tile.C + tile.E,
                pageHeight - (tile.D + tile.F),
            }.Select(number => (PdfItem)new PdfReal(Math.Round(number, 6) + 0.0))
        );
        var names = new PdfDictionary(objects.Document);
        names.Elements["/I"] = image.Reference;
        var resources = new PdfDictionary(objects.Document);
        resources.Elements["/XObject"] = names;
        pattern.Elements["/Resources"] = resources;
        return pattern;
    }

    static byte[] Grey(RasterImage image)
    {
        var grey = new byte[image.Width * image.Height];
        for (var i = 0; i < grey.Length; i++)
        {
            grey[i] = new Ink(
                image.Pixels[3 * i],
                image.Pixels[(3 * i) + 1],
                image.Pixels[(3 * i) + 2]
            )
                .ToGrey()
                .Red;
        }

        return grey;
    }

    // Each row as its differences from the pixel before (PNG's filter 1), which pack better.
    static byte[] Differences(RasterImage image)
    {
        var row = image.Width * 3;
        var bytes = new byte[(row + 1) * image.Height];
        for (var y = 0; y < image.Height; y++)
        {
            var line = image.Pixels.AsSpan(y * row, row);
            var to = bytes.AsSpan(y * (row + 1), row + 1);
            to[0] = 1;
            for (var x = 0; x < row; x++)
            {
                to[x + 1] = (byte)(line[x] - (x < 3 ? 0 : line[x - 3]));
            }
        }

        return bytes;
    }
}
