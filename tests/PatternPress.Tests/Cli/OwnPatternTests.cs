using PatternPress.Quilting.Compiling;
using PatternPress.Source.Diagnostics;
using PatternPress.Source.Syntax;
using PatternPress.Tests.Quilting;

namespace PatternPress.Tests.Cli;

/// <summary>The patterns that come with the program, and the whole ones of the language guide, are clean.</summary>
public sealed class OwnPatternTests
{
    private static IEnumerable<TestCaseData> Sources()
    {
        foreach (
            string file in Directory
                .EnumerateFiles(Repository.Patterns, "*.quilt.yaml")
                .Order(StringComparer.Ordinal)
        )
        {
            yield return new TestCaseData(File.ReadAllText(file)).SetArgDisplayNames(
                Path.GetFileName(file)
            );
        }
        string guide = File.ReadAllText(Path.Combine(Repository.Patterns, "README.md"));
        int number = 0;
        foreach (string part in guide.Split("```yaml pattern\n").Skip(1))
        {
            yield return new TestCaseData(
                part[..part.IndexOf("```", StringComparison.Ordinal)]
            ).SetArgDisplayNames($"guide {++number}");
        }
    }

    [TestCaseSource(nameof(Sources))]
    public void No_errors_and_no_warnings(string yaml)
    {
        string house = File.ReadAllText(Path.Combine(Repository.Root, "templates", "house.yaml"));
        Compilation compilation = Compiler.Compile(
            "own",
            SyntaxTree.Read("own.quilt.yaml", yaml),
            SyntaxTree.Read("house.yaml", house)
        );
        compilation
            .Diagnostics.Where(d => d.Severity != Severity.Note)
            .Select(Designs.Show)
            .ShouldBeEmpty();
        compilation.Tables.ShouldNotBeNull();
    }

    [Test]
    public void Five_sizes_four_sizes_and_twenty_five_fabrics_in_three()
    {
        Compilation Of(string id) =>
            Compiler.Compile(
                id,
                SyntaxTree.Read(
                    id,
                    File.ReadAllText(Path.Combine(Repository.Patterns, id + ".quilt.yaml"))
                ),
                null
            );
        Of("towpath").Pattern!.Sizes.Length.ShouldBe(5);
        Of("harbor-lights").Pattern!.Sizes.Length.ShouldBe(4);
        Compilation fires = Of("signal-fires");
        fires.Pattern!.Sizes.Length.ShouldBe(3);
        fires.Pattern.Fabrics.Count(f => f.Collection is not null).ShouldBe(25);
    }
}
