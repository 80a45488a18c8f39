using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using NUnit.Framework;
using PatternPress.Quilting.Reading;
using PatternPress.Source.Shapes;
using PatternPress.Source.Syntax;
using Shouldly;

namespace PatternPress.Tests.Source.Shapes;

/// <summary>The schema that editors use and the checker that builds use give the same verdict.</summary>
public sealed class JsonSchemaTests
{
    private static readonly string SchemaText = JsonSchemaWriter.Write(
        SamplePattern.Shape,
        "PatternPress pattern"
    );

    private static readonly JsonSchema Schema = JsonSchema.FromText(SchemaText);

    [Test]
    public void The_schema_is_itself_valid()
    {
        using var document = JsonDocument.Parse(SchemaText);
        MetaSchemas.Draft202012.Evaluate(document.RootElement).IsValid.ShouldBeTrue();
        document
            .RootElement.GetProperty("$schema")
            .GetString()
            .ShouldBe("https://json-schema.org/draft/2020-12/schema");
    }

    [Test]
    public void The_schema_is_the_same_every_time() =>
        JsonSchemaWriter
            .Write(PatternShape.Of(SamplePattern.Vocabulary), "PatternPress pattern")
            .ShouldBe(SchemaText);

    [Test]
    public void Every_property_is_described()
    {
        using var document = JsonDocument.Parse(SchemaText);
        var properties = Properties(document.RootElement).ToList();
        properties.Count.ShouldBeGreaterThan(80);
        foreach (var property in properties)
        {
            property
                .Value.GetProperty("description")
                .GetString()
                .ShouldNotBeNullOrWhiteSpace(property.Name);
        }
    }

    private static IEnumerable<JsonProperty> Properties(JsonElement element)
    {
        if (element.ValueKind == JsonValueKind.Object)
        {
            foreach (var member in element.EnumerateObject())
            {
                if (member.Name == "properties")
                {
                    foreach (var property in member.Value.EnumerateObject())
                    {
                        yield return property;
                    }
                }

                foreach (var inner in Properties(member.Value))
                {
                    yield return inner;
                }
            }
        }
        else if (element.ValueKind == JsonValueKind.Array)
        {
            foreach (var inner in element.EnumerateArray().SelectMany(Properties))
            {
                yield return inner;
            }
        }
    }

    [Test]
    public void The_sample_fits_the_schema() =>
        FitsSchema(SyntaxTree.Read("a.yaml", SamplePattern.Text)).ShouldBeTrue();

    private static IEnumerable<string> Patterns =>
        Directory.EnumerateFiles(Repository.Patterns, "*.quilt.yaml").Order(StringComparer.Ordinal);

    [TestCaseSource(nameof(Patterns))]
    public void The_repository_s_patterns_fit_the_schema_of_the_real_words(string file)
    {
        var shape = PatternShape.Of(SourceVocabulary.Words);
        var tree = SyntaxTree.Read(file, File.ReadAllBytes(file));
        tree.Diagnostics.ShouldBeEmpty();
        ShapeChecker.Check(tree, shape).ShouldBeEmpty();
        FitsSchema(tree, JsonSchema.FromText(JsonSchemaWriter.Write(shape, "pattern")))
            .ShouldBeTrue();
    }

    [Test]
    public void Random_documents_get_the_same_verdict()
    {
        var verdicts = new int[2];
        for (var seed = 0; seed < 1200; seed++)
        {
            var text = new RandomDocument(seed).Write(SamplePattern.Shape);
            var tree = SyntaxTree.Read("a.yaml", text);
            tree.Diagnostics.ShouldBeEmpty(text);
            var found = ShapeChecker.Check(tree, SamplePattern.Shape);
            FitsSchema(tree)
                .ShouldBe(
                    found.IsEmpty,
                    $"{text}\n{string.Join('\n', found.Select(one => one.Title))}"
                );
            verdicts[found.IsEmpty ? 1 : 0]++;
        }

        // Neither verdict by default.
        verdicts[0].ShouldBeGreaterThan(200);
        verdicts[1].ShouldBeGreaterThan(200);
    }

    private static bool FitsSchema(SyntaxTree tree) => FitsSchema(tree, Schema);

    private static bool FitsSchema(SyntaxTree tree, JsonSchema schema)
    {
        using var document = JsonDocument.Parse(Json(tree.Root)?.ToJsonString() ?? "null");
        return schema.Evaluate(document.RootElement).IsValid;
    }

    /// <summary>The tree as an editor's YAML reader sees it: numbers and truth values where the text looks like them
    /// (YAML 1.2 core schema).</summary>
    private static JsonNode? Json(Node node)
    {
        switch (node)
        {
            case MapNode map:
                return new JsonObject(
                    map.Entries.Select(entry =>
                        KeyValuePair.Create(entry.Key.Value, Json(entry.Value))
                    )
                );
            case ListNode list:
                return new JsonArray([.. list.Items.Select(Json)]);
            case ScalarNode { Style: ScalarStyle.Plain } scalar:
                if (scalar.Value.Length == 0)
                {
                    return null;
                }

                if (scalar.Value is "true" or "false")
                {
                    return JsonValue.Create(scalar.Value == "true");
                }

                return decimal.TryParse(
                    scalar.Value,
                    System.Globalization.NumberStyles.Float,
                    null,
                    out var number
                )
                    ? JsonValue.Create(number)
                    : JsonValue.Create(scalar.Value);
            default:
                return JsonValue.Create(((ScalarNode)node).Value);
        }
    }

    /// <summary>Writes documents that follow a shape, most of them with something wrong somewhere.</summary>
    private sealed class RandomDocument
    {
        private static readonly string[] Scalars =
        [
            "",
            "12",
            "1 1/2",
            "-3.5",
            "true",
            "yes",
            "no",
            "\"\"",
            "\"12\"",
            "'#a0b1c2'",
            "\"#zzz\"",
            "2026-11-01",
            "1.2.3",
            "1.2",
            "straight",
            "plain",
            "exact",
            "5 x 6",
        ];

        private readonly Random random;
        private readonly int mistakesOneIn;
        private readonly StringBuilder text = new();

        public RandomDocument(int seed)
        {
            random = new Random(seed);
            mistakesOneIn = seed % 3 == 0 ? int.MaxValue : 60;
        }

        public string Write(Shape shape)
        {
            WriteShape(shape);
            return text.Append('\n').ToString();
        }

        private bool Mistake() => random.Next(mistakesOneIn) == 0;

        private void WriteShape(Shape shape)
        {
            if (Mistake())
            {
                WriteAnything(depth: 0);
                return;
            }

            switch (shape)
            {
                case MapShape map:
                    WriteMap(map);
                    break;
                case NamesShape names:
                    WriteNames(names);
                    break;
                case ListShape list:
                    text.Append('[');
                    for (var i = random.Next(3); i > 0; i--)
                    {
                        // An item of no text at all would leave a comma without one.
                        var before = text.Length;
                        WriteShape(list.Item);
                        text.Append(text.Length == before ? "~, " : ", ");
                    }

                    text.Append(']');
                    break;
                case TextShape form:
                    WriteText(form);
                    break;
                case ChoiceShape choice:
                    text.Append(choice.Words[random.Next(choice.Words.Length)]);
                    break;
                case EitherShape either:
                    WriteShape(either.Shapes[random.Next(either.Shapes.Length)]);
                    break;
            }
        }

        private void WriteMap(MapShape map)
        {
            text.Append('{');
            var only =
                map.ExactlyOneOf.Length > 0
                    ? map.ExactlyOneOf[random.Next(map.ExactlyOneOf.Length)]
                    : null;
            foreach (var key in map.Keys.OrderBy(_ => random.Next()))
            {
                var isAlternative = map.ExactlyOneOf.Contains(key.Name);
                var wanted = isAlternative ? key.Name == only : key.Required || random.Next(3) == 0;
                if (wanted != Mistake())
                {
                    text.Append(Mistake() ? key.Name + "x" : key.Name).Append(": ");
                    WriteShape(key.Value);
                    text.Append(", ");
                }
            }

            text.Append('}');
        }

        private void WriteNames(NamesShape names)
        {
            text.Append('{');
            var least = names.AtLeastOne && !Mistake() ? 1 : 0;
            for (var i = random.Next(least, 3); i > 0; i--)
            {
                text.Append(Mistake() ? $"\"n {i}\"" : $"n{i}").Append(": ");
                WriteShape(names.Value);
                text.Append(", ");
            }

            text.Append('}');
        }

        private void WriteText(TextShape shape)
        {
            var example = shape.Examples.Length > 0 ? shape.Examples[0] : "words";
            var written =
                shape.Form is not null && !Mistake() ? example : Scalars[random.Next(1, 7)];
            text.Append(written.StartsWith('#') ? $"\"{written}\"" : written);
        }

        private void WriteAnything(int depth)
        {
            switch (random.Next(depth > 1 ? 1 : 4))
            {
                case 0 or 1:
                    text.Append(Scalars[random.Next(Scalars.Length)]);
                    break;
                case 2:
                    text.Append('[');
                    WriteAnything(depth + 1);
                    text.Append(text[^1] == '[' ? "]" : ", ]");
                    break;
                default:
                    text.Append("{width: ");
                    WriteAnything(depth + 1);
                    text.Append('}');
                    break;
            }
        }
    }
}
