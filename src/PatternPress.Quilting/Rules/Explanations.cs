using System.Collections.Immutable;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>The pages that explain each code, whichever part of the program reports it.</summary>
public static class Explanations
{
    private const string Folder = "Rules/";

    private static readonly Lazy<ImmutableSortedDictionary<string, string>> _resources = new(() =>
        typeof(Explanations)
            .Assembly.GetManifestResourceNames()
            .Where(name => name.StartsWith(Folder + "PP", StringComparison.Ordinal))
            .ToImmutableSortedDictionary(CodeOf, name => name, StringComparer.Ordinal)
    );

    /// <summary>All codes, in order.</summary>
    public static IEnumerable<string> Codes =>
        ReadingPages.Codes.Concat(_resources.Value.Keys).Order(StringComparer.Ordinal);

    /// <summary>The page of a code as Markdown; null for a code there is none for.</summary>
    public static string? Find(string code)
    {
        if (!_resources.Value.TryGetValue(code, out string? name))
        {
            // The codes of reading have their pages beside the reader.
            return ReadingPages.Find(code);
        }
        using Stream stream = typeof(Explanations).Assembly.GetManifestResourceStream(name)!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    /// <summary>The page's heading without its code: "Unknown part".</summary>
    public static string TitleOf(string code)
    {
        string heading = (Find(code) ?? "").Split('\n')[0].TrimStart('#', ' ');
        return heading.StartsWith(code, StringComparison.Ordinal)
            ? heading[code.Length..].Trim()
            : heading;
    }

    // "Rules/PP0210_UnboundPart.md"
    private static string CodeOf(string resource) => resource[Folder.Length..].Split('_', '.')[0];
}
