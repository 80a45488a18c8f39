using System.Collections.Immutable;
using System.Text.Json;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Cli.Messages;

/// <summary>Findings as a SARIF 2.1.0 log (OASIS), for code scanning services and editors.</summary>
/// <param name="version">The tool's own version.</param>
public sealed class SarifWriter(string version) : IMessageWriter
{
    public void Write(MessageList messages, TextWriter output)
    {
        ImmutableArray<string> codes =
        [
            .. messages
                .All.Select(message => message.Code)
                .Distinct()
                .Order(StringComparer.Ordinal),
        ];
        JsonText.Write(
            output,
            json =>
            {
                json.WriteString("$schema", "https://json.schemastore.org/sarif-2.1.0.json");
                json.WriteString("version", "2.1.0");
                json.WriteStartArray("runs");
                json.WriteStartObject();
                WriteTool(json, codes);
                json.WriteString("columnKind", "utf16CodeUnits");
                json.WriteStartArray("results");
                foreach (var message in messages.All)
                {
                    WriteResult(json, message, codes.IndexOf(message.Code));
                }

                json.WriteEndArray();
                json.WriteEndObject();
                json.WriteEndArray();
            }
        );
    }

    private void WriteTool(Utf8JsonWriter json, ImmutableArray<string> codes)
    {
        json.WriteStartObject("tool");
        json.WriteStartObject("driver");
        json.WriteString("name", "PatternPress");
        json.WriteString("version", version);
        json.WriteStartArray("rules");
        foreach (var code in codes)
        {
            json.WriteStartObject();
            json.WriteString("id", code);
            WriteText(json, "help", $"patternpress explain {code}");
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void WriteResult(Utf8JsonWriter json, Diagnostic message, int rule)
    {
        json.WriteStartObject();
        json.WriteString("ruleId", message.Code);
        json.WriteNumber("ruleIndex", rule);
        json.WriteString("level", Level(message.Severity));
        WriteText(json, "message", JsonText.Sentences(message));
        if (!message.Primary.Span.IsNone)
        {
            json.WriteStartArray("locations");
            json.WriteStartObject();
            WritePlace(json, message.Primary.Span);
            json.WriteEndObject();
            json.WriteEndArray();
        }

        WriteRelated(json, message.Others);
        json.WriteEndObject();
    }

    private static void WriteRelated(Utf8JsonWriter json, ImmutableArray<Label> others)
    {
        if (others.All(other => other.Span.IsNone))
        {
            return;
        }

        json.WriteStartArray("relatedLocations");
        var id = 0;
        foreach (var other in others.Where(other => !other.Span.IsNone))
        {
            json.WriteStartObject();
            json.WriteNumber("id", id++);
            WritePlace(json, other.Span);
            WriteText(json, "message", other.Text);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WritePlace(Utf8JsonWriter json, Span span)
    {
        json.WriteStartObject("physicalLocation");
        json.WriteStartObject("artifactLocation");
        json.WriteString("uri", Address(span.File));
        json.WriteEndObject();
        json.WriteStartObject("region");
        json.WriteNumber("startLine", span.StartLine);
        json.WriteNumber("startColumn", span.StartColumn);
        json.WriteNumber("endLine", span.EndLine);
        json.WriteNumber("endColumn", span.EndColumn);
        json.WriteEndObject();
        json.WriteEndObject();
    }

    /// <summary>A path as a URI reference: slashes, everything else that is not plain escaped.</summary>
    private static string Address(string file)
    {
        var path = string.Join(
            '/',
            file.Replace('\\', '/').Split('/').Select(Uri.EscapeDataString)
        );
        return Path.IsPathRooted(file) ? $"file://{path}" : path;
    }

    private static void WriteText(Utf8JsonWriter json, string name, string text)
    {
        json.WriteStartObject(name);
        json.WriteString("text", text);
        json.WriteEndObject();
    }

    private static string Level(Severity severity) =>
        severity switch
        {
            Severity.Error => "error",
            Severity.Warning => "warning",
            _ => "note",
        };
}
