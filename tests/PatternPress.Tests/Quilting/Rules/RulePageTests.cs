using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Tests.Quilting.Rules;

public sealed class RulePageTests
{
    private static IEnumerable<RulePage> WithExample() =>
        RulePage.All().Where(page => page.Source("Example") is not null);

    [Test]
    public void The_base_pattern_of_the_examples_is_clean()
    {
        string file = Path.Combine(Repository.Root, "tests", "cases", "rules", "base.quilt.yaml");
        Proofreading
            .Of("base.quilt.yaml", File.ReadAllText(file), out _)
            .Select(Designs.Show)
            .ShouldBeEmpty();
    }

    [TestCaseSource(nameof(WithExample))]
    public void The_example_shows_exactly_its_own_fault(object page)
    {
        var rule = (RulePage)page;
        IReadOnlyList<Diagnostic> found = Proofreading.Of(
            "example.quilt.yaml",
            rule.Source("Example")!,
            out SourceText source
        );
        string message = MessageText.Of(source, found);
        found.Select(d => d.Code).Distinct().ShouldBe([rule.Code], message);
        Golden.ShouldMatch(
            Path.Combine(Repository.Root, "tests", "cases", "rules", rule.Name + ".txt"),
            message
        );
    }

    private static IEnumerable<RulePage> WithRemedy() =>
        RulePage.All().Where(page => page.Source("Instead") is not null);

    [TestCaseSource(nameof(WithRemedy))]
    public void What_stands_under_instead_is_clean(object page)
    {
        string instead = ((RulePage)page).Source("Instead").ShouldNotBeNull();
        IReadOnlyList<Diagnostic> found = Proofreading.Of(
            "instead.quilt.yaml",
            instead,
            out SourceText source
        );
        found.ShouldBeEmpty(MessageText.Of(source, found));
    }
}
