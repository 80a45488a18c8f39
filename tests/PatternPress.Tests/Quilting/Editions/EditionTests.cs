using System.Collections.Immutable;
using PatternPress.Quilting.Editions;
using PatternPress.Quilting.Tables;
using PatternPress.Tests.Proofing;

namespace PatternPress.Tests.Quilting.Editions;

public sealed class EditionTests
{
    private static readonly DateOnly Date = new(2026, 11, 1);

    [TestCaseSource(typeof(Proofs), nameof(Proofs.Patterns))]
    public void An_edition_is_the_same_when_read_again(string name)
    {
        Edition edition = Edition.Of(Proofs.OfPattern(name).Tables, Date);
        edition.Facts.Length.ShouldBeGreaterThan(500);
        ReadAgain(edition).Facts.Order(ByKey).ShouldBe(edition.Facts.Order(ByKey));
        EditionComparison.Of(edition, ReadAgain(edition)).Changes.ShouldBeEmpty();
    }

    [Test]
    public void Names_of_any_kind_are_the_same_when_read_again()
    {
        ImmutableArray<EditionFact> facts =
        [
            new("units", "1 | a", "a = b", "", "back\\slash and\na line"),
            new("units", "1 | a", "a = b", "throw", "\\| = \\/ \\-"),
            new("sizes", "# no comment", "== no table", "throw", ""),
        ];
        Edition edition = new("p", "A | title = b", "1.0.0", Date, ["throw"], facts);
        Edition read = ReadAgain(edition);
        read.Title.ShouldBe(edition.Title);
        read.Facts.ShouldBe(facts, ignoreOrder: true);
    }

    [TestCase("", "the line \"pattern: …\" is missing")]
    [TestCase("pattern: p\nnonsense\n", "line 2 should be a name and a value: edition: 1.0.0")]
    [TestCase("== sizes\nquilt\n", "line 2 should have a row, what it says, and values")]
    [TestCase("== sizes\nquilt | width | 40\n", "line 2: \"40\" should be a size and its value")]
    [TestCase(
        "pattern: p\nedition: 1\ndate: soon\nsizes: a\n",
        "\"soon\" is not a date such as 2026-11-01"
    )]
    public void What_is_no_edition_is_refused_in_words(string text, string problem)
    {
        EditionText.TryRead(text, out _, out string found).ShouldBeFalse();
        found.ShouldBe(problem);
    }

    // What a change means to whoever holds the older edition, for the same quilt.
    [TestCase("requirements", "fabric B", "buy", "7/8 yd", "1 yd", ChangeEffect.Hurts)]
    [TestCase("requirements", "fabric B", "buy", "1 yd", "7/8 yd", ChangeEffect.Spends)]
    [TestCase("requirements", "fabric B", "buy", "80 cm", "0.9 m", ChangeEffect.Hurts)]
    [TestCase("requirements", "fabric G", "buy", null, "1/4 yd", ChangeEffect.Hurts)]
    [TestCase("requirements", "fabric B", "need", "30 in", "31 in", ChangeEffect.Harmless)]
    [TestCase("cutting", "A4", "count", "9", "10", ChangeEffect.Hurts)]
    [TestCase("cutting", "A4", "count", "10", "9", ChangeEffect.Spends)]
    [TestCase("cutting", "A4", "width", "3 1/2 in", "3 7/8 in", ChangeEffect.Hurts)]
    [TestCase("cutting", "A4", "width", "3 7/8 in", "3 1/2 in", ChangeEffect.Hurts)]
    [TestCase("units", "1a", "unfinished width", "3 1/2 in", "3 in", ChangeEffect.Hurts)]
    [TestCase("finishing", "binding", "strips", "8", "9", ChangeEffect.Hurts)]
    [TestCase("strips", "A step 1", "strips", "8", "9", ChangeEffect.Harmless)]
    [TestCase("sizes", "quilt", "name", "Throw", "Lap", ChangeEffect.Harmless)]
    public void A_change_is_weighed(
        string table,
        string row,
        string item,
        string? old,
        string? now,
        ChangeEffect effect
    )
    {
        EditionChange change = EditionComparison
            .Of(With("1.0.0", table, row, item, old), With("1.0.1", table, row, item, now))
            .Changes.ShouldHaveSingleItem();
        change.Effect.ShouldBe(effect);
        change.Text.ShouldBe(
            $"throw, {table}, {row}: {item} {old ?? "not printed"}, now {now ?? "not printed"}"
        );
    }

    // A wider border makes another quilt; the other sizes are compared as before.
    [Test]
    public void Numbers_of_another_quilt_are_not_called_mistakes()
    {
        Edition Of(string width, string throwBuy, string cribBuy) =>
            new(
                "p",
                "P",
                "1",
                Date,
                ["crib", "throw"],
                [
                    new("sizes", "quilt", "width", "throw", width),
                    new("requirements", "fabric A", "buy", "throw", throwBuy),
                    new("requirements", "fabric A", "buy", "crib", cribBuy),
                ]
            );
        EditionComparison comparison = EditionComparison.Of(
            Of("60 in", "2 yd", "1 yd"),
            Of("61 in", "2 1/4 yd", "1 1/8 yd")
        );
        comparison.Altered.ShouldBe(["throw"]);
        comparison
            .Changes.Select(change => (change.Size, change.Effect))
            .ShouldBe([
                ("crib", ChangeEffect.Hurts),
                ("throw", ChangeEffect.Alters),
                ("throw", ChangeEffect.Alters),
            ]);
    }

    // Every number that the corruption harness changes is in an edition's file, or the proof alone would have to see it.
    [Test]
    public void A_changed_yardage_or_count_shows_in_the_edition()
    {
        PrintedTables tables = Proofs.OfPattern("harbor-lights").Tables;
        Edition edition = Edition.Of(tables, Date);
        int shown = 0;
        foreach (
            Corruption corruption in Corruptions
                .Of(tables)
                .Where(c =>
                    c.Kind is CorruptionKind.Yardage or CorruptionKind.Count
                    && c.Place.Contains(".BySize[", StringComparison.Ordinal)
                    && !c.Place.Contains("Role", StringComparison.Ordinal)
                )
                .Where((_, i) => i % 20 == 0)
        )
        {
            EditionComparison
                .Of(edition, Edition.Of(corruption.Tables(), Date))
                .Changes.ShouldNotBeEmpty($"{corruption.Place}: {corruption.Change}");
            shown++;
        }
        shown.ShouldBeGreaterThan(20);
    }

    private static readonly Comparer<EditionFact> ByKey = Comparer<EditionFact>.Create(
        (a, b) => string.CompareOrdinal(a.ToString(), b.ToString())
    );

    private static Edition ReadAgain(Edition edition)
    {
        EditionText
            .TryRead(EditionText.Write(edition), out Edition? read, out string problem)
            .ShouldBeTrue(problem);
        return read!;
    }

    private static Edition With(
        string number,
        string table,
        string row,
        string item,
        string? value
    ) =>
        new(
            "p",
            "P",
            number,
            Date,
            ["throw"],
            value is null ? [] : [new EditionFact(table, row, item, "throw", value)]
        );
}
