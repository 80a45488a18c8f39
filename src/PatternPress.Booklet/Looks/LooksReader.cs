using System.Collections.Immutable;
using PatternPress.Quilting.Rules;
using PatternPress.Source.Diagnostics;
using PatternPress.Source.Shapes;
using PatternPress.Source.Syntax;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Booklet.Looks;

/// <summary>Reads <c>templates/looks.yaml</c>. What is missing or wrong is reported and keeps its default.</summary>
public sealed class LooksReader
{
    private static readonly ImmutableArray<string> ColorRoles =
    [
        "text",
        "muted",
        "accent",
        "on-accent",
    ];

    private readonly DiagnosticList diagnostics = new();

    private LooksReader() { }

    public static PageLooks Read(SyntaxTree tree, out ImmutableArray<Diagnostic> diagnostics)
    {
        var reader = new LooksReader();
        reader.diagnostics.AddRange(tree.Diagnostics);
        reader.diagnostics.AddRange(ShapeChecker.Check(tree, Shape));
        PageLooks looks = reader.ReadLooks(tree.Root as MapNode);
        diagnostics = reader.diagnostics.ToImmutable();
        return looks;
    }

    /// <summary>What the file may hold.</summary>
    private static MapShape Shape { get; } =
        new(
            "the looks",
            "What the pages look like.",
            [
                new Key("margins", Map("the margins", "left", "right", "top", "bottom")),
                new Key("families", Map("the families", "text", "display")),
                new Key("colors", Map("the colors", "text", "muted", "rule", "tint", "accent")),
                new Key(
                    "styles",
                    new NamesShape(
                        "the styles",
                        "Kinds of text.",
                        Text("a style's name"),
                        Map(
                            "a style",
                            "family",
                            "size",
                            "leading",
                            "before",
                            "after",
                            "bold",
                            "italic",
                            "color",
                            "align",
                            "spacing",
                            "capitals",
                            "figures",
                            "keep",
                            "indent"
                        )
                    )
                ),
            ]
        );

    private static TextShape Text(string what) => new(what, "");

    private static MapShape Map(string what, params ReadOnlySpan<string> keys)
    {
        var all = ImmutableArray.CreateBuilder<Key>();
        foreach (string key in keys)
        {
            all.Add(new Key(key, Text($"a value of {key}")));
        }
        return new MapShape(what, "", all.ToImmutable());
    }

    private PageLooks ReadLooks(MapNode? root)
    {
        var margins = root?["margins"] as MapNode;
        var colors = root?["colors"] as MapNode;
        var families = root?["families"] as MapNode;
        string text = Scalar(families, "text")?.Value ?? "Lato";
        string display = Scalar(families, "display")?.Value ?? text;
        ScalarNode? accent = Scalar(colors, "accent");
        var styles = ImmutableSortedDictionary.CreateBuilder<string, StyleLooks>(
            StringComparer.Ordinal
        );
        var entries = root?["styles"] as MapNode;
        StyleLooks body = ReadStyle(
            entries?["body"] as MapNode,
            new StyleLooks(new TextStyle { Family = text }, "text"),
            text,
            display
        );
        styles["body"] = body;
        StyleLooks plain = body with { Style = body.Style with { SpaceBefore = Points.Zero } };
        foreach (Entry entry in entries?.Entries ?? [])
        {
            if (entry.Key.Value != "body")
            {
                styles[entry.Key.Value] = ReadStyle(entry.Value as MapNode, plain, text, display);
            }
        }
        return new PageLooks(
            new Insets(
                Distance(margins, "left", 0.9.Inch),
                Distance(margins, "top", 0.85.Inch),
                Distance(margins, "right", 0.9.Inch),
                Distance(margins, "bottom", 0.95.Inch)
            ),
            Color(colors, "text", Ink.Grey(0.12)),
            Color(colors, "muted", Ink.Grey(0.36)),
            Color(colors, "rule", Ink.Grey(0.78)),
            Color(colors, "tint", Ink.Grey(0.96)),
            accent is null or { Value: "fabric" } ? null : Color(colors, "accent", Ink.Black),
            styles.ToImmutable()
        );
    }

    private StyleLooks ReadStyle(MapNode? map, StyleLooks from, string text, string display)
    {
        if (map is null)
        {
            return from;
        }
        TextStyle s = from.Style;
        s = s with
        {
            Size = Number(map, "size", s.Size),
            Bold = YesOrNo(map, "bold", s.Bold),
            Italic = YesOrNo(map, "italic", s.Italic),
            SpaceBefore = Number(map, "before", s.SpaceBefore),
            SpaceAfter = Number(map, "after", s.SpaceAfter),
            LetterSpacing = Number(map, "spacing", s.LetterSpacing),
            Indent = Number(map, "indent", s.Indent),
            Capitals = YesOrNo(map, "capitals", s.Capitals),
            Family = Scalar(map, "family")?.Value switch
            {
                null => s.Family,
                "text" => text,
                "display" => display,
                string family => family,
            },
            Alignment = Word(map, "align", "left", "center", "right") switch
            {
                "left" => Alignment.Left,
                "center" => Alignment.Centre,
                "right" => Alignment.Right,
                _ => s.Alignment,
            },
            TabularFigures = Word(map, "figures", "tabular", "proportional") switch
            {
                "tabular" => true,
                "proportional" => false,
                _ => s.TabularFigures,
            },
        };
        string? keep = Word(map, "keep", "next", "together", "no");
        s = s with
        {
            Leading = Number(map, "leading", s.Leading),
            KeepWithNext = keep is null ? s.KeepWithNext : keep == "next",
            KeepTogether = keep is null ? s.KeepTogether : keep is "together",
            Balanced = keep == "next" || s.Balanced,
        };
        return new StyleLooks(s, ColorName(map) ?? from.Color);
    }

    private string? ColorName(MapNode map)
    {
        if (Scalar(map, "color") is not { } node)
        {
            return null;
        }
        if (ColorRoles.Contains(node.Value) || TextForm.Color.Matches(node.Value))
        {
            return node.Value;
        }
        Report(node, "a color: text, muted, accent, on-accent or #rrggbb");
        return null;
    }

    private Ink Color(MapNode? map, string key, Ink otherwise)
    {
        if (Scalar(map, key) is not { } node)
        {
            return otherwise;
        }
        if (TextForm.Color.Matches(node.Value))
        {
            return Ink.FromHex(node.Value);
        }
        Report(node, "a color of the form #rrggbb");
        return otherwise;
    }

    private Points Number(MapNode map, string key, Points otherwise)
    {
        if (Scalar(map, key) is not { } node)
        {
            return otherwise;
        }
        if (TryNumber(node.Value, out double points) && points is >= -20 and <= 400)
        {
            return Points.Of(points);
        }
        Report(node, "a number of points from 0 to 400");
        return otherwise;
    }

    private Points Distance(MapNode? map, string key, Points otherwise)
    {
        if (Scalar(map, key) is not { } node)
        {
            return otherwise;
        }
        string[] words = node.Value.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words.Length == 2 && TryNumber(words[0], out double number))
        {
            Points? distance = words[1] switch
            {
                "in" => number.Inch,
                "mm" => number.Mm,
                "pt" => number.Pt,
                _ => null,
            };
            if (distance is { Thousandths: >= 18_000 and <= 180_000 } fits)
            {
                return fits;
            }
        }
        Report(node, "a margin from 0.25 in to 2.5 in, with its unit: in, mm or pt");
        return otherwise;
    }

    private bool YesOrNo(MapNode map, string key, bool otherwise) =>
        Word(map, key, "yes", "no", "true", "false") switch
        {
            "yes" or "true" => true,
            "no" or "false" => false,
            _ => otherwise,
        };

    private string? Word(MapNode map, string key, params ReadOnlySpan<string> known)
    {
        if (Scalar(map, key) is not { } node)
        {
            return null;
        }
        if (known.Contains(node.Value))
        {
            return node.Value;
        }
        Report(node, $"one of: {string.Join(", ", known.ToArray())}");
        return null;
    }

    private void Report(ScalarNode node, string wanted) =>
        diagnostics.Add(PP0453_UnsuitableLook.Found(node.Span, node.Value, wanted));

    private static ScalarNode? Scalar(MapNode? map, string key) => map?[key] as ScalarNode;

    private static bool TryNumber(string text, out double number) =>
        double.TryParse(
            text,
            System.Globalization.NumberStyles.AllowDecimalPoint
                | System.Globalization.NumberStyles.AllowLeadingSign,
            null,
            out number
        ) && double.IsFinite(number);
}
