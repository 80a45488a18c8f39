using PatternPress.Source.Diagnostics;

namespace PatternPress.Cli.Messages;

/// <summary>The colours of a message (ECMA-48 SGR), or none.</summary>
internal sealed class Paint(bool color)
{
    public string Severity(Severity severity, string text) =>
        severity switch
        {
            Source.Diagnostics.Severity.Error => Sgr("1;31", text),
            Source.Diagnostics.Severity.Warning => Sgr("1;33", text),
            _ => Sgr("1;36", text),
        };

    public string Strong(string text) => Sgr("1", text);

    public string Frame(string text) => Sgr("34", text);

    public string Other(string text) => Sgr("36", text);

    public string Hint(string text) => Sgr("32", text);

    private string Sgr(string code, string text) =>
        color && text.Length > 0 ? $"\e[{code}m{text}\e[0m" : text;
}
