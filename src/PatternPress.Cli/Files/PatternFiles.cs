namespace PatternPress.Cli.Files;

/// <summary>The pattern files that a command's arguments mean.</summary>
internal static class PatternFiles
{
    public const string Extension = ".quilt.yaml";

    /// <summary>
    /// Files as given, and for a folder every pattern directly in it, in order of name; without arguments the folder
    /// <c>patterns</c>.
    /// </summary>
    /// <returns>Paths as they are to be shown, relative where they were given so.</returns>
    public static IReadOnlyList<string> Find(string directory, IReadOnlyList<string> arguments)
    {
        var files = new List<string>();
        foreach (string argument in arguments.Count == 0 ? ["patterns"] : arguments)
        {
            string path = Path.Combine(directory, argument);
            if (Directory.Exists(path))
            {
                List<string> inside =
                [
                    .. Directory
                        .EnumerateFiles(path, "*" + Extension)
                        .Select(file =>
                            Path.Combine(argument, Path.GetFileName(file)).Replace('\\', '/')
                        )
                        .Order(StringComparer.Ordinal),
                ];
                if (inside.Count == 0)
                {
                    throw new CannotRunException(
                        $"the folder {argument} holds no pattern (a file whose name ends in {Extension})"
                    );
                }
                files.AddRange(inside);
            }
            else if (File.Exists(path))
            {
                files.Add(argument);
            }
            else
            {
                throw new CannotRunException(NotFound(argument, path));
            }
        }
        return [.. files.Distinct()];
    }

    /// <summary>"harbor-lights" for patterns/harbor-lights.quilt.yaml.</summary>
    public static string IdOf(string file)
    {
        string name = Path.GetFileName(file);
        return name.EndsWith(Extension, StringComparison.OrdinalIgnoreCase)
            ? name[..^Extension.Length]
            : Path.GetFileNameWithoutExtension(name);
    }

    private static string NotFound(string argument, string path)
    {
        string? folder = Path.GetDirectoryName(path);
        List<string> near = Directory.Exists(folder)
            ?
            [
                .. Directory
                    .EnumerateFiles(folder, "*" + Extension)
                    .Select(f => Path.GetFileName(f)!),
            ]
            : [];
        string? nearest = Source.Nearest.To(
            Path.GetFileName(argument),
            near.Order(StringComparer.Ordinal)
        );
        return $"there is no file or folder {argument}"
            + (
                nearest is null
                    ? ""
                    : $"; did you mean {Path.Combine(Path.GetDirectoryName(argument) ?? "", nearest)}?"
            );
    }
}
