namespace PatternPress.Cli.Files;

/// <summary>Finds the folder of words, looks, house rules and fonts.</summary>
internal static class TemplateFolder
{
    private const string Name = "templates";

    /// <summary>
    /// The folder named, else the nearest <c>templates</c> at or above the working directory, else the one that came
    /// with the program.
    /// </summary>
    public static string Find(string directory, string? named)
    {
        if (named is not null)
        {
            string path = Path.Combine(directory, named);
            return Directory.Exists(path)
                ? path
                : throw new CannotRunException($"there is no folder {named} for --templates");
        }
        for (DirectoryInfo? at = new(directory); at is not null; at = at.Parent)
        {
            string path = Path.Combine(at.FullName, Name);
            if (File.Exists(Path.Combine(path, "house.yaml")))
            {
                return path;
            }
        }
        string own = Path.Combine(AppContext.BaseDirectory, Name);
        return Directory.Exists(own)
            ? own
            : throw new CannotRunException(
                "there is no folder \"templates\" here or above; name one with --templates"
            );
    }
}
