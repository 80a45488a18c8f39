using System.Collections.Immutable;
using PatternPress.Booklet.Words;

namespace PatternPress.Tests.Booklet.Words;

public sealed class WordTemplateTests
{
    private static readonly WordData Data = WordData
        .Empty.With("title", "Harbor")
        .With("yes", true)
        .With("missing", null)
        .With("inner", WordData.Empty.With("size", "3 in").With("large square", "4 in"))
        .With(
            "list",
            ImmutableArray.Create(
                WordData.Empty.With("name", "a"),
                WordData.Empty.With("name", "b")
            )
        )
        .With("seam", new Sized([("Crib", "1/4 in"), ("Throw", "1/4 in")], "or"));

    [TestCase("{{ title }}", "Harbor")]
    [TestCase("{{ if yes }}x{{ else }}y{{ end }}", "x")]
    [TestCase("{{ if missing }}x{{ else }}y{{ end }}", "y")]
    [TestCase("{{ inner.size }}", "3 in")]
    [TestCase("{{ inner[\"large square\"] }}", "4 in")]
    [TestCase("{{ for i in list }}{{ i.name }};{{ end }}", "a;b;")]
    [TestCase("{{ list.size }}", "2")]
    [TestCase("{{ seam }}", "1/4 in")]
    [TestCase("{{ # a remark }}z", "z")]
    public void Fills_in(string text, string expected)
    {
        WordTemplate.Parse(text).Render(Data, out var faults).ShouldBe(expected);
        faults.ShouldBeEmpty();
    }

    [TestCase("{{ tilte }}", "tilte")]
    [TestCase("{{ inner.siez }}", "siez")]
    [TestCase("{{ inner[\"small square\"] }}", "small square")]
    public void A_name_that_the_data_lacks_is_a_fault(string text, string name)
    {
        WordTemplate.Parse(text).Render(Data, out var faults);
        faults.Length.ShouldBe(1);
        faults[0].Problem.Name.ShouldContain(name);
    }

    [TestCase("{{ title = \"other\" }}")]
    [TestCase("{{ inner.size = \"other\" }}")]
    [TestCase("{{ list[0] = \"other\" }}")]
    [TestCase("{{ inner.more = 1 }}")]
    public void Data_cannot_be_changed(string text)
    {
        WordTemplate.Parse(text).Render(Data, out _);
        WordTemplate
            .Parse("{{ title }}{{ inner.size }}{{ list[0].name }}{{ list.size }}")
            .Render(Data, out var faults)
            .ShouldBe("Harbor3 ina2");
        faults.ShouldBeEmpty();
    }

    [TestCase("{{ while true }}{{ end }}")]
    [TestCase("{{ for i in 1..900; for j in 1..900; for k in 1..900; end; end; end }}")]
    [TestCase("{{ func f(n); if n > 0; f n - 1; f n - 1; f n - 1; end; end; f 19 }}")]
    [TestCase("{{ func f; f; end; f }}")]
    [TestCase(
        "{{ for i in 1..1900 }}xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx{{ end }}"
    )]
    [TestCase("{{ x = 10; for i in 1..900; x = x * x; end; x }}")]
    [CancelAfter(20_000)]
    public void Even_the_houses_templates_have_limits(string text)
    {
        WordTemplate.Parse(text).Render(Data, out var faults);
        faults.ShouldNotBeEmpty();
        faults[0].Problem.Kind.ShouldBe(WordProblemKind.TooMuch);
    }

    [TestCase("{{ date.now }}")]
    [TestCase("{{ include 'x' }}")]
    [TestCase("{{ math.random 1 2 }}")]
    [TestCase("{{ regex.match 'a' 'b' }}")]
    public void There_is_no_clock_no_file_no_chance(string text)
    {
        WordTemplate.Parse(text).Render(Data, out var faults);
        faults.ShouldNotBeEmpty();
    }

    [Test]
    public void One_template_is_filled_in_by_many_threads()
    {
        WordTemplate template = WordTemplate.Parse(
            "{{ for i in list }}{{ i.name }}{{ end }}{{ title }}"
        );
        string[] results = new string[64];
        Parallel.For(0, results.Length, i => results[i] = template.Render(Data, out _));
        results.ShouldAllBe(r => r == "abHarbor");
    }
}
