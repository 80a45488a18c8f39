using PatternPress.Booklet;
using PatternPress.Quilting.Tables;

namespace PatternPress.Tests.Booklet.Sections;

/// <summary>What a maker with fabric on the table must not have to guess.</summary>
public sealed class MakersWordsTests
{
    private static readonly string PiecedBorders = File.ReadAllText(
        Path.Combine(Repository.Root, "tests", "cases", "guide", "pieced-borders.quilt.yaml")
    );

    private static string TextOf(Manuscript manuscript) =>
        Documents.TextOf(Documents.Compose(manuscript));

    /// <summary>The pattern with one of its sizes.</summary>
    private static string Alone(string size)
    {
        int sizes = PiecedBorders.IndexOf("sizes:", StringComparison.Ordinal);
        string line = PiecedBorders[sizes..]
            .Split('\n')
            .Single(l => l.StartsWith($"  {size}: ", StringComparison.Ordinal));
        return TextOf(Manuscripts.Compile(size, $"{PiecedBorders[..sizes]}sizes:\n{line}\n"));
    }

    // Geese drawn up point outward, geese drawn right run around; as the guide's pictures of them show.
    [TestCase(
        "outward",
        "Every row begins at its left end, outer edge up, with G1, which lies as it is drawn with the blocks, its point toward the outer edge.\n"
    )]
    [TestCase(
        "around",
        "with G2, which lies as it is drawn with the blocks, its point to the right.\n"
    )]
    [TestCase(
        "middle",
        "its point to the right. From the middle on it goes the other way about: the row ends with G2, upside down from how it is drawn, its point to the left.\n"
    )]
    [TestCase(
        "small",
        "with G2, which lies as it is drawn with the blocks, its point to the right.\n"
    )]
    public void Rows_of_a_border_say_how_they_begin(string size, string words) =>
        Alone(size).ShouldContain(words);

    [Test]
    public void What_some_sizes_have_is_headed_with_them()
    {
        string rose = TextOf(Manuscripts.Of("rose-of-the-winds"));
        rose.ShouldContain("### Pinwheels, Queen only\n");
        rose.ShouldContain("### Starlit round, Throw and Queen only\n");
        rose.ShouldContain("### Outer border\n");
        rose.ShouldContain("two at a time, Queen only\n");
        TextOf(Manuscripts.Of("hearth-and-harvest"))
            .ShouldContain("### Outer border, all but Crib\n");
        string harbor = TextOf(Manuscripts.Of("harbor-lights"));
        harbor.ShouldContain("| Side strips / Queen only | A4 |");
        harbor.ShouldContain("| Side strips / all but Queen | A3 |");
        harbor.ShouldContain("A strip that was cut in one length along the fabric");
        // Nothing that every size has.
        TextOf(Manuscripts.Of("towpath")).ShouldNotContain(" only\n");
    }

    [Test]
    public void One_block_in_the_middle_is_told_by_what_goes_around_it()
    {
        string text = TextOf(Manuscripts.Of("rose-of-the-winds"));
        text.ShouldNotContain("1 × 1");
        text.ShouldContain("| The middle, finished | 25 1/2 × 25 1/2 in |");
        // Rounds of the wall: coping strip, geese, kelp; then the border.
        text.ShouldContain("| Rounds and borders around it | 4 | 6 | 8 | ");
        // 1 rose; 4 sides of 14 geese and 4 corners. The throw has 4 of 7 checks and 4 stars more, the queen 4 of 10
        // pinwheels and 4 stars more.
        int wall = 1 + (4 * 14) + 4,
            @throw = wall + (4 * 7) + 4,
            queen = @throw + (4 * 10) + 4;
        text.ShouldContain($"| Blocks in all | {wall} | {@throw} | {queen} | ");
    }

    [TestCaseSource(typeof(Manuscripts), nameof(Manuscripts.Own))]
    public void Strips_that_are_filled_to_the_end_are_marked_and_no_others(string id)
    {
        Manuscript manuscript = Manuscripts.Of(id);
        string text = TextOf(manuscript);
        int start = text.IndexOf("## Cutting", StringComparison.Ordinal);
        int marked = text[start..].Split("(no spare)").Length - 1;
        HashSet<string> whole =
        [
            .. manuscript
                .Tables.Cutting.SelectMany(c => c.Rows)
                .Where(r => r.WholeStrip)
                .Select(r => r.Id),
        ];
        int full = manuscript
            .Tables.Cutting.SelectMany(c => c.BySize)
            .OfType<StripList>()
            .SelectMany(list => list.Strips)
            .Count(strip =>
                strip.End < PatternPress.Quilting.Measures.Length.FromInches(0, 1, 8)
                && !strip.Pieces.Any(p => p.Cuts.Any(whole.Contains))
            );
        // And once in the words that explain the mark.
        marked.ShouldBe(full == 0 ? 0 : full + 1);
    }

    // Of combinations that share letters it must be said which fabric is which; of those that do not, the letters tell.
    [Test]
    public void Fabrics_that_several_combinations_use_in_turn_are_told_apart()
    {
        string kite = TextOf(Manuscripts.Of("kite-weather"));
        kite.ShouldContain("2a / fabric one: B, fabric two: D");
        kite.ShouldContain("2b / fabric one: A, fabric two: B");
        string lantern = TextOf(Manuscripts.Of("lantern-fair"));
        lantern.ShouldContain(
            "One batch takes one square of Night Tide (A) and one square of the other fabric"
        );
        lantern.ShouldContain("1c / the other fabric: D");
        TextOf(Manuscripts.Of("harbor-lights"))
            .ShouldContain("One batch takes one square of B or C and one square of Cream (D)");
    }

    // A block on its corner gets its triangles, with their table and steps, and no rows.
    [Test]
    public void One_block_on_its_corner_is_told_how_its_triangles_are_sewn_on()
    {
        string text = TextOf(Manuscripts.Of("rose-of-the-winds"));
        int start = text.IndexOf("## Put the quilt together", StringComparison.Ordinal);
        string assembly = text[start..text.IndexOf("## Borders", start, StringComparison.Ordinal)];
        assembly.ShouldContain("| Corner triangles | A1 | 4 / from 2 squares of 13 5/8 in |");
        assembly.ShouldContain("Fold each triangle in half and mark the middle of its long edge.");
        assembly.ShouldNotContain("1 diagonal row");
    }

    [Test]
    public void A_list_of_tools_ends_with_and()
    {
        TextOf(Manuscripts.Of("towpath")).ShouldContain("a tape measure, and an iron\n");
        TextOf(Manuscripts.Of("harbor-lights")).ShouldContain("an iron, and a marking pen");
    }
}
