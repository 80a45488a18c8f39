namespace PatternPress.Cli;

/// <summary>A command cannot run as asked; the message says why and what to do, for the person at the keyboard.</summary>
public sealed class CannotRunException(string message) : Exception(message);
