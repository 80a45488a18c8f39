using System.Text.Json;
using PatternPress.Cli.Messages;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Tests.Cli.Messages;

/// <summary>Members required by OASIS SARIF 2.1.0 (sections 3.13, 3.14, 3.18, 3.19, 3.27, 3.29, 3.30); numbers from memory.</summary>
public sealed class SarifWriterTests
{
    private static readonly SarifWriter Writer = new("1.2.3");

    [Test]
    public void Findings_become_a_log() =>
        SampleMessages.ShouldMatch("sarif", SampleMessages.Written(Writer, SampleMessages.All));

    [Test]
    public void Required_members_are_there()
    {
        using var document = JsonDocument.Parse(SampleMessages.Written(Writer, SampleMessages.All));
        var log = document.RootElement;
        log.GetProperty("version").GetString().ShouldBe("2.1.0");
        var run = log.GetProperty("runs").EnumerateArray().ShouldHaveSingleItem();
        run.GetProperty("columnKind").GetString().ShouldBe("utf16CodeUnits");
        var driver = run.GetProperty("tool").GetProperty("driver");
        driver.GetProperty("name").GetString().ShouldNotBeNullOrEmpty();
        var rules = driver
            .GetProperty("rules")
            .EnumerateArray()
            .Select(rule => rule.GetProperty("id").GetString())
            .ToList();
        rules.ShouldBeUnique();
        var results = run.GetProperty("results").EnumerateArray().ToList();
        results.Count.ShouldBe(SampleMessages.All.All.Length);
        foreach (var result in results)
        {
            result.GetProperty("message").GetProperty("text").GetString().ShouldNotBeNullOrEmpty();
            result.GetProperty("level").GetString().ShouldBeOneOf("error", "warning", "note");
            rules[result.GetProperty("ruleIndex").GetInt32()]
                .ShouldBe(result.GetProperty("ruleId").GetString());
            foreach (var place in Places(result))
            {
                var physical = place.GetProperty("physicalLocation");
                var uri = physical.GetProperty("artifactLocation").GetProperty("uri").GetString()!;
                Uri.IsWellFormedUriString(uri, UriKind.Relative).ShouldBeTrue(uri);
                var region = physical.GetProperty("region");
                region.GetProperty("startLine").GetInt32().ShouldBeGreaterThan(0);
                region.GetProperty("startColumn").GetInt32().ShouldBeGreaterThan(0);
                region
                    .GetProperty("endLine")
                    .GetInt32()
                    .ShouldBeGreaterThanOrEqualTo(region.GetProperty("startLine").GetInt32());
            }
        }
    }

    private static IEnumerable<JsonElement> Places(JsonElement result)
    {
        foreach (var name in new[] { "locations", "relatedLocations" })
        {
            if (result.TryGetProperty(name, out var places))
            {
                foreach (var place in places.EnumerateArray())
                {
                    yield return place;
                }
            }
        }
    }

    [Test]
    public void A_finding_without_a_place_has_no_locations()
    {
        using var document = JsonDocument.Parse(
            SampleMessages.Written(Writer, new([SampleMessages.Nowhere], []))
        );
        document
            .RootElement.GetProperty("runs")[0]
            .GetProperty("results")[0]
            .TryGetProperty("locations", out _)
            .ShouldBeFalse();
    }

    [Test]
    public void A_full_path_becomes_a_file_address()
    {
        var found = Diagnostic.Error(
            "PP0100",
            "wrong",
            new Span("/home/a b/c#.yaml", 1, 1, 1, 2),
            "here"
        );
        SampleMessages
            .Written(Writer, new([found], []))
            .ShouldContain("\"file:///home/a%20b/c%23.yaml\"");
    }
}
