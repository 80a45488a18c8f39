using PatternPress.Cli.Messages;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Tests.Cli.Messages;

public sealed class GitHubWriterTests
{
    [Test]
    public void Findings_become_workflow_commands() =>
        SampleMessages.ShouldMatch(
            "github",
            SampleMessages.Written(new GitHubWriter(), SampleMessages.All)
        );

    [Test]
    public void Every_finding_is_one_line() =>
        SampleMessages
            .Written(new GitHubWriter(), SampleMessages.All)
            .TrimEnd('\n')
            .Split('\n')
            .Length.ShouldBe(SampleMessages.All.All.Length);

    [Test]
    public void Signs_of_the_format_are_escaped()
    {
        var found = Diagnostic.Error(
            "PP0100",
            "a, b: 5%\r\nc",
            new Span("x,y.yaml", 1, 2, 1, 3),
            "",
            "50%"
        );
        SampleMessages
            .Written(new GitHubWriter(), new([found], []))
            .ShouldBe(
                "::error file=x%2Cy.yaml,line=1,endLine=1,col=2,endColumn=3,"
                    + "title=PP0100%3A a%2C b%3A 5%25%0D%0Ac::a, b: 5%25%0D%0Ac%0A50%25\n"
            );
    }

    [Test]
    public void A_span_of_several_lines_has_no_columns() =>
        SampleMessages
            .Written(new GitHubWriter(), new([SampleMessages.Rows], []))
            .ShouldStartWith(
                "::error file=patterns/harbor lights.quilt.yaml,line=11,endLine=13,title="
            );
}
