using System.CommandLine;
using PatternPress.Cli.Commands;
using PatternPress.Cli.Files;

namespace PatternPress.Cli;

/// <summary>The command line: which commands there are, and what happens when one cannot run.</summary>
public sealed class Application(Terminal terminal, string directory)
{
    /// <summary>Runs one command.</summary>
    /// <returns>0 clean, 1 errors in a pattern, 2 could not run.</returns>
    public int Run(IReadOnlyList<string> arguments)
    {
        var root = new RootCommand(
            "Compiles quilt patterns into booklets, requirement charts and color placement charts, and checks every size."
        )
        {
            Check.Command(terminal, directory),
            Build.Command(terminal, directory),
            ProofCommand.Command(terminal, directory),
            Build.ReleaseCommand(terminal, directory),
            Compare.Command(terminal, directory),
            New.Command(terminal, directory),
            Schema.Command(terminal, directory),
            Explain.Command(terminal, directory),
        };
        try
        {
            ParseResult parsed = root.Parse(arguments);
            int code = parsed.Invoke(
                new InvocationConfiguration
                {
                    Output = terminal.Output,
                    Error = terminal.Error,
                    EnableDefaultExceptionHandler = false,
                }
            );
            return parsed.Errors.Count > 0 ? ExitCode.CouldNotRun : code;
        }
        catch (CannotRunException problem)
        {
            terminal.Error.WriteLine($"patternpress: {problem.Message}");
            return ExitCode.CouldNotRun;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            terminal.Error.WriteLine($"patternpress: {problem.Message}");
            return ExitCode.CouldNotRun;
        }
    }
}
