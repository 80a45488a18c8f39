using System.Collections.Immutable;
using PatternPress.Imaging;
using PatternPress.Quilting.Pictures;

namespace PatternPress.Cli.Files;

/// <summary>The pictures beside a pattern's file, made ready for print.</summary>
/// <param name="folder">The folder of the pattern's file, as a full path.</param>
internal sealed class PictureFiles(string folder) : IPictureFiles
{
    private static readonly string[] Extensions = [".png", ".jpg", ".jpeg"];

    /// <summary>Offering more names than this helps nobody.</summary>
    private const int MostNames = 100;

    public PictureReading Read(string path, int across)
    {
        try
        {
            var file = new FileInfo(Path.Combine(folder, path));
            if (!file.Exists)
            {
                return Directory.Exists(file.FullName)
                    ? new PictureReading.Unreadable("It is a folder.")
                    : new PictureReading.Missing(Near());
            }
            if (!IsWithin(Resolved(file.FullName), Resolved(folder)))
            {
                return new PictureReading.Outside();
            }
            // Neither file nor folder, as a pipe is: reading one would wait for ever.
            if (file.Length == 0)
            {
                return new PictureReading.Unusable("it is empty", "save it again as PNG or JPEG");
            }
            (StandardImage? image, ImageFault? fault) =
                file.Length > ImageLimits.Default.Bytes
                    ? (null, ImageReader.TooManyBytes(file.Length, ImageLimits.Default))
                    : ImageReader.Read(Bytes(file), across);
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
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return new PictureReading.Unreadable(
                problem is UnauthorizedAccessException
                    ? "You may not read it."
                    : "Reading it failed."
            );
        }
    }

    private static byte[] Bytes(FileInfo file)
    {
        using FileStream stream = file.OpenRead();
        var bytes = new byte[Math.Min(stream.Length, ImageLimits.Default.Bytes + 1L)];
        stream.ReadExactly(bytes);
        return bytes;
    }

    private ImmutableArray<string> Near() =>
        [
            .. Directory
                .EnumerateFiles(
                    folder,
                    "*",
                    new EnumerationOptions { RecurseSubdirectories = true, MaxRecursionDepth = 3 }
                )
                .Where(file =>
                    Extensions.Contains(Path.GetExtension(file), StringComparer.OrdinalIgnoreCase)
                )
                .Select(file => Path.GetRelativePath(folder, file).Replace('\\', '/'))
                .Take(MostNames)
                .Order(StringComparer.Ordinal),
        ];

    private static bool IsWithin(string file, string folder) =>
        file.StartsWith(
            Path.TrimEndingDirectorySeparator(folder) + Path.DirectorySeparatorChar,
            StringComparison.Ordinal
        );

    /// <summary>The path with every link on the way followed.</summary>
    private static string Resolved(string path)
    {
        string full = Path.GetFullPath(path);
        string at = Path.GetPathRoot(full) ?? "";
        foreach (
            string part in full[at.Length..]
                .Split(Path.DirectorySeparatorChar, StringSplitOptions.RemoveEmptyEntries)
        )
        {
            at = Path.Combine(at, part);
            FileSystemInfo info = Directory.Exists(at) ? new DirectoryInfo(at) : new FileInfo(at);
            at = info.ResolveLinkTarget(returnFinalTarget: true)?.FullName ?? at;
        }
        return at;
    }
}
