using System.Text.Json;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Cli.Messages;

/// <summary>Findings as one JSON document, for programs.</summary>
public sealed class JsonMessageWriter : IMessageWriter
{
    /// <summary>Raised when a member changes its meaning or goes away; a new member does not raise it.</summary>
    private const int Format = 1;

    public void Write(MessageList messages, TextWriter output) =>
        JsonText.Write(
            output,
            json =>
            {
                json.WriteNumber("format", Format);
                json.WriteStartArray("messages");
                foreach (var message in messages.All)
                {
                    WriteMessage(json, message);
                }

                json.WriteEndArray();
                json.WriteStartObject("summary");
                json.WriteNumber("errors", messages.Errors);
                json.WriteNumber("warnings", messages.Warnings);
                json.WriteNumber("notes", messages.Notes);
                json.WriteString("text", messages.Summary());
                json.WriteEndObject();
            }
        );

    private static void WriteMessage(Utf8JsonWriter json, Diagnostic message)
    {
        json.WriteStartObject();
        json.WriteString("code", message.Code);
        json.WriteString("severity", message.Severity.ToString().ToLowerInvariant());
        json.WriteString("title", message.Title);
        WritePlace(json, message.Primary);
        json.WriteStartArray("others");
        foreach (var other in message.Others)
        {
            json.WriteStartObject();
            WritePlace(json, other);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteString("text", message.Text);
        json.WriteString("hint", message.Hint);
        json.WriteStartArray("sizes");
        foreach (var size in message.Sizes)
        {
            json.WriteStringValue(size);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WritePlace(Utf8JsonWriter json, Label label)
    {
        Span span = label.Span;
        if (!span.IsNone)
        {
            json.WriteString("file", span.File);
            json.WriteNumber("line", span.StartLine);
            json.WriteNumber("column", span.StartColumn);
            json.WriteNumber("endLine", span.EndLine);
            json.WriteNumber("endColumn", span.EndColumn);
        }

        json.WriteString("label", label.Text);
    }
}
