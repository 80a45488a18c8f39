using System.Text.Json;
using PatternPress.Cli.Messages;

namespace PatternPress.Tests.Cli.Messages;

public sealed class JsonMessageWriterTests
{
    [Test]
    public void Findings_become_one_document() =>
        SampleMessages.ShouldMatch(
            "json",
            SampleMessages.Written(new JsonMessageWriter(), SampleMessages.All)
        );

    [Test]
    public void Without_findings_it_is_a_document_too()
    {
        using var document = JsonDocument.Parse(
            SampleMessages.Written(new JsonMessageWriter(), new([], []))
        );
        document.RootElement.GetProperty("messages").GetArrayLength().ShouldBe(0);
        document.RootElement.GetProperty("summary").GetProperty("errors").GetInt32().ShouldBe(0);
    }

    [Test]
    public void All_that_a_finding_says_is_in_it()
    {
        using var document = JsonDocument.Parse(
            SampleMessages.Written(new JsonMessageWriter(), SampleMessages.All)
        );
        var messages = document.RootElement.GetProperty("messages").EnumerateArray().ToList();
        messages.Count.ShouldBe(SampleMessages.All.All.Length);
        foreach (var (json, found) in messages.Zip(SampleMessages.All.All))
        {
            json.GetProperty("code").GetString().ShouldBe(found.Code);
            json.GetProperty("title").GetString().ShouldBe(found.Title);
            json.GetProperty("text").GetString().ShouldBe(found.Text);
            json.GetProperty("hint").GetString().ShouldBe(found.Hint);
            json.GetProperty("sizes")
                .EnumerateArray()
                .Select(size => size.GetString())
                .ShouldBe(found.Sizes);
            json.GetProperty("others").GetArrayLength().ShouldBe(found.Others.Length);
            if (!found.Primary.Span.IsNone)
            {
                json.GetProperty("endColumn").GetInt32().ShouldBe(found.Primary.Span.EndColumn);
            }
        }
    }
}
