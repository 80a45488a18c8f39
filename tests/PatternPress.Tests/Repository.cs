using System.Runtime.CompilerServices;

namespace PatternPress.Tests;

/// <summary>Finds the repository's own files from wherever the tests run.</summary>
internal static class Repository
{
    public static string Root { get; } = Find();

    public static string Patterns => Path.Combine(Root, "patterns");

    /// <summary>The folder of reference figures that lies beside the repository on some machines; null elsewhere.</summary>
    public static string? Shared
    {
        get
        {
            string path = Path.GetFullPath(Path.Combine(Root, "..", "shared"));
            return Directory.Exists(path) ? path : null;
        }
    }

    private static string Find([CallerFilePath] string thisFile = "")
    {
        foreach (
            string? start in new[] { Path.GetDirectoryName(thisFile), AppContext.BaseDirectory }
        )
        {
            for (
                DirectoryInfo? at = start is null ? null : new(start);
                at is not null;
                at = at.Parent
            )
            {
                if (File.Exists(Path.Combine(at.FullName, "PatternPress.sln")))
                {
                    return at.FullName;
                }
            }
        }
        throw new DirectoryNotFoundException("The tests run outside the repository.");
    }
}
