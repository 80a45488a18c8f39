using PatternPress.Booklet;

namespace PatternPress.Tests.Booklet.Sections;

/// <summary>
/// The whole text of small patterns' documents, reviewed like prose: tests/cases/booklets/NAME.quilt.yaml and
/// NAME.txt beside it.
/// </summary>
public sealed class GoldenBookletTests
{
    private static string Folder => Path.Combine(Repository.Root, "tests", "cases", "booklets");

    private static IEnumerable<string> Cases =>
        Directory
            .EnumerateFiles(Folder, "*.quilt.yaml")
            .Select(f => Path.GetFileName(f).Replace(".quilt.yaml", ""))
            .Order(StringComparer.Ordinal);

    [TestCaseSource(nameof(Cases))]
    public void The_text_of_its_documents(string name)
    {
        Manuscript manuscript = Manuscripts.Compile(
            name,
            File.ReadAllText(Path.Combine(Folder, $"{name}.quilt.yaml"))
        );
        string text = string.Concat(
            new[] { "booklet", "requirements", "placement" }.Select(plan =>
                $"===== {plan}\n{Documents.TextOf(Documents.Compose(manuscript, plan))}\n"
            )
        );
        Golden.ShouldMatch(Path.Combine(Folder, $"{name}.txt"), text);
    }

    [TestCaseSource(nameof(Cases))]
    public void Abbreviations_are_explained_or_not_used(string name)
    {
        string text = Documents.TextOf(
            Documents.Compose(
                Manuscripts.Compile(
                    name,
                    File.ReadAllText(Path.Combine(Folder, $"{name}.quilt.yaml"))
                )
            )
        );
        // The trade's abbreviations (common practice, no source): a beginner does not know them.
        foreach (string abbreviation in new[] { "WOF", "HST", "QST", "RST", "WST", "FQ", "SID" })
        {
            text.Split(' ', '\n', '.', ',', '(', ')').ShouldNotContain(abbreviation);
        }
    }
}
