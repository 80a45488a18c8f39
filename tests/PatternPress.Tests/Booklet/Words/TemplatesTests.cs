using System.Text.RegularExpressions;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Model;
using PatternPress.Tests.Booklet.Sections;
using Scriban;
using Scriban.Syntax;

namespace PatternPress.Tests.Booklet.Words;

/// <summary>The repository's own templates.</summary>
public sealed partial class TemplatesTests
{
    private static readonly string Guide = File.ReadAllText(
        Path.Combine(Repository.Root, "templates", "README.md")
    );

    private static IEnumerable<string> Names => BookletTemplates.Templates.Names;

    [TestCaseSource(nameof(Names))]
    public void Every_template_can_be_read(string name) =>
        BookletTemplates.Templates.Find(name)!.Faults.ShouldBeEmpty();

    [TestCaseSource(nameof(Names))]
    public void Every_name_a_template_uses_is_in_the_guide(string name)
    {
        HashSet<string> known = NamesIn(SectionOf("Names in every text"));
        known.UnionWith(NamesIn(SectionOf("Figures of the pattern")));
        known.UnionWith(NamesIn(RowOf(name).Split('|')[2]));
        known.Add("place");
        Template template = Template.Parse(BookletTemplates.Files[$"en/{name}.md"]);
        var used = new HashSet<string>();
        var loops = new HashSet<string>();
        Collect(template.Page!, used, loops);
        used.Except(loops).ShouldBeSubsetOf(known);
    }

    [TestCaseSource(nameof(Names))]
    public void Places_are_those_in_the_guide(string name)
    {
        if (name.StartsWith("techniques/", StringComparison.Ordinal))
        {
            return;
        }
        string[] used =
        [
            .. PlaceCall()
                .Matches(BookletTemplates.Files[$"en/{name}.md"])
                .Select(m => m.Groups[1].Value)
                .Order(),
        ];
        used.ShouldBeUnique();
        NamesIn(RowOf(name).Split('|')[3]).Order().ShouldBe(used);
    }

    [Test]
    public void House_rules_spell_out_the_built_in_defaults()
    {
        House house = Manuscripts.Of("towpath").Pattern.House;
        (house with { Without = House.Default.Without }).ShouldBe(House.Default);
    }

    [Test]
    public void Another_language_takes_its_own_folder_and_else_English()
    {
        Dictionary<string, string> files = new(BookletTemplates.Files)
        {
            ["fr/labels.yaml"] = "and: et\n",
            ["fr/cutting.md"] = "# Coupe\n",
        };
        PatternPress
            .Booklet.Words.Templates.Read(files, "fr-CA")
            .TitleOf("cutting")
            .ShouldBe("Coupe");
        PatternPress.Booklet.Words.Templates.Read(files, "fr").Labels["and"].ShouldBe("et");
        PatternPress.Booklet.Words.Templates.Read(files, "de").Language.ShouldBe("en");
        PatternPress.Booklet.Words.Templates.Read(files, "../../etc").Language.ShouldBe("en");
    }

    [Test]
    public void Broken_templates_are_reported_with_their_place()
    {
        Dictionary<string, string> files = new(BookletTemplates.Files)
        {
            ["en/about.md"] = "# About\n\n{{ if }}\n",
            ["documents.yaml"] = "booklet:\n  sections: [cover, cuting]\n",
        };
        PatternPress.Booklet.Words.Templates templates = PatternPress.Booklet.Words.Templates.Read(
            files,
            "en"
        );
        templates.Diagnostics.Select(d => d.Code).Distinct().Order().ShouldBe(["PP0452", "PP0454"]);
        templates
            .Diagnostics.First(d => d.Code == "PP0452")
            .Primary.Span.ToString()
            .ShouldStartWith("templates/en/about.md:3:");
        templates.Diagnostics.First(d => d.Code == "PP0454").Hint!.ShouldContain("cutting");
    }

    private static void Collect(ScriptNode node, HashSet<string> used, HashSet<string> loops)
    {
        switch (node)
        {
            case ScriptForStatement { Variable: ScriptVariable loop } each:
                loops.Add(loop.Name);
                break;
            case ScriptMemberExpression member:
                Collect(member.Target!, used, loops);
                return;
            case ScriptVariable variable:
                used.Add(variable.Name);
                break;
        }
        for (int i = 0; i < node.ChildrenCount; i++)
        {
            if (node.GetChildren(i) is { } child)
            {
                Collect(child, used, loops);
            }
        }
    }

    private static string RowOf(string name)
    {
        string row = name.StartsWith("techniques/", StringComparison.Ordinal)
            ? "techniques/*"
            : name;
        return SectionOf("Names in single texts")
            .Split('\n')
            .Single(l => l.StartsWith($"| `{row}` |", StringComparison.Ordinal));
    }

    private static string SectionOf(string heading)
    {
        int start = Guide.IndexOf($"### {heading}", StringComparison.Ordinal);
        int end = Guide.IndexOf("\n##", start + 4, StringComparison.Ordinal);
        return Guide[start..end];
    }

    private static HashSet<string> NamesIn(string text) =>
        [
            .. Code()
                .Matches(text)
                .Select(m => m.Groups[1].Value.Split('.', '[')[0])
                .Where(n => n.Length > 0),
        ];

    [GeneratedRegex("place \"([^\"]+)\"")]
    private static partial Regex PlaceCall();

    [GeneratedRegex("`([^`]+)`")]
    private static partial Regex Code();
}
