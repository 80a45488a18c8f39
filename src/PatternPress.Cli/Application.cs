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
        // Only what is asked for is made ready: a check need not load what writes pages, nor the words of the help.
        ParseResult parsed = Root(IsPlain(arguments) ? arguments[0] : null).Parse(arguments);
        if (parsed.Errors.Count > 0)
        {
            parsed = Root(null).Parse(arguments);
        }
        try
        {
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

    /// <summary>Whether it is a command without options.</summary>
    private static bool IsPlain(IReadOnlyList<string> arguments) =>
        arguments.Count > 0
        && Array.Exists(_commands, command => command.Name == arguments[0])
        && !arguments.Any(argument => argument is "/?" or "/h" || argument.StartsWith('-'));

    /// <summary>Not a root command: that asks the system for the program's name, which takes longer than reading a pattern.</summary>
    /// <param name="only">The one command to make ready; null for all, and the help.</param>
    private Command Root(string? only)
    {
        var root = new Command(
            "patternpress",
            "Compiles quilt patterns into booklets, requirement charts and color placement charts, and checks every size."
        );
        if (only is null)
        {
            root.Add(new HelpOption());
            root.Add(new VersionOption());
        }
        foreach ((string name, Func<Terminal, string, Command> make) in _commands)
        {
            if (only is null || name == only)
            {
                root.Add(make(terminal, directory));
            }
        }
        return root;
    }
}
