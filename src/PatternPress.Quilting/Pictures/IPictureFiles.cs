namespace PatternPress.Quilting.Pictures;

/// <summary>The pictures beside a pattern's file. Whatever a file holds, reading it gives an answer.</summary>
public interface IPictureFiles
{
    /// <param name="path">Relative to the pattern's folder and within it, with slashes.</param>
    /// <param name="across">How many pixels are wanted across the picture's width; more are left out.</param>
    PictureReading Read(string path, int across);
}
