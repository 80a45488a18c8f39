using PatternPress.Quilting.Rules;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Tests.Quilting.Rules;

public sealed class FindingCollectorTests
{
    private static readonly string[] _sizes = ["crib", "throw", "twin", "queen"];

    private static Diagnostic At(int line, string title) =>
        Diagnostic.Error("PP0303", title, new Span("a.yaml", line, 1, line, 2), "here");

    private static Diagnostic Single(params Finding[] findings)
    {
        var collector = new FindingCollector(_sizes);
        collector.AddRange(findings);
        return collector.ToDiagnostics().ShouldHaveSingleItem();
    }

    [Test]
    public void One_fault_in_several_sizes_is_one_message_with_the_numbers_of_each()
    {
        Diagnostic d = At(3, "too wide");
        Diagnostic merged = Single(
            new(d, "queen", "45 in"),
            new(d, "crib", "42 in"),
            new(d, "twin", "45 in"),
            new(d, "crib", "42 in")
        );
        merged.Sizes.ShouldBe(["crib", "twin", "queen"]);
        merged.Text.ShouldBe("crib: 42 in\ntwin, queen: 45 in");
    }

    [Test]
    public void Numbers_come_behind_what_holds_for_all_sizes() =>
        Single(
            new Finding(At(3, "too wide") with { Text = "Fabric has two edges." }, "twin", "45 in")
        )
            .Text.ShouldBe("Fabric has two edges.\ntwin: 45 in");

    [Test]
    public void A_finding_without_a_size_stays_as_it_is() =>
        Single(new Finding(At(3, "too wide")), new Finding(At(3, "too wide")))
            .ShouldBe(At(3, "too wide"), new AsShown());

    [Test]
    public void Findings_come_in_the_order_of_the_file_and_those_without_a_place_last()
    {
        var collector = new FindingCollector(_sizes);
        collector.Add(Diagnostic.Error("PP0308", "nowhere", Span.None, ""));
        collector.Add(At(9, "late"));
        collector.Add(At(2, "early"));
        collector.ToDiagnostics().Select(d => d.Title).ShouldBe(["early", "late", "nowhere"]);
    }

    [Test]
    public void Different_faults_at_one_place_are_not_merged()
    {
        var collector = new FindingCollector(_sizes);
        collector.Add(new Finding(At(2, "too wide"), "twin", ""));
        collector.Add(new Finding(At(2, "too long"), "twin", ""));
        collector.ToDiagnostics().Count.ShouldBe(2);
    }

    private sealed class AsShown : IEqualityComparer<Diagnostic>
    {
        public bool Equals(Diagnostic? x, Diagnostic? y) => Designs.Show(x!) == Designs.Show(y!);

        public int GetHashCode(Diagnostic obj) => 0;
    }
}
