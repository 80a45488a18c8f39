using System.CommandLine;
using PatternPress.Cli.Messages;

namespace PatternPress.Cli.Commands;

/// <summary>Arguments and options that several commands share.</summary>
internal static class CommonOptions
{
    public static Argument<string[]> Paths() =>
        new("patterns")
        {
            Description = "Pattern files, or folders of them. Without any: the folder patterns.",
            Arity = ArgumentArity.ZeroOrMore,
        };

    public static Option<string> Messages()
    {
        var option = new Option<string>("--messages")
        {
            Description = "How findings are written.",
            DefaultValueFactory = _ => MessageFormats.Default,
        };
        option.AcceptOnlyFromAmong([.. MessageFormats.Names]);
        return option;
    }

    public static Option<string?> Templates() =>
        new("--templates")
        {
            Description =
                "The folder of house rules, words, looks and fonts. Without it: the nearest folder templates.",
        };

    public static Option<string[]> Also() =>
        new("--also")
        {
            Description =
                "A document to make that is made on request only (templates/documents.yaml), or \"all\"; may be given several times.",
            DefaultValueFactory = _ => [],
        };

    public static Option<string?> Style() =>
        new("--style")
        {
            Description =
                "The style of the pages: a file in the folder looks of the templates. Without it: the house's own.",
        };

    public static Option<string> Output() =>
        new("--output")
        {
            Description = "The folder to write to; each pattern gets a folder of its own in it.",
            DefaultValueFactory = _ => "out",
        };
}
