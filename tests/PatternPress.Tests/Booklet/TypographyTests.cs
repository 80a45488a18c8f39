using System.Collections.Concurrent;
using System.Text.RegularExpressions;
using PatternPress.Booklet;
using PatternPress.Booklet.Sections;
using PatternPress.Booklet.Words;
using PatternPress.Tests.Booklet.Sections;
using PatternPress.Tests.Typesetting;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Pages;

namespace PatternPress.Tests.Booklet;

/// <summary>
/// What a careful compositor looks for, looked for on every page of the repository's own patterns, on both papers. The rules
/// are common practice of the trade, no source.
/// </summary>
public sealed partial class TypographyTests
{
    private static readonly ConcurrentDictionary<
        (string, string, PaperSize),
        SetDocument
    > Documents = [];

    private static IEnumerable<TestCaseData> All =>
        from id in Manuscripts.Own
        from plan in (string[])["booklet", "requirements", "placement"]
        from paper in (PaperSize[])[PaperSize.Letter, PaperSize.A4]
        select new TestCaseData(id, plan, paper).SetArgDisplayNames(
            id,
            plan,
            paper == PaperSize.A4 ? "A4" : "Letter"
        );

    private static SetDocument Set(string id, string key, PaperSize paper) =>
        Documents.GetOrAdd(
            (id, key, paper),
            _ =>
            {
                DocumentPlan plan = BookletTemplates.Templates.Documents.Single(p => p.Key == key);
                ComposedDocument composed = new DocumentComposer(
                    Manuscripts.Of(id),
                    BookletTemplates.Templates
                ).Compose(plan, plan.Printing.PageOf(paper));
                return new SetDocument(
                    new Typesetter(TestFonts.Measurer).Typeset(composed.Document)
                );
            }
        );

    [TestCaseSource(nameof(All))]
    public void No_fraction_is_printed_in_digits_with_a_slash(
        string id,
        string plan,
        PaperSize paper
    ) =>
        Set(id, plan, paper)
            .Words.Where(word => !word.IsFraction && DigitsWithSlash().IsMatch(word.Shown))
            .Select(word => $"page {word.Page}: {word.Shown}")
            .ShouldBeEmpty();

    [TestCaseSource(nameof(All))]
    public void No_typewriter_quote_stands_where_a_prime_or_a_quotation_mark_belongs(
        string id,
        string plan,
        PaperSize paper
    ) =>
        Set(id, plan, paper)
            .Words.Where(word => word.Shown.AsSpan().IndexOfAny('"', '\'') >= 0)
            .Select(word => $"page {word.Page}: {word.Shown}")
            .ShouldBeEmpty();

    [TestCaseSource(nameof(All))]
    public void No_measure_is_divided_at_the_end_of_a_line(string id, string plan, PaperSize paper)
    {
        SetDocument document = Set(id, plan, paper);
        var divided = new List<string>();
        foreach (SetParagraph paragraph in document.Paragraphs)
        {
            foreach ((SetLine line, SetLine next) in paragraph.Lines.Zip(paragraph.Lines.Skip(1)))
            {
                bool number = EndsInNumber().IsMatch(line.Words);
                if (
                    (number && BeginsWithUnit().IsMatch(next.Words))
                    || (number && BeginsWithFraction().IsMatch(next.Words))
                )
                {
                    divided.Add($"page {line.Page}: {line.Words} | {next.Words}");
                }
            }
        }
        divided.ShouldBeEmpty();
    }

    [TestCaseSource(nameof(All))]
    public void No_line_of_a_paragraph_stands_alone_at_the_top_or_foot_of_a_page(
        string id,
        string plan,
        PaperSize paper
    )
    {
        var alone = new List<string>();
        foreach (SetParagraph paragraph in Set(id, plan, paper).Paragraphs)
        {
            var parts = paragraph.Lines.GroupBy(line => line.Page).ToList();
            if (parts.Count > 1)
            {
                alone.AddRange(
                    parts
                        .Where(part => part.Count() == 1)
                        .Select(part => $"page {part.Key}: {part.First().Words}")
                );
            }
        }
        alone.ShouldBeEmpty();
    }

    [TestCaseSource(nameof(All))]
    public void Nothing_that_announces_what_follows_is_the_last_on_its_page(
        string id,
        string plan,
        PaperSize paper
    ) =>
        Set(id, plan, paper)
            .Last.Where(last => last.IsHeading || last.Lines[^1].Words.TrimEnd().EndsWith(':'))
            .Select(last => $"page {last.Lines[^1].Page}: {last.Lines[^1].Words}")
            .ShouldBeEmpty();

    [TestCaseSource(nameof(All))]
    public void Whole_numbers_of_a_column_end_below_one_another(
        string id,
        string plan,
        PaperSize paper
    )
    {
        var astray = new List<string>();
        foreach (
            var column in Set(id, plan, paper)
                .Cells.GroupBy(cell => (cell.Table, cell.Page, cell.Column))
        )
        {
            List<SetCell> cells = [.. column.Where(cell => cell.Words.Length > 0)];
            // A column of measures or counts alone: words beside them stand where words stand.
            if (cells.Count < 2 || !cells.All(cell => Measure().IsMatch(cell.Words)))
            {
                continue;
            }
            double least = cells.Min(cell => cell.NumberEnd),
                most = cells.Max(cell => cell.NumberEnd);
            if (most - least > 0.02)
            {
                astray.Add(
                    $"page {column.Key.Page}, column {column.Key.Column + 1}: "
                        + string.Join(
                            "; ",
                            cells.Select(cell => $"{cell.Words} at {cell.NumberEnd:0.00}")
                        )
                );
            }
        }
        astray.ShouldBeEmpty();
    }

    [Test]
    public void Every_pattern_has_columns_of_numbers_and_divided_paragraphs_to_look_at()
    {
        // The tests above must not pass for want of anything to see.
        foreach (string id in Manuscripts.Own)
        {
            SetDocument booklet = Set(id, "booklet", PaperSize.Letter);
            booklet.Cells.Count(cell => Measure().IsMatch(cell.Words)).ShouldBeGreaterThan(20, id);
            booklet.Words.Count(word => word.IsFraction).ShouldBeGreaterThan(50, id);
            booklet.Paragraphs.Count(p => p.Lines.Count > 1).ShouldBeGreaterThan(20, id);
            booklet.Last.Count.ShouldBeGreaterThan(8, id);
        }
    }

    [GeneratedRegex(@"\d\s*/\s*\d")]
    private static partial Regex DigitsWithSlash();

    [GeneratedRegex(@"(^|[\s(×])\d[\d,.]*([\s\u00A0]\d+/\d+)?[\s\u00A0]*$|\d/\d+[\s\u00A0]*$")]
    private static partial Regex EndsInNumber();

    [GeneratedRegex(@"^(in|inch|inches|ft|yd|yds|yard|yards|cm|mm|m|pt|″|′|×|%)(?![\p{L}\d])")]
    private static partial Regex BeginsWithUnit();

    [GeneratedRegex(@"^\d+/\d+")]
    private static partial Regex BeginsWithFraction();

    [GeneratedRegex(
        @"^\d[\d,]*([\s\u00A0]\d+/\d+)?([\s\u00A0](in|yd|cm|m))?$|^\d+/\d+([\s\u00A0](in|yd|cm|m))?$"
    )]
    private static partial Regex Measure();
}
