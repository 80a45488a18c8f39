using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Cli.Messages;

/// <summary>What the JSON formats share: one indented document, members in the order they are written.</summary>
internal static class JsonText
{
    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static void Write(TextWriter output, Action<Utf8JsonWriter> members)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Options))
        {
            json.WriteStartObject();
            members(json);
            json.WriteEndObject();
        }

        output.Write(Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length));
        output.Write('\n');
    }

    /// <summary>Everything a message says, in one text: for formats that have room for one only.</summary>
    public static string Sentences(Diagnostic message)
    {
        var text = new StringBuilder(message.Title);
        if (message.Primary.Text.Length > 0)
        {
            text.Append(": ").Append(message.Primary.Text);
        }

        text.Append('.');
        if (message.Text.Length > 0)
        {
            text.Append('\n').Append(message.Text);
        }

        if (message.Sizes.Length > 0)
        {
            text.Append("\nSizes: ").AppendJoin(", ", message.Sizes).Append('.');
        }

        if (message.Hint is { Length: > 0 } hint)
        {
            text.Append("\nHint: ").Append(hint);
        }

        return text.ToString();
    }
}
