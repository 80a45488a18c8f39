using System.CommandLine;
using System.CommandLine.Help;
using PatternPress.Cli.Commands;
using PatternPress.Cli.Files;

namespace PatternPress.Cli;

/// <summary>The command line: which commands there are, and what happens when one cannot run.</summary>
public sealed class Application(Terminal terminal, string directory)
{
    private static readonly (string Name, Func<Terminal, string, Command> Make)[] _commands =
    [
        ("check", Check.Command),
        ("build", Build.Command),
        ("proof", ProofCommand.Command),
        ("release", Build.ReleaseCommand),
        ("compare", Compare.Command),
        ("new", New.Command),
        ("schema", Schema.Command),
        ("explain", Explain.Command),
    ];

    /// <summary>Runs one command.</summary>
    /// <returns>0 clean, 1 errors in a pattern, 2 could not run.</returns>
    public int Run(IReadOnlyList<string> arguments)
    {
        // Not a root command: it asks the system for the program's name, which takes longer than reading a pattern.
        var root = new Command(
            "patternpress",
            "Compiles quilt patterns into booklets, requirement charts and color placement charts, and checks every size."
        )
        {
            new HelpOption(),
            new VersionOption(),
        };
        // Only what is asked for is made ready: a check need not load what writes pages.
        int asked =
            arguments.Count == 0
                ? -1
                : Array.FindIndex(_commands, command => command.Name == arguments[0]);
        for (int i = 0; i < _commands.Length; i++)
        {
            if (asked < 0 || i == asked)
            {
                root.Add(_commands[i].Make(terminal, directory));
            }
        }
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
