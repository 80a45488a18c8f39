namespace PatternPress.Imaging;

/// <summary>
/// What an image may take. The number of pixels is read from the file's head and held to its limit before any of them is
/// unpacked, so that a small file that unpacks to gigabytes is never unpacked.
/// </summary>
/// <param name="Bytes">Of the file.</param>
/// <param name="Pixels">Width times height.</param>
/// <param name="Side">Of width or height.</param>
/// <param name="LeastSide">Below this a photograph of cloth is a smear.</param>
public sealed record ImageLimits(int Bytes, long Pixels, int Side, int LeastSide)
{
    /// <summary>More than a current camera makes, less than would fill a small machine's memory.</summary>
    public static ImageLimits Default { get; } = new(20_000_000, 40_000_000, 20_000, 16);
}
