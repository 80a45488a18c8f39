using System.CommandLine;
using PatternPress.Typesetting;

namespace PatternPress.Cli.Commands;

/// <summary>The papers that documents are written for.</summary>
internal static class Papers
{
    private const string Both = "both";

    private static readonly (string Name, PaperSize Size)[] _all =
    [
        ("letter", PaperSize.Letter),
        ("a4", PaperSize.A4),
    ];

    public static Option<string> Option(string usual = Both)
    {
        var option = new Option<string>("--paper")
        {
            Description = "The paper to write for.",
            DefaultValueFactory = _ => usual,
        };
        option.AcceptOnlyFromAmong([.. _all.Select(p => p.Name), Both]);
        return option;
    }

    public static (string Name, PaperSize Size)[] Of(string name) =>
        [.. _all.Where(paper => name == Both || name == paper.Name)];
}
