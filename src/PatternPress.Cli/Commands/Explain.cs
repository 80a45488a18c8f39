using System.CommandLine;
using PatternPress.Cli.Files;
using PatternPress.Quilting.Rules;
using PatternPress.Source;

namespace PatternPress.Cli.Commands;

/// <summary><c>explain</c>: what a message's code means, or how a printed number came about.</summary>
internal static class Explain
{
    public static Command Command(Terminal terminal, string directory)
    {
        var what = new Argument<string[]>("what")
        {
            Description =
                "The code of a message (PP0210), or a pattern and a number of it (harbor-lights throw yards B). Without it all codes are listed.",
            Arity = ArgumentArity.ZeroOrMore,
        };
        Option<string?> templates = CommonOptions.Templates();
        var command = new Command(
            "explain",
            "Explains a message by its code, or how a printed number came about."
        )
        {
            what,
            templates,
        };
        command.SetAction(parsed =>
        {
            string[] words = parsed.GetValue(what) ?? [];
            return words.Length switch
            {
                0 => List(terminal),
                1 when LooksLikeCode(words[0]) => Page(terminal, words[0]),
                _ => new NumberExplanation(terminal, directory).Explain(
                    words,
                    TemplateFolder.Find(directory, parsed.GetValue(templates))
                ),
            };
        });
        return command;
    }

    // "PP0210", and what was meant to be one.
    private static bool LooksLikeCode(string word) =>
        word.Trim().StartsWith("pp", StringComparison.OrdinalIgnoreCase)
        && word.Any(char.IsAsciiDigit)
        && !word.EndsWith(PatternFiles.Extension, StringComparison.OrdinalIgnoreCase);

    private static int List(Terminal terminal)
    {
        foreach (string known in Explanations.Codes)
        {
            terminal.Output.WriteLine($"{known}  {Explanations.TitleOf(known)}");
        }
        return ExitCode.Clean;
    }

    private static int Page(Terminal terminal, string code)
    {
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
