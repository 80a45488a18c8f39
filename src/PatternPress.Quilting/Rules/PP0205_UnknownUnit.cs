using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A unit's first word names no kind of unit.</summary>
public sealed class PP0205_UnknownUnit : ReadingRule
{
    public static PP0205_UnknownUnit Instance { get; } = new();

    private PP0205_UnknownUnit()
        : base("PP0205", Severity.Error, "Unknown kind of unit") { }

    // What makers call these units, common practice, no source.
    private static string? Meant(string word) =>
        word.ToLowerInvariant() switch
        {
            "hst" or "hsts" or "half-square-triangle" or "half-square-triangles" => "half-square",
            "qst" or "qsts" or "quarter-square-triangle" or "quarter-square-triangles" =>
                "quarter-square",
            "hrt" or "hrts" or "half-rectangle-triangle" or "half-rectangle-triangles" =>
                "half-rectangle",
            "flying" or "flying-geese" or "goose" => "geese",
            "snowball" or "flip" or "stitch-and-flip" => "corners",
            "square-in-a-square" or "economy" => "square-in-square",
            "4-patch" or "fourpatch" => "four-patch",
            "9-patch" or "ninepatch" => "nine-patch",
            "patch" or "plain" => "square",
            "strips" or "strip" or "rails" => "rail",
            _ => null,
        };

    /// <param name="known">Keywords of all kinds.</param>
    public static Diagnostic Found(Span word, string keyword, IEnumerable<string> known) =>
        Instance.Report(
            word,
            $"\"{keyword}\" is not a kind of unit",
            "no such unit",
            hint: Meant(keyword) is { } meant
                ? $"it is written \"{meant}\" here"
                : Wording.DidYouMean(keyword, known, "kinds of unit")
        );
}
