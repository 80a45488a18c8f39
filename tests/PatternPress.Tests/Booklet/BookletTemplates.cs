using System.Collections.Immutable;
using PatternPress.Booklet.Words;

namespace PatternPress.Tests.Booklet;

/// <summary>The repository's own templates, read once for all tests.</summary>
internal static class BookletTemplates
{
    private static readonly Lazy<Templates> Read = new(() =>
        PatternPress.Booklet.Words.Templates.Read(Files, "en")
    );

    private static readonly Lazy<ImmutableDictionary<string, string>> AllFiles = new(() =>
    {
        string folder = Path.Combine(Repository.Root, "templates");
        return Directory
            .EnumerateFiles(folder, "*", SearchOption.AllDirectories)
            .Where(file => Path.GetExtension(file) is ".md" or ".yaml")
            .ToImmutableDictionary(
                file => Path.GetRelativePath(folder, file).Replace('\\', '/'),
                File.ReadAllText
            );
    });

    public static Templates Templates => Read.Value;

    /// <summary>The files by their paths below the folder.</summary>
    public static ImmutableDictionary<string, string> Files => AllFiles.Value;

    public static Labels Labels => Templates.Labels;
}
