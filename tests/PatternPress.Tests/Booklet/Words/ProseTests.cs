using System.Diagnostics;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Measures;
using PatternPress.Source;

namespace PatternPress.Tests.Booklet.Words;

public sealed class ProseTests
{
    private static readonly WordData Data = PatternWords.Of(
        SampleTables.Small,
        new NumberWords(LengthUnit.Inch, BookletTemplates.Labels),
        ["cutting", "cautions"]
    );

    [TestCase("It takes {{ yards \"A\" \"throw\" }}.", "It takes 2 7/8 yd.")]
    [TestCase("It takes {{ yards \"A\" }}.", "It takes 1 1/2 yd (Crib) or 2 7/8 yd (Throw).")]
    [TestCase("{{ yards \"backing\" \"crib\" }}", "2 1/2 yd")]
    [TestCase("{{ yards \"binding\" \"crib\" }}", "3/8 yd")]
    [TestCase("{{ yards \"B\" \"throw\" }}", "1/2 yd")]
    [TestCase("{{ size \"throw\" }}", "60 × 72 in")]
    [TestCase("{{ name \"throw\" }}", "Throw")]
    [TestCase("{{ blocks \"throw\" }}", "30")]
    [TestCase("{{ blocks }}", "12 (Crib) or 30 (Throw)")]
    [TestCase("{{ count \"L1\" \"crib\" }}", "12")]
    [TestCase("{{ count \"A1\" \"throw\" }}", "120")]
    [TestCase("{{ cut \"A1\" }}", "3 1/2 in square")]
    [TestCase("{{ strips \"A\" \"crib\" }}", "5")]
    [TestCase("{{ finished \"lamp\" }}", "6 in square (Crib) or 12 in square (Throw)")]
    [TestCase("{{ unfinished \"lamp\" \"throw\" }}", "12 1/2 in square")]
    [TestCase("{{ fabric \"B\" }}", "Amber (fabric B)")]
    [TestCase("{{ \"B\" | fabric }}", "Amber (fabric B)")]
    public void Quotes_the_tables(string text, string expected)
    {
        string rendered = Prose(text).Render(Data, out var faults);
        faults.ShouldBeEmpty();
        rendered.Replace('\u00a0', ' ').ShouldBe(expected);
    }

    [Test]
    public void A_name_with_signs_of_Markdown_keeps_them() =>
        Prose("{{ fabric \"A\" }}").Render(Data, out _).ShouldBe("Ink \\*dark\\* (fabric A)");

    [TestCase("{{ yards \"Q\" \"throw\" }}", WordProblemKind.UnknownFabric, "Q")]
    [TestCase("{{ yards \"A\" \"king\" }}", WordProblemKind.UnknownSize, "king")]
    [TestCase("{{ size \"king\" }}", WordProblemKind.UnknownSize, "king")]
    [TestCase("{{ count \"L7\" \"crib\" }}", WordProblemKind.UnknownThing, "L7")]
    [TestCase("{{ page \"nowhere\" }}", WordProblemKind.UnknownThing, "nowhere")]
    [TestCase("{{ yrads \"A\" }}", WordProblemKind.UnknownName, "yrads")]
    [TestCase("{{ yards }}", WordProblemKind.WrongValues, null)]
    [TestCase("{{ yards 3 }}", WordProblemKind.WrongValues, null)]
    [TestCase("{{ size \"throw\" \"crib\" \"A\" }}", WordProblemKind.WrongValues, null)]
    [TestCase("{{ yards \"A }}", WordProblemKind.Unreadable, null)]
    [TestCase("{{ yards \"A\"", WordProblemKind.Unreadable, null)]
    [TestCase("{{ 1 + 1 }}", WordProblemKind.NotAllowed, "arithmetic")]
    [TestCase("{{ x = 3 }}", WordProblemKind.NotAllowed, "an assignment")]
    [TestCase("{{ for i in 1..3 }}a{{ end }}", WordProblemKind.NotAllowed, "a loop")]
    [TestCase("{{ if true }}a{{ end }}", WordProblemKind.NotAllowed, "a condition")]
    [TestCase("{{ func f; ret 1; end }}", WordProblemKind.NotAllowed, "a function of its own")]
    public void Says_what_is_wrong(string text, WordProblemKind kind, string? name)
    {
        Prose("before " + text).Render(Data, out var faults).ShouldBeEmpty();
        faults.ShouldNotBeEmpty();
        faults[0].Problem.Kind.ShouldBe(kind);
        if (name is not null)
        {
            faults[0].Problem.Name.ShouldBe(name);
        }
        faults[0].Offset.ShouldBeInRange(7, 7 + text.Length);
    }

    [Test]
    public void All_faults_come_at_once()
    {
        Prose("{{ yards \"Q\" }} {{ size \"no\" }} {{ count \"nil\" }}")
            .Render(Data, out var faults);
        faults.Select(f => f.Problem.Name).ShouldBe(["Q", "no", "nil"]);
    }

    [Test]
    public void A_fault_is_found_at_its_place()
    {
        const string text = "line one\nline two {{ yards \"Q\" }} end";
        Prose(text).Render(Data, out var faults);
        text.Substring(faults[0].Offset, faults[0].Length).ShouldContain("yards");
    }

    public static IEnumerable<TestCaseData> HostileTexts()
    {
        yield return Hostile("parentheses", "{{ " + new string('(', 30_000));
        yield return Hostile("brackets", "{{ " + new string('[', 30_000));
        yield return Hostile("negations", "{{ " + new string('!', 30_000) + "true }}");
        yield return Hostile("conditions", Repeat("{{ if true }}", 4_000));
        yield return Hostile("pipes", "{{ blocks " + Repeat("| fabric ", 6_000) + "}}");
        yield return Hostile("calls", Repeat("{{ blocks }} ", 4_900));
        yield return Hostile("braces", new string('{', 60_000));
        yield return Hostile("a megabyte", new string('x', 1_000_000) + "{{ blocks }}");
        yield return Hostile("endless loop", "{{ while true }}x{{ end }}");
        yield return Hostile("huge number", "{{ 9 ** 999999999 }}");
        yield return Hostile("huge text", "{{ \"a\" * 1000000000 }}");
        yield return Hostile("files", "{{ include '/etc/passwd' }}");
        yield return Hostile("reflection", "{{ blocks.get_type }}");
        yield return Hostile("evaluation", "{{ object.eval '1' }}");
        yield return Hostile("clock", "{{ date.now }}");
        yield return Hostile("nul and controls", "a\0b\u0007{{ blocks\0 }}");
        yield return Hostile("lone surrogates", "\ud800 {{ fabric \"\ud800\" }}");

        static TestCaseData Hostile(string name, string text) =>
            new TestCaseData(text).SetArgDisplayNames(name);
        static string Repeat(string text, int times) =>
            string.Concat(Enumerable.Repeat(text, times));
    }

    [TestCaseSource(nameof(HostileTexts)), CancelAfter(20_000)]
    public void Hostile_texts_end_and_stay_small(string text)
    {
        string rendered = Prose(text).Render(Data, out _);
        rendered.Length.ShouldBeLessThanOrEqualTo(200_000);
    }

    [Test]
    public void A_text_without_figures_does_not_wake_the_template_language()
    {
        WordTemplate template = WordTemplate.Parse("plain words, 1/4 in and *emphasis*");
        template.HasFigures.ShouldBeFalse();
        template.Render(WordData.Empty, out var faults).ShouldStartWith("plain");
        faults.ShouldBeEmpty();
    }

    private static Prose Prose(string text) => new(text, (_, _) => Span.None);
}
