using System.Collections.Immutable;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Tables;

namespace PatternPress.Booklet.Sections;

/// <summary>The words that every template of the house may use, whatever the section.</summary>
internal static class CommonWords
{
    public static WordData Of(SectionContext context)
    {
        PrintedTables tables = context.Tables;
        House house = context.Pattern.House;
        NumberWords numbers = context.Numbers;
        Length seam = tables.Sizes.IsEmpty ? house.Seam : tables.Sizes[0].Seam;
        return WordData
            .Empty.With(context.Functions)
            .With("place", new WordFunction("place", 1, 0, a => $"![{a[0]}](place:{a[0]})"))
            .With("list", new WordFunction("list", 1, 0, a => ListOf(a, context.Labels)))
            .With("pattern", PatternData(context))
            .With("sizes", SizesData(context))
            .With("seam", context.Sized(i => numbers.Measure(tables.Sizes[i].Seam)))
            .With("seam_test", SeamTest(seam, numbers))
            .With("usable_width", numbers.Measure(UsableWidth(tables, house)))
            .With("usable_range", UsableRange(house, numbers))
            .With("precuts", PanelNames(tables, numbers))
            .With("strip_length", numbers.Measure(house.StripLength(UsableWidth(tables, house))))
            .With(
                "end_squaring",
                house.EndSquaring.Sign > 0 ? numbers.Measure(house.EndSquaring) : null
            )
            .With("shrinkage", PerCent(house.Shrinkage))
            .With("ruler_step", numbers.Measure(house.Ruler.Step))
            .With("press_open", house.Pressing == PressingStyle.Open)
            .With("press_nested", house.Pressing == PressingStyle.Nested)
            .With("diagonal", house.Joins == JoinStyle.Diagonal)
            .With("oversize", house.Cutting == CuttingStyle.Oversize)
            .With("squaring", house.Squaring.Sign > 0 ? numbers.Measure(house.Squaring) : null)
            .With("allowance", PerCent(house.Allowance))
            .With("sashing", !tables.Sashing.IsEmpty)
            .With("cornerstones", tables.Placement.Any(p => p.Sashing is { Cornerstones: true }))
            .With("sashing_around", tables.Placement.Any(p => p.Sashing is { Around: true }))
            .With("on_point", !tables.Triangles.IsEmpty)
            .With("patch", PatchShape(tables))
            .With("true_scale", Sheet("templates", context))
            .With("colorings", tables.Blocks.Length)
            .With("sheets", Sheets(context))
            .With("placement", Sheet("placement", context))
            .With("contact", Optional(context.Pattern.Info.Contact))
            .With("borders", tables.Borders.Length)
            .With("binding", tables.Binding.Any(b => b is not null))
            .With("backing", tables.Backing.Any(b => b is not null))
            .With("batting", tables.Requirements.Batting.Any(b => b is not null))
            .With("directional", tables.Fabrics.Any(f => f.Directional))
            .With("baby", context.Sizes.Any(s => IsForBaby(s, context.Labels)));
    }

    /// <summary>"triangle", "diamond" or "hexagon" in a one-patch quilt; null in others.</summary>
    private static string? PatchShape(PrintedTables tables) =>
        tables.Patches.IsEmpty
            ? null
            : tables.Patches[0].Kind switch
            {
                SettingPieceKind.Triangle or SettingPieceKind.TriangleEnd => "triangle",
                SettingPieceKind.Diamond or SettingPieceKind.DiamondEnd => "diamond",
                _ => "hexagon",
            };

    /// <summary>Titles of the documents that come with this one.</summary>
    private static ImmutableArray<string> Sheets(SectionContext context) =>
        [
            .. context
                .Templates.Documents.Where(d =>
                    d.Key != context.Plan.Key
                    && d.Title.Length > 0
                    && !d.OnRequest
                    && d.IsNeeded(context.Tables)
                )
                .Select(d => MarkdownText.Escape(d.Title)),
        ];

    /// <summary>The title of the other document that holds a section; null where none does.</summary>
    private static string? Sheet(string section, SectionContext context) =>
        context
            .Templates.Documents.Where(d =>
                d.Key != context.Plan.Key
                && d.Title.Length > 0
                && d.IsNeeded(context.Tables)
                && d.Sections.Contains(section)
            )
            .Select(d => MarkdownText.Escape(d.Title))
            .FirstOrDefault();

    /// <summary>Whether a size is named as one for a baby.</summary>
    public static bool IsForBaby(SizeColumn size, Labels labels) =>
        labels["baby-words"]
            .Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
            .Any(word =>
                size.Key.Contains(word, StringComparison.OrdinalIgnoreCase)
                || size.Name.Contains(word, StringComparison.OrdinalIgnoreCase)
            );

    /// <summary>"November 2026".</summary>
    public static string Date(DateOnly date, Labels labels) =>
        labels.Format("date", labels[$"month-{date.Month}"], date.Year, date.Day);

    private static WordData PatternData(SectionContext context)
    {
        PatternInfo info = context.Pattern.Info;
        return WordData
            .Empty.With("title", MarkdownText.Escape(info.Title.Value))
            .With("subtitle", Optional(info.Subtitle))
            .With("designer", MarkdownText.Escape(info.Designer))
            .With("edition", MarkdownText.Escape(info.Edition.Value))
            .With("date", Date(info.Date, context.Labels))
            .With("skill", Optional(info.Skill))
            .With("copyright", Optional(info.Copyright))
            .With("website", Optional(info.Website))
            .With("contact", Optional(info.Contact));
    }

    private static string? Optional(string? text) =>
        string.IsNullOrWhiteSpace(text) ? null : MarkdownText.Escape(text);

    private static ImmutableArray<WordData> SizesData(SectionContext context) =>
        [
            .. context.Sizes.Select(s =>
                WordData
                    .Empty.With("key", s.Key)
                    .With("name", MarkdownText.Escape(s.Name))
                    .With("finished", context.Numbers.Size(s.Width, s.Height))
                    .With("blocks", s.Blocks)
            ),
        ];

    /// <summary>
    /// Three strips sewn side by side lose a seam on each of their four inner edges, which is what the test measures.
    /// </summary>
    private static WordData SeamTest(Length seam, NumberWords numbers)
    {
        Length strip = numbers.IsMetric ? Length.FromCentimetres(4) : Length.FromInches(1, 1, 2);
        Length length = numbers.IsMetric ? Length.FromCentimetres(10) : Length.FromInches(4);
        return WordData
            .Empty.With("strip", numbers.Measure(strip))
            .With("length", numbers.Measure(length))
            .With("together", numbers.Measure((strip * 3) - (seam * 4)));
    }

    /// <summary>The width that most of the yardage is computed for.</summary>
    private static Length UsableWidth(PrintedTables tables, House house) =>
        tables
            .Requirements.Fabrics.SelectMany(r => r.BySize)
            .Where(c => c is { Panels: null })
            .GroupBy(c => c!.UsableWidth)
            .OrderByDescending(g => g.Count())
            .ThenBy(g => g.Key)
            .Select(g => (Length?)g.Key)
            .FirstOrDefault()
        ?? house.UsableWidth;

    /// <summary>What fabrics are bought as beside yardage: "fat quarters"; null where all are by the yard.</summary>
    private static ImmutableArray<string>? PanelNames(PrintedTables tables, NumberWords numbers)
    {
        ImmutableArray<string> kinds =
        [
            .. tables
                .Requirements.Fabrics.Concat(tables.Requirements.Binding)
                .SelectMany(row => row.BySize)
                .Select(cell => cell?.Panels?.Kind)
                .OfType<string>()
                .Distinct()
                .Select(numbers.PanelName),
        ];
        return kinds.IsEmpty ? null : kinds;
    }

    private static string? UsableRange(House house, NumberWords numbers) =>
        house.UsableWidthTo is { } widest
            ? $"{numbers.Measure(house.UsableWidth)} to {numbers.Measure(widest)}"
            : null;

    private static string? PerCent(Rational share) =>
        share.Sign > 0 ? $"{LengthText.Mixed(share * 100)}\u00a0%" : null;

    private static WordAnswer ListOf(ImmutableArray<object?> given, Labels labels) =>
        given[0] is System.Collections.IEnumerable items and not string
            ? labels.List(items.Cast<object?>().Select(i => i?.ToString() ?? ""))
            : new WordProblem(WordProblemKind.WrongValues, "list", []);
}
