using System.Collections.Immutable;
using System.Globalization;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Rules;
using PatternPress.Source.Shapes;
using PatternPress.Source.Syntax;

namespace PatternPress.Quilting.Reading;

/// <summary>Reads <c>pattern:</c>, what the cover and footers say.</summary>
internal static class InfoReader
{
    public static PatternInfo? Read(MapNode? map, ReadContext context)
    {
        ScalarNode? title = ReadContext.Text(map, "title"),
            edition = ReadContext.Text(map, "edition"),
            date = ReadContext.Text(map, "date");
        string? Plain(string key) => ReadContext.Text(map, key)?.Value.Trim();
        DateOnly day = default;
        if (
            date is not null
            // Another form was reported with the shape of the file.
            && TextForm.Date.Matches(date.Value.Trim())
            && !DateOnly.TryParseExact(
                date.Value.Trim(),
                "yyyy-MM-dd",
                CultureInfo.InvariantCulture,
                DateTimeStyles.None,
                out day
            )
        )
        {
            context.Report(PP0218_NotADate.Found(date.Span, date.Value));
        }
        if (title is null || edition is null || date is null)
        {
            return null;
        }
        var notes = ImmutableDictionary.CreateBuilder<string, Sourced<string>>(
            StringComparer.Ordinal
        );
        foreach (Entry entry in ReadContext.Map(map, "notes")?.Entries ?? [])
        {
            if (entry.Value is ScalarNode { IsEmpty: false } note)
            {
                notes[entry.Key.Value] = ReadContext.Sourced(note);
            }
        }
        return new PatternInfo(
            ReadContext.Sourced(title),
            Plain("subtitle"),
            ReadContext.Sourced(edition),
            day,
            Plain("designer") ?? "",
            Plain("skill"),
            ReadContext.Text(map, "about") is { } about ? ReadContext.Sourced(about) : null,
            Plain("copyright"),
            Plain("website"),
            Plain("contact"),
            Plain("language") ?? "en",
            notes.ToImmutable()
        );
    }
}
