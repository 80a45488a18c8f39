using System.Collections.Immutable;

namespace PatternPress.Source.Diagnostics;

/// <summary>The pages that explain the findings of reading (PP01), one for each code; they travel in the assembly.</summary>
public static class ReadingPages
{
    private const string Folder = "Explanations/";
    private const int CodeLength = 6;

    /// <summary>Every code that has a page, in order.</summary>
    public static ImmutableArray<string> Codes =>
        [
            .. Names()
                .Select(name => name.Substring(Folder.Length, CodeLength))
                .Order(StringComparer.Ordinal),
        ];

    /// <summary>The page of a code in Markdown, or null if the code is none of reading.</summary>
    public static string? Find(string code)
    {
        foreach (var name in Names())
        {
            if (
                name.AsSpan(Folder.Length)
                    .StartsWith(code + "_", StringComparison.OrdinalIgnoreCase)
            )
            {
                using var stream = typeof(ReadingPages).Assembly.GetManifestResourceStream(name)!;
                using var reader = new StreamReader(stream);
                return reader.ReadToEnd();
            }
        }

        return null;
    }

    private static IEnumerable<string> Names() =>
        typeof(ReadingPages)
            .Assembly.GetManifestResourceNames()
            .Where(name => name.StartsWith(Folder, StringComparison.Ordinal));
}
