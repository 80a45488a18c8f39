using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Tests.Quilting.Rules;

/// <summary>
/// Patterns broken as a designer breaks them, with all the messages they get. A new case is a file in
/// tests/cases/messages and no C#.
/// </summary>
public sealed class MessageCaseTests
{
    private const string Ending = ".quilt.yaml";

    private static string Folder => Path.Combine(Repository.Root, "tests", "cases", "messages");

    private static IEnumerable<string> Cases() =>
        Directory
            .EnumerateFiles(Folder, "*" + Ending)
            .Select(file => Path.GetFileName(file)[..^Ending.Length])
            .Order(StringComparer.Ordinal);

    [TestCaseSource(nameof(Cases))]
    public void The_messages_are_as_reviewed(string name)
    {
        IReadOnlyList<Diagnostic> found = Proofreading.Of(
            name + Ending,
            File.ReadAllText(Path.Combine(Folder, name + Ending)),
            out SourceText source
        );
        found.ShouldNotBeEmpty();
        Golden.ShouldMatch(
            Path.Combine(Folder, name + ".expected.txt"),
            MessageText.Of(source, found)
        );
    }

    [TestCaseSource(nameof(Cases))]
    public void Every_message_says_what_where_and_what_to_do(string name)
    {
        foreach (
            Diagnostic d in Proofreading.Of(
                name + Ending,
                File.ReadAllText(Path.Combine(Folder, name + Ending)),
                out _
            )
        )
        {
            d.Title.ShouldNotBeEmpty();
            char.IsUpper(d.Title[0]).ShouldBeFalse(d.Title);
            d.Title.ShouldNotEndWith(".");
            d.Title.ShouldNotContain('\n');
            d.Primary.Span.IsNone.ShouldBeFalse(d.Title);
            (d.Hint is null && d.Text.Length == 0).ShouldBeFalse(d.Title);
        }
    }

    [Test]
    public void Every_expected_text_has_its_pattern() =>
        Directory
            .EnumerateFiles(Folder, "*.expected.txt")
            .Select(file =>
                Path.GetFileName(file).Replace(".expected.txt", "", StringComparison.Ordinal)
            )
            .Order(StringComparer.Ordinal)
            .ShouldBe(Cases());
}
