using PatternPress.Source;

namespace PatternPress.Quilting.Model;

/// <summary>What the cover and the footers say.</summary>
/// <param name="Date">The edition's date; every date in the output comes from here, never from the clock.</param>
/// <param name="About">The designer's introduction, Markdown with templates in it.</param>
/// <param name="Notes">Extra Markdown by place name (a section or step) anywhere in the booklet.</param>
public sealed record PatternInfo(
    Sourced<string> Title,
    string? Subtitle,
    Sourced<string> Edition,
    DateOnly Date,
    string Designer,
    string? Skill,
    Sourced<string>? About,
    string? Copyright,
    string? Website,
    string? Contact,
    string Language,
    System.Collections.Immutable.ImmutableDictionary<string, Sourced<string>> Notes
);
