namespace PatternPress.Cli.Messages;

/// <summary>One way of showing findings: for a terminal, for a service, for a program.</summary>
public interface IMessageWriter
{
    /// <summary>Writes all findings of a run. Called once: some formats are one document.</summary>
    void Write(MessageList messages, TextWriter output);
}
