using PatternPress.Booklet;
using PatternPress.Booklet.Sections;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Tables;
using PatternPress.Typesetting.Blocks;

namespace PatternPress.Tests.Booklet.Sections;

/// <summary>What the pages say is what the tables hold, cell by cell.</summary>
public sealed class PrintedNumbersTests
{
    private static readonly Labels Labels = BookletTemplates.Labels;

    private static IEnumerable<string> Patterns => Manuscripts.Own;

    [TestCaseSource(nameof(Patterns))]
    public void Requirements(string id)
    {
        Manuscript manuscript = Manuscripts.Of(id);
        NumberWords numbers = Numbers(manuscript);
        RequirementsTable all = manuscript.Tables.Requirements;
        List<string[]> rows = Rows(manuscript, Labels["summary-requirements"], 3);
        // A fabric bought for several uses is one row: the total, and below it what each use takes.
        List<List<RequirementRow>> fabrics = [];
        foreach (RequirementRow row in all.Fabrics.Concat(all.Binding).Concat(all.Backing))
        {
            List<RequirementRow>? same = fabrics.Find(f =>
                row.Fabric is not null
                && f[0].Fabric == row.Fabric
                && f[0].BySize.First(c => c is not null)!.UsableWidth
                    == row.BySize.First(c => c is not null)!.UsableWidth
            );
            if (same is null)
            {
                fabrics.Add([row]);
            }
            else
            {
                same.Add(row);
            }
        }
        rows.Count.ShouldBe(fabrics.Count + 1);
        for (int f = 0; f < fabrics.Count; f++)
        {
            for (int i = 0; i < manuscript.Tables.Sizes.Length; i++)
            {
                if (fabrics[f].Exists(r => r.BySize[i]?.Panels is not null))
                {
                    long panels = fabrics[f].Sum(r => r.BySize[i]?.Panels?.ToBuy ?? 0);
                    rows[f]
                        [i + 3]
                        .Split('\n')[0]
                        .ShouldBe(Labels.Count("panel-fat-quarter", panels), rows[f][1]);
                    continue;
                }
                List<Yardage> parts =
                [
                    .. fabrics[f]
                        .Select(r => r.BySize[i])
                        .OfType<RequirementCell>()
                        .Select(c => c.Yardage),
                ];
                string[] lines = rows[f][i + 3].Split('\n');
                if (parts.Count == 0)
                {
                    lines[0].ShouldBe(Labels["none"]);
                    continue;
                }
                // Needs are added exactly; a shop cuts eighths of a yard.
                Length need = parts.Aggregate(Length.Zero, (sum, y) => sum + y.Exactly);
                var total = Length.FromInches(
                    new Rational(9, 2) * (need.Inches / new Rational(9, 2)).Ceiling()
                );
                lines[0].ShouldBe(Plain(numbers.Yards(new Yardage(need, total))), rows[f][1]);
                if (parts.Count > 1)
                {
                    lines
                        .Skip(1)
                        .Zip(parts)
                        .ShouldAllBe(p => p.First.EndsWith(Plain(numbers.Yards(p.Second))));
                }
            }
        }
        rows[^1]
            .Skip(3)
            .Select(c => c.Split('\n')[0])
            .ShouldBe(
                all.Batting.Select(b =>
                    b is null ? Labels["none"] : Plain(numbers.Size(b.Width, b.Height))
                )
            );
    }

    /// <summary>Whether a row's heading, "A3/A4" or "A3–A14", names a piece.</summary>
    private static bool Names(string heading, string id)
    {
        foreach (string part in heading.Split('/'))
        {
            string[] ends = part.Split('–');
            if (part == id)
            {
                return true;
            }
            if (
                ends.Length == 2
                && Stem(ends[0]) == Stem(id)
                && Number(id) >= Number(ends[0])
                && Number(id) <= Number(ends[1])
            )
            {
                return true;
            }
        }
        return false;

        static string Stem(string name) => name.TrimEnd([.. "0123456789"]);

        static int Number(string name) =>
            int.TryParse(name[Stem(name).Length..], out int number) ? number : -1;
    }

    [TestCaseSource(nameof(Patterns))]
    public void Cutting(string id)
    {
        Manuscript manuscript = Manuscripts.Of(id);
        foreach (CuttingTable cutting in manuscript.Tables.Cutting)
        {
            List<string[]> rows = Rows(
                manuscript,
                Labels.Format("summary-cutting", cutting.Fabric),
                2
            );
            foreach (CutRow cut in cutting.Rows)
            {
                string[] row = rows.Single(r => Names(r[0], cut.Id));
                bool alone = row[0] == cut.Id;
                for (int i = 0; i < cut.BySize.Length; i++)
                {
                    string first = row[i + 2].Split('\n')[0];
                    if (cut.BySize[i] is not { } cell)
                    {
                        if (alone)
                        {
                            first.ShouldBe(Labels["none"]);
                        }
                        continue;
                    }
                    first
                        .Split(", ")
                        .ShouldContain(alone ? $"{cell.Count}" : $"{cell.Count} {cut.Id}");
                    (row[1] + row[i + 2]).ShouldContain(SizeOf(cut, cell, manuscript));
                }
            }
        }
    }

    [TestCaseSource(nameof(Patterns))]
    public void Strips(string id)
    {
        Manuscript manuscript = Manuscripts.Of(id);
        foreach (CuttingTable cutting in manuscript.Tables.Cutting)
        {
            List<string[]> rows = Rows(
                manuscript,
                Labels.Format("summary-cutting", cutting.Fabric),
                2
            );
            for (int i = 0; i < cutting.BySize.Length; i++)
            {
                foreach (StripRow strip in cutting.BySize[i]?.Strips ?? [])
                {
                    string first = strip.Pieces[0].Cuts[0];
                    string[] row = rows.Single(r => Names(r[0], first));
                    CutRow cut = cutting.Rows.Single(r => r.Id == first);
                    if (cut.WholeStrip)
                    {
                        row[i + 2].Split('\n')[0].ShouldBe($"{cut.BySize[i]!.Count}");
                        continue;
                    }
                    string[] lines = row[i + 2].Split('\n');
                    // Pieces longer than the fabric is wide lie along it.
                    bool along = strip.Height > cutting.BySize[i]!.StripLength;
                    string start = Labels.Count(
                        along ? "length-count" : "strip-count",
                        strip.Count
                    );
                    lines.ShouldContain(l =>
                        (
                            l.StartsWith(start + ":")
                            || l.StartsWith(start + ",")
                            || l.StartsWith(start + " of ")
                        )
                        && l.Contains($" {strip.Pieces[0].PerStrip}")
                        && strip.Pieces.Skip(1).All(p => l.Contains($"{p.PerStrip} {p.Cuts[0]}"))
                        && (!strip.Beside.HasValue || l.Contains("beside"))
                    );
                    // Each row says what it gets from strips begun for others.
                    foreach (StripPieces more in strip.Pieces.Skip(1))
                    {
                        string[] other = rows.Single(r => Names(r[0], more.Cuts[0]));
                        if (other[0] != row[0])
                        {
                            other[i + 2].ShouldContain($"+ {more.PerStrip} from");
                        }
                    }
                }
            }
        }
    }

    [TestCaseSource(nameof(Patterns))]
    public void Units(string id)
    {
        Manuscript manuscript = Manuscripts.Of(id);
        foreach (UnitTable unit in manuscript.Tables.Units)
        {
            List<string[]> rows = Rows(manuscript, Labels.Format("summary-unit", unit.Number), 3);
            rows.Count.ShouldBe(unit.Rows.Length);
            foreach ((UnitRow expected, string[] row) in unit.Rows.Zip(rows))
            {
                row[0].Split('\n')[0].ShouldBe(expected.Label);
                for (int i = 0; i < expected.BySize.Length; i++)
                {
                    string[] lines = row[i + 3].Split('\n');
                    if (expected.BySize[i] is not { } cell)
                    {
                        lines[0].ShouldBe(Labels["none"]);
                        continue;
                    }
                    if (cell.StripSets.IsEmpty)
                    {
                        lines[0].ShouldBe(Labels.Format("make", cell.Made));
                        lines
                            .Contains(Labels.Format("use", cell.Needed))
                            .ShouldBe(cell.Made != cell.Needed);
                        if (cell.Yield > 1)
                        {
                            lines.ShouldContain(Labels.Count("batch-count", cell.Batches));
                        }
                    }
                    else
                    {
                        lines[0].ShouldBe(Labels.Format("make", cell.Needed));
                        foreach (StripSetRow set in cell.StripSets)
                        {
                            lines.ShouldContain(Labels.Count("strip-set-count", set.Sets));
                            lines.ShouldContain(
                                Labels.Format("segment-count", set.Segments, set.SegmentsPerSet)
                            );
                        }
                    }
                    foreach (UnitPiece piece in cell.Pieces)
                    {
                        row[2].ShouldContain($"{piece.Count} × {piece.Cut} {piece.Name}");
                    }
                }
            }
        }
    }

    [TestCaseSource(nameof(Patterns))]
    public void Blocks_and_their_counts(string id)
    {
        Manuscript manuscript = Manuscripts.Of(id);
        foreach (
            IGrouping<string, BlockRow> design in manuscript
                .Tables.Blocks.Where(b => b.Block is not null)
                .GroupBy(b => b.Block!)
        )
        {
            // Blocks of several parts are counted where their units are sorted.
            bool sorted = design.First().Parts.Length > 1;
            int lead = sorted ? 4 : 3;
            List<string[]> rows =
            [
                .. Rows(
                        manuscript,
                        sorted
                            ? Labels["summary-sorting"]
                            : Labels.Format("summary-block", design.First().Name),
                        lead
                    )
                    .Where(r => design.Any(b => r[0].Split(' ')[0] == b.Coloring)),
            ];
            rows.Select(r => r.Skip(lead).ToArray())
                .ShouldBe(
                    design.Select(b =>
                        b.BySize.Select(c =>
                                c is null ? Labels["none"] : Labels.Format("make", c.Count)
                            )
                            .ToArray()
                    )
                );
        }
        if (manuscript.Tables.Blocks.IsEmpty)
        {
            // A one-patch quilt: its pieces are counted where they are cut.
            Rows(manuscript, Labels["summary-patches"], 2)
                .Select(r =>
                    r.Skip(2).Select(c => new string([.. c.TakeWhile(char.IsAsciiDigit)])).ToArray()
                )
                .ShouldBe(
                    manuscript.Tables.Patches.Select(p =>
                        p.BySize.Select(c => c is null ? Labels["none"] : $"{c.Count}").ToArray()
                    )
                );
            return;
        }
        List<string[]> placed = Rows(manuscript, Labels["summary-placement"], 2, "placement");
        placed
            .Select(r => r.Skip(2).ToArray())
            .ShouldBe(
                manuscript.Tables.Blocks.Select(b =>
                    b.BySize.Select(c => c is null ? Labels["none"] : $"{c.Count}").ToArray()
                )
            );
    }

    [TestCaseSource(nameof(Patterns))]
    public void Borders(string id)
    {
        Manuscript manuscript = Manuscripts.Of(id);
        NumberWords numbers = Numbers(manuscript);
        foreach (BorderRow border in manuscript.Tables.Borders)
        {
            List<string[]> rows = Rows(
                manuscript,
                Labels.Format("summary-border", border.Number),
                2
            );
            for (int i = 0; i < border.BySize.Length; i++)
            {
                if (border.BySize[i] is not { } cell)
                {
                    continue;
                }
                foreach (BorderPartRow part in cell.Parts)
                {
                    string wanted = Plain(numbers.Square(part.Width, part.Length));
                    rows.ShouldContain(r =>
                        r[1] == part.Cut
                        && r[i + 2].EndsWith(wanted)
                        && r[i + 2].StartsWith($"{part.Count} ")
                    );
                }
                rows[^1]
                    [i + 2]
                    .ShouldBe(
                        Plain(
                            numbers.Size(
                                cell.OutsideWidth + (manuscript.Tables.Sizes[i].Seam * 2),
                                cell.OutsideHeight + (manuscript.Tables.Sizes[i].Seam * 2)
                            )
                        )
                    );
            }
        }
    }

    [TestCaseSource(nameof(Patterns))]
    public void Finishing(string id)
    {
        Manuscript manuscript = Manuscripts.Of(id);
        NumberWords numbers = Numbers(manuscript);
        List<string[]> backing = Rows(manuscript, Labels["summary-backing"], 1);
        List<string[]> binding = Rows(manuscript, Labels["summary-binding"], 1);
        for (int i = 0; i < manuscript.Tables.Sizes.Length; i++)
        {
            if (manuscript.Tables.Backing[i] is { } back)
            {
                backing[0][i + 1].ShouldStartWith($"{back.Panels} ");
                backing[0][i + 1].ShouldContain(Plain(numbers.Measure(back.PanelLength)));
                backing[^1][i + 1].ShouldBe(Plain(numbers.Size(back.Width, back.Height)));
            }
            if (manuscript.Tables.Binding[i] is { } bind)
            {
                binding[0][i + 1].ShouldStartWith($"{bind.Strips} ");
                binding[0][i + 1].ShouldContain(Plain(numbers.Measure(bind.StripWidth)));
                binding[1][i + 1].ShouldBe(Plain(numbers.Measure(bind.Length)));
                binding[2][i + 1].ShouldBe(Plain(numbers.Measure(bind.Perimeter)));
            }
        }
    }

    private static string SizeOf(CutRow row, CutCell cell, Manuscript manuscript)
    {
        NumberWords numbers = Numbers(manuscript);
        return Plain(
            row.WholeStrip
                ? numbers.Measure(cell.Height)
                : numbers.Square(
                    Length.Min(cell.Width, cell.Height),
                    Length.Max(cell.Width, cell.Height)
                )
        );
    }

    private static NumberWords Numbers(Manuscript manuscript) =>
        new(manuscript.Tables.Unit, Labels);

    private static string Plain(string text) => text.Replace('\u00a0', ' ');

    /// <summary>
    /// The rows of a table that stands in several parts, put together again: leading cells once, then all sizes. Rows
    /// that only name a group are left out.
    /// </summary>
    private static List<string[]> Rows(
        Manuscript manuscript,
        string summary,
        int lead,
        string plan = "booklet"
    )
    {
        ComposedDocument composed = Documents.Compose(manuscript, plan);
        List<Table> tables = [.. Documents.TablesOf(composed).Where(t => t.Summary == summary)];
        tables.ShouldNotBeEmpty(summary);
        return
        [
            .. tables
                .SelectMany(t => t.Rows)
                .Where(r => r.Cells.Length > 1)
                .Select(row =>
                    row.Cells.SelectMany(cell =>
                            Enumerable.Repeat(PlainText.Of([cell.Content]).Trim(), cell.ColumnSpan)
                        )
                        .ToArray()
                ),
        ];
    }
}
