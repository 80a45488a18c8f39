namespace PatternPress.Source.Diagnostics;

/// <summary>How bad a finding is. Only <see cref="Error"/> stops a release.</summary>
public enum Severity
{
    Note,
    Warning,
    Error,
}
