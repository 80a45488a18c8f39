using System.Text.RegularExpressions;
using PatternPress.Source.Diagnostics;
using PatternPress.Source.Shapes;
using PatternPress.Source.Syntax;

namespace PatternPress.Tests.Source;

/// <summary>Every finding of reading has its page, and the page's own examples prove it right.</summary>
public sealed partial class ReadingPageTests
{
    private static readonly string[] Headings =
    [
        "## What it checks",
        "## Why it matters",
        "## Example",
        "## Instead",
        "## When to ignore it",
    ];

    private static string[] Codes => [.. ReadingPages.Codes];

    [TestCaseSource(nameof(Codes))]
    public void The_example_has_the_fault_and_the_other_has_not(string code)
    {
        var page = ReadingPages.Find(code)!;
        if (Fence(page, "## Example") is { } example)
        {
            Found(example).Distinct().ShouldBe([code], example);
        }

        if (Fence(page, "## Instead") is { } instead)
        {
            Found(instead).ShouldBeEmpty(instead);
        }
    }

    [TestCaseSource(nameof(Codes))]
    public void Pages_have_the_same_headings(string code)
    {
        var page = ReadingPages.Find(code)!;
        page.ShouldStartWith($"# {code} ");
        page.Split('\n')
            .Where(line => line.StartsWith("## ", StringComparison.Ordinal))
            .ShouldBe(Headings);
    }

    [Test]
    public void Every_code_that_reading_reports_has_a_page_and_the_other_way_round()
    {
        var folder = Path.Combine(Repository.Root, "src", "PatternPress.Source");
        var reported = Directory
            .EnumerateFiles(folder, "*Fault*.cs", SearchOption.AllDirectories)
            .Concat(
                Directory.EnumerateFiles(folder, "SyntaxErrors.cs", SearchOption.AllDirectories)
            )
            .SelectMany(file =>
                CodeLiteral().Matches(File.ReadAllText(file)).Select(match => match.Groups[1].Value)
            )
            .Distinct()
            .Order(StringComparer.Ordinal);
        ReadingPages.Codes.ShouldBe(reported);
        ReadingPages.Find("PP0999").ShouldBeNull();
        ReadingPages.Find("pp0130").ShouldNotBeNull();
    }

    [GeneratedRegex("\"(PP01[0-9]{2})\"")]
    private static partial Regex CodeLiteral();

    [GeneratedRegex("^(?=[a-z])", RegexOptions.Multiline)]
    private static partial Regex SectionStart();

    private static string? Fence(string page, string heading)
    {
        var after = page[(page.IndexOf(heading, StringComparison.Ordinal) + heading.Length)..];
        after = after[..after.IndexOf("\n## ", StringComparison.Ordinal)];
        var start = after.IndexOf("```yaml", StringComparison.Ordinal);
        return start < 0
            ? null
            : after[(start + 3)..after.LastIndexOf("```", StringComparison.Ordinal)];
    }

    /// <summary>What is found in the sample pattern with the fence's sections in place of its own; a fence marked
    /// "whole" stands alone.</summary>
    private static List<string> Found(string fence)
    {
        var line = fence.IndexOf('\n') + 1;
        var text = fence[line..];
        if (!fence[..line].Contains("whole", StringComparison.Ordinal))
        {
            var given = SectionStart().Split(text).Where(section => section.Length > 0).ToList();
            var kept = SectionStart()
                .Split(SamplePattern.Text)
                .Where(section => !given.Any(one => Key(one) == Key(section)));
            text = string.Concat(kept.Concat(given));
        }

        var tree = SyntaxTree.Read("a.yaml", text);
        return
        [
            .. tree
                .Diagnostics.Concat(ShapeChecker.Check(tree, SamplePattern.Shape))
                .Select(found => found.Code),
        ];
    }

    private static string Key(string section) => section[..Math.Max(section.IndexOf(':'), 0)];
}
