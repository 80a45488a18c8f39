using PatternPress.Proofing;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Cli.Commands;

/// <summary>Turns what the proof refutes into findings. Any of them keeps a pattern from being written.</summary>
internal static class ProofFindings
{
    /// <param name="file">The pattern's file: a refuted number has no single place in it.</param>
    public static IEnumerable<Diagnostic> Of(ProofReport report, string file) =>
        report
            .Mistakes.Where(mistake => mistake.Kind != MistakeKind.Excess)
            .Select(mistake => new Diagnostic(
                "PP0901",
                Severity.Error,
                "a printed number does not stand the test of making",
                new Label(new Span(file, 1, 1, 1, 1), "this pattern"),
                [],
                mistake.Text,
                "this is a fault of the program, not of your pattern: please report it with the file",
                mistake.Size is null ? [] : [mistake.Size]
            ));
}
