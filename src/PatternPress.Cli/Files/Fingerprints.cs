using System.Collections.Immutable;
using System.Security.Cryptography;
using PatternPress.Quilting.Compiling;

namespace PatternPress.Cli.Files;

/// <summary>SHA-256 of all that decides what is printed: the program, the pattern's file, its pictures and the house's file.</summary>
internal static class Fingerprints
{
    public static ImmutableArray<(string Name, string Digest)> Of(
        string directory,
        Compilation compilation,
        string templates
    )
    {
        string pattern = compilation.Tree.Source.File;
        string house = Path.Combine(templates, "house.yaml");
        string folder = Path.GetDirectoryName(Path.Combine(directory, pattern)) ?? directory;
        return
        [
            ($"patternpress {ProgramVersion.Text}", OfFiles(Program())),
            (pattern, OfFiles([Path.Combine(directory, pattern)])),
            .. PicturesOf(compilation)
                .Select(picture => (picture, OfFiles([Path.Combine(folder, picture)]))),
            (Path.GetFileName(house), OfFiles([house])),
            (
                $"{Path.GetFileName(templates)}, all files",
                OfFiles(Directory.EnumerateFiles(templates, "*", SearchOption.AllDirectories))
            ),
        ];
    }

    private static IEnumerable<string> PicturesOf(Compilation compilation) =>
        (compilation.Pattern?.Fabrics ?? [])
            .Select(fabric => fabric.Cloth?.File)
            .OfType<string>()
            .Distinct()
            .Order(StringComparer.Ordinal);

    // Our own assemblies; in a single file there is but that.
    private static IEnumerable<string> Program()
    {
        string[] own =
        [
            .. Directory
                .EnumerateFiles(AppContext.BaseDirectory, "*.dll")
                .Where(file =>
                    Path.GetFileName(file)
                        .StartsWith("patternpress", StringComparison.OrdinalIgnoreCase)
                ),
        ];
        return own.Length > 0 ? own
            : Environment.ProcessPath is { } path ? [path]
            : [];
    }

    private static string OfFiles(IEnumerable<string> files)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (string file in files.Order(StringComparer.Ordinal))
        {
            hash.AppendData(File.ReadAllBytes(file));
        }
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }
}
