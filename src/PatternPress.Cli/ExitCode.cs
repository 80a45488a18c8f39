namespace PatternPress.Cli;

/// <summary>What a command ends with.</summary>
internal static class ExitCode
{
    /// <summary>Done; no errors in any pattern.</summary>
    public const int Clean = 0;

    /// <summary>Errors in a pattern.</summary>
    public const int Errors = 1;

    /// <summary>The command itself could not run: no such file, a wrong option, a full disk.</summary>
    public const int CouldNotRun = 2;
}
