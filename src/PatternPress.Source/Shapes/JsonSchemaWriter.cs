using System.Collections.Immutable;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace PatternPress.Source.Shapes;

/// <summary>Writes a shape as a JSON Schema (draft 2020-12), for editors that check and complete YAML.</summary>
public static class JsonSchemaWriter
{
    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        NewLine = "\n",
        // The schema is read by editors, never pasted into HTML.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>The schema's text, ending with a line feed.</summary>
    public static string Write(Shape shape, string title)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Options))
        {
            json.WriteStartObject();
            json.WriteString("$schema", "https://json-schema.org/draft/2020-12/schema");
            json.WriteString("title", title);
            WriteMembers(json, shape);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length) + "\n";
    }

    private static void WriteShape(Utf8JsonWriter json, Shape shape)
    {
        json.WriteStartObject();
        WriteMembers(json, shape);
        json.WriteEndObject();
    }

    private static void WriteMembers(Utf8JsonWriter json, Shape shape)
    {
        json.WriteString("description", shape.Description);
        switch (shape)
        {
            case MapShape map:
                WriteMap(json, map);
                break;
            case NamesShape names:
                json.WriteString("type", "object");
                json.WritePropertyName("propertyNames");
                json.WriteStartObject();
                WriteForm(json, names.Name.Form);
                json.WriteEndObject();
                json.WritePropertyName("additionalProperties");
                WriteShape(json, names.Value);
                if (names.AtLeastOne)
                {
                    json.WriteNumber("minProperties", 1);
                }

                break;
            case ListShape list:
                json.WriteString("type", "array");
                json.WritePropertyName("items");
                WriteShape(json, list.Item);
                break;
            case TextShape text:
                WriteText(json, text);
                break;
            case ChoiceShape choice:
                WriteWords(json, "enum", choice.Words);
                break;
            case EitherShape either:
                json.WriteStartArray("oneOf");
                foreach (var one in either.Shapes)
                {
                    WriteShape(json, one);
                }

                json.WriteEndArray();
                break;
        }

        if (shape.Examples.Length > 0)
        {
            WriteWords(json, "examples", shape.Examples);
        }
    }

    private static void WriteMap(Utf8JsonWriter json, MapShape map)
    {
        json.WriteString("type", "object");
        json.WriteStartObject("properties");
        foreach (var key in map.Keys)
        {
            json.WritePropertyName(key.Name);
            WriteShape(json, key.Value);
        }

        json.WriteEndObject();
        ImmutableArray<string> required =
        [
            .. map.Keys.Where(key => key.Required).Select(key => key.Name),
        ];
        if (required.Length > 0)
        {
            WriteWords(json, "required", required);
        }

        WriteAlternatives(json, "oneOf", map.ExactlyOneOf);
        WriteAlternatives(json, "anyOf", map.OneOrMoreOf);
        json.WriteBoolean("additionalProperties", false);
    }

    private static void WriteAlternatives(
        Utf8JsonWriter json,
        string how,
        ImmutableArray<string> names
    )
    {
        if (names.IsEmpty)
        {
            return;
        }

        json.WriteStartArray(how);
        foreach (var name in names)
        {
            json.WriteStartObject();
            WriteWords(json, "required", [name]);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>
    /// Every scalar is text to us, but an editor takes <c>12</c> for a number and <c>true</c> for a truth value: a text
    /// without a form may be any of the three.
    /// </summary>
    private static void WriteText(Utf8JsonWriter json, TextShape text)
    {
        if (text.Form is null)
        {
            WriteWords(json, "type", ["string", "number", "boolean"]);
            json.WriteNumber("minLength", 1);
        }
        else
        {
            json.WriteString("type", "string");
            WriteForm(json, text.Form);
        }
    }

    private static void WriteForm(Utf8JsonWriter json, TextForm? form)
    {
        if (form is not null)
        {
            json.WriteString("pattern", form.Pattern);
        }
    }

    private static void WriteWords(Utf8JsonWriter json, string name, ImmutableArray<string> words)
    {
        json.WriteStartArray(name);
        foreach (var word in words)
        {
            json.WriteStringValue(word);
        }

        json.WriteEndArray();
    }
}
