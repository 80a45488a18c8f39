using PatternPress.Cli.Messages;
using PatternPress.Source.Shapes;
using PatternPress.Source.Syntax;

namespace PatternPress.Tests.Source;

/// <summary>Broken files in cases/reading with the messages a designer gets for them; a new case needs no C#.</summary>
public sealed class ReadingCaseTests
{
    private static readonly string Folder = Path.Combine(
        Repository.Root,
        "tests",
        "cases",
        "reading"
    );

    private static IEnumerable<string> Cases =>
        Directory
            .EnumerateFiles(Folder, "*.yaml")
            .Select(Path.GetFileNameWithoutExtension)
            .Order(StringComparer.Ordinal)!;

    [TestCaseSource(nameof(Cases))]
    public void The_messages_are_as_expected(string name)
    {
        var file = Path.Combine(Folder, $"{name}.yaml");
        var tree = SyntaxTree.Read($"{name}.yaml", File.ReadAllBytes(file));
        var found = tree.Diagnostics.Concat(ShapeChecker.Check(tree, SamplePattern.Shape));
        var output = new StringWriter { NewLine = "\n" };
        new TerminalWriter(new TerminalStyle(Width: 100)).Write(new(found, [tree.Source]), output);
        Golden.ShouldMatch(Path.ChangeExtension(file, ".expected.txt"), output.ToString());
    }

    [Test]
    public void There_are_cases() => Cases.Count().ShouldBeGreaterThan(5);
}
