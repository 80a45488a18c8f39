using System.CommandLine;
using PatternPress.Quilting.Rules;
using PatternPress.Source;

namespace PatternPress.Cli.Commands;

/// <summary><c>explain</c>: what a message's code means, in full.</summary>
internal static class Explain
{
    public static Command Command(Terminal terminal, string directory)
    {
        var what = new Argument<string?>("code")
        {
            Description = "The code of a message: PP0210. Without it all codes are listed.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var command = new Command("explain", "Explains a message by its code.") { what };
        command.SetAction(parsed => Run(terminal, parsed.GetValue(what)));
        return command;
    }

    private static int Run(Terminal terminal, string? code)
    {
        if (code is null)
        {
            foreach (string known in Explanations.Codes)
            {
                terminal.Output.WriteLine($"{known}  {Explanations.TitleOf(known)}");
            }
            return ExitCode.Clean;
        }
        string wanted = code.Trim().ToUpperInvariant();
        if (Explanations.Find(wanted) is not { } page)
        {
            string? nearest = Nearest.To(wanted, Explanations.Codes);
            throw new CannotRunException(
                $"there is no code {code}"
                    + (nearest is null ? "" : $"; did you mean {nearest}?")
                    + " (\"patternpress explain\" lists all codes)"
            );
        }
        terminal.Output.WriteLine(page.TrimEnd());
        return ExitCode.Clean;
    }
}
