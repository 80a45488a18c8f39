namespace PatternPress.Cli.Messages;

/// <summary>The message formats by the name that <c>--messages</c> takes.</summary>
internal static class MessageFormats
{
    public const string Default = "terminal";

    public static IReadOnlyList<string> Names { get; } = [Default, "github", "json", "sarif"];

    public static IMessageWriter Find(string name, Terminal terminal) =>
        name switch
        {
            "github" => new GitHubWriter(),
            "json" => new JsonMessageWriter(),
            "sarif" => new SarifWriter(ProgramVersion.Text),
            _ => new TerminalWriter(new TerminalStyle(terminal.Color, terminal.Width)),
        };
}
