using PatternPress.Imaging;
using PatternPress.Quilting.Pictures;

namespace PatternPress.Tests.Imaging;

/// <summary>A pattern's folder with a few pictures in it, held in memory.</summary>
internal sealed class SamplePictures : IPictureFiles
{
    public static SamplePictures Instance { get; } = new();

    private static readonly Dictionary<string, Lazy<byte[]>> Files = new()
    {
        ["swatches/ink.png"] = new(() => SampleImages.Png(240, 240, SampleImages.Rings)),
        ["swatches/amber.jpg"] = new(() => SampleImages.Jpeg(400, 200, Ladders)),
        ["swatches/cut-off.png"] = new(() =>
        {
            byte[] whole = SampleImages.Png(240, 240, SampleImages.Rings);
            return whole[..(whole.Length / 2)];
        }),
        ["swatches/poster.png"] = new(() =>
            SampleImages.Png(20, 20, SampleImages.Rings, claimed: (30_000, 30_000))
        ),
    };

    /// <summary>A print with an up: an arrow's shaft and head on amber.</summary>
    private static (int, int, int) Ladders(int x, int y)
    {
        int across = Math.Abs((x % 50) - 25),
            down = y % 50;
        return (across < 3 && down > 10) || (down is > 5 and < 20 && across < (down - 5) / 2)
            ? (110, 50, 10)
            : (242, 167, 27);
    }

    public PictureReading Read(string path, int across)
    {
        if (!Files.TryGetValue(path, out Lazy<byte[]>? file))
        {
            return new PictureReading.Missing([.. Files.Keys]);
        }
        (StandardImage? image, ImageFault? fault) = ImageReader.Read(file.Value, across);
        return image is null
            ? new PictureReading.Unusable(fault!.What, fault.Remedy)
            : new PictureReading.Found(
                new FabricPicture(
                    image.Width,
                    image.Height,
                    image.Pixels,
                    image.MediaType,
                    image.Encoded
                )
                {
                    Original = image.Original,
                }
            );
    }
}
