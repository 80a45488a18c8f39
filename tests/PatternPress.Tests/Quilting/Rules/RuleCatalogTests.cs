using System.Text.RegularExpressions;
using PatternPress.Quilting.Rules;

namespace PatternPress.Tests.Quilting.Rules;

/// <summary>Keeps the catalogue of rules, their pages and the list of released codes together.</summary>
public sealed partial class RuleCatalogTests
{
    // A name must read well after "allow": it names the fault. These words begin the name of a remedy or of a check.
    private static readonly string[] _remedies =
    [
        "Add",
        "Allow",
        "Avoid",
        "Ban",
        "Check",
        "Disallow",
        "Ensure",
        "Fix",
        "Forbid",
        "Must",
        "Prefer",
        "Require",
        "Should",
        "Use",
        "Validate",
        "Verify",
    ];

    private static string Released => Path.Combine(RulePage.Folder, "RELEASED.txt");

    [Test]
    public void Codes_are_unique_well_formed_and_in_order()
    {
        string[] reading = [.. RuleCatalog.Reading.Select(rule => rule.Code)];
        string[] checking = [.. RuleCatalog.Checking.Select(rule => rule.Code)];
        reading.ShouldBe(reading.Order(StringComparer.Ordinal));
        checking.ShouldBe(checking.Order(StringComparer.Ordinal));
        reading.Concat(checking).ShouldBeUnique();
        reading.Concat(checking).ShouldAllBe(code => Code().IsMatch(code));
    }

    [Test]
    public void The_catalogue_lists_every_rule_there_is() =>
        RuleCatalog
            .All.Select(rule => rule.GetType())
            .ShouldBe(
                typeof(Rule)
                    .Assembly.GetTypes()
                    .Where(type => type.IsSubclassOf(typeof(Rule)) && !type.IsAbstract),
                ignoreOrder: true
            );

    [Test]
    public void A_rule_is_named_by_its_code_and_its_fault()
    {
        foreach (Rule rule in RuleCatalog.All)
        {
            rule.Name.ShouldStartWith(rule.Code + "_");
            string fault = rule.Name[(rule.Code.Length + 1)..];
            fault.ShouldNotBeEmpty();
            FirstWord().Match(fault).Value.ShouldNotBeOneOf(_remedies);
        }
    }

    [Test]
    public void Every_rule_has_a_page_of_its_name_and_title()
    {
        Dictionary<string, RulePage> pages = RulePage.All().ToDictionary(page => page.Name);
        foreach (Rule rule in RuleCatalog.All)
        {
            pages.ShouldContainKey(rule.Name);
            pages[rule.Name].Title.ShouldBe($"# {rule.Code} {rule.Title}");
        }
    }

    [Test]
    public void Every_page_has_all_headings_in_order_and_says_something_under_each()
    {
        foreach (RulePage page in RulePage.All())
        {
            page.Sections.ShouldBe(RulePage.Headings, page.Name);
            page.Title.ShouldStartWith($"# {page.Code} ");
            foreach (string heading in RulePage.Headings)
            {
                page.Words(heading).ShouldNotBeEmpty($"{page.Name}: {heading}");
            }
        }
    }

    [Test]
    public void Every_code_that_any_part_of_the_program_reports_is_explained()
    {
        IEnumerable<string> reported = Directory
            .EnumerateFiles(
                Path.Combine(Repository.Root, "src"),
                "*.cs",
                SearchOption.AllDirectories
            )
            .SelectMany(file => Literal().Matches(File.ReadAllText(file)))
            .Select(match => match.Groups[1].Value)
            .Distinct();
        reported.Except(Explanations.Codes).ShouldBeEmpty();
        foreach (string code in Explanations.Codes)
        {
            Explanations.Find(code).ShouldNotBeNull().ShouldStartWith($"# {code} ");
            Explanations.TitleOf(code).ShouldNotBeEmpty();
        }
    }

    [Test]
    public void Every_explained_code_is_listed_as_released_and_none_has_vanished() =>
        File.ReadAllLines(Released)
            .Where(line => line.Length > 0 && line[0] != '#')
            .Select(line => line.Split(' ')[0])
            .ShouldBe(Explanations.Codes, "Add new codes to RELEASED.txt; never take one out.");

    [GeneratedRegex("^PP0[1-59][0-9]{2}$")]
    private static partial Regex Code();

    [GeneratedRegex("^[A-Z][a-z]*")]
    private static partial Regex FirstWord();

    [GeneratedRegex("\"(PP[0-9]{4})\"")]
    private static partial Regex Literal();
}
