namespace PatternPress.Quilting.Pictures;

/// <summary>Looks at no picture: for work with numbers alone.</summary>
public sealed class NoPictureFiles : IPictureFiles
{
    public static NoPictureFiles Instance { get; } = new();

    private NoPictureFiles() { }

    public PictureReading Read(string path, int across) => new PictureReading.NotLookedAt();
}
