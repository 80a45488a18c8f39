using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Tables;
using PatternPress.Tests.Quilting.Cutting;

namespace PatternPress.Tests.Quilting.Tables;

public sealed class TablesTextTests
{
    private static readonly string Cases = Path.Combine(
        Repository.Root,
        "tests",
        "cases",
        "tables"
    );

    private static IEnumerable<string> Names() =>
        Directory
            .EnumerateFiles(Cases, "*.quilt.yaml")
            .Select(file => Path.GetFileName(file)[..^".quilt.yaml".Length])
            .Order(StringComparer.Ordinal);

    [TestCaseSource(nameof(Names))]
    public void The_tables_are_as_reviewed(string name)
    {
        Making making = Makings.Of(File.ReadAllText(Path.Combine(Cases, name + ".quilt.yaml")));
        making.Problems.ShouldBeEmpty();
        string text = TablesText.Of(Tabulator.Tabulate(making));
        Golden.ShouldMatch(Path.Combine(Cases, name + ".tables.txt"), text);
    }

    [Test]
    public void Every_expected_text_has_its_pattern() =>
        Directory
            .EnumerateFiles(Cases, "*.tables.txt")
            .Select(file => Path.GetFileName(file)[..^".tables.txt".Length])
            .ShouldBe(Names(), ignoreOrder: true);
}
