using PatternPress.Booklet.Words;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Tables;

namespace PatternPress.Booklet.Sections;

/// <summary>
/// Real examples out of the pattern's own cutting tables for the words that explain them; nothing is explained that the tables
/// do not have.
/// </summary>
internal static class CuttingLegend
{
    public static WordData Of(SectionContext context)
    {
        Labels labels = context.Labels;
        HashSet<string> whole =
        [
            .. context
                .Tables.Cutting.SelectMany(c => c.Rows)
                .Where(r => r.WholeStrip)
                .Select(r => r.Id),
        ];
        List<StripRow> strips =
        [
            .. context
                .Tables.Cutting.SelectMany(c => c.BySize)
                // Plain ones: what is cut along the fabric, or beside that, is explained apart.
                .SelectMany(list =>
                    list?.Strips.Where(s => s.Beside is null && s.Height <= list.StripLength) ?? []
                )
                .Where(s => !s.Pieces.Any(p => p.Cuts.Any(whole.Contains))),
        ];
        StripRow? simple =
            strips.Find(s => s.Pieces.Length == 1 && s.Count > 1)
            ?? strips.Find(s => s.Pieces.Length == 1);
        StripRow? mixed = strips.Find(s => s.Pieces.Length > 1);
        return WordData
            .Empty.With("simple", simple is null ? null : Line(simple, labels))
            .With(
                "simple_strips",
                simple is null ? null : labels.Count("strip-count", simple.Count)
            )
            .With("simple_each", simple?.Pieces[0].PerStrip)
            .With("mixed", mixed is null ? null : Line(mixed, labels))
            .With("mixed_strips", mixed is null ? null : labels.Count("strip-count", mixed.Count))
            .With("mixed_first", mixed?.Pieces[0].PerStrip)
            .With("mixed_second", mixed?.Pieces[1].PerStrip)
            .With(
                "mixed_piece",
                mixed is null ? null : MarkdownText.Escape(CutNames.Joined(mixed.Pieces[1].Cuts))
            )
            .With(
                "alike",
                strips.SelectMany(s => s.Pieces).FirstOrDefault(p => p.Cuts.Length > 1) is { } pair
                    ? MarkdownText.Escape(CutNames.Joined(pair.Cuts))
                    : null
            )
            .With(
                "border_lengths",
                context
                    .Tables.Cutting.SelectMany(c => c.Rows)
                    .Any(r =>
                        !r.WholeStrip
                        && r.Purpose is CutPurpose.Border { Part: not BorderPart.Corners }
                    )
            )
            .With(
                "along",
                context
                    .Tables.Cutting.SelectMany(c => c.BySize)
                    .Any(list =>
                        list is { Panels: null }
                        && list.Strips.Any(s => s.Height > list.StripLength)
                    )
            )
            .With(
                "no_spare",
                context
                    .Tables.Cutting.SelectMany(c => c.BySize)
                    .Any(list =>
                        list is not null
                        && list.Strips.Any(s =>
                            IsFull(s, context) && !s.Pieces.Any(p => p.Cuts.Any(whole.Contains))
                        )
                    )
            )
            .With("squares", strips.Any(s => s.Pieces[0].Length == s.Pieces[0].Height && Whole(s)));
    }

    /// <summary>Whether the pieces fill a strip to its end: less than a mark of the ruler is left.</summary>
    public static bool IsFull(StripRow strip, SectionContext context) =>
        strip.End < context.Pattern.House.Ruler.Step;

    private static bool Whole(StripRow strip) => strip.Pieces[0].Height == strip.Height;

    /// <summary>As the table prints it: "8 strips, each 10", "1 strip: 6, then 4 A4".</summary>
    private static string Line(StripRow strip, Labels labels) =>
        labels.Format(
            strip.Count == 1 ? "one-strip-gives" : "each-strip-gives",
            labels.Count("strip-count", strip.Count),
            string.Join(
                $", {labels["then"]} ",
                strip.Pieces.Select(
                    (p, i) =>
                        i == 0
                            ? $"{p.PerStrip}"
                            : $"{p.PerStrip}\u00a0{MarkdownText.Escape(CutNames.Joined(p.Cuts))}"
                )
            )
        );
}
