namespace PatternPress.Cli.Messages;

/// <summary>What a terminal can show.</summary>
/// <param name="Color">Whether to use colours; never into a file or a pipe unless asked for.</param>
/// <param name="Width">Columns to wrap at; 0 to leave lines as long as they are.</param>
public sealed record TerminalStyle(bool Color = false, int Width = 0);
