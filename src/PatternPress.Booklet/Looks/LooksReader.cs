using System.Collections.Immutable;
using PatternPress.Booklet.Words;
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

    private static readonly (string Word, Ground Ground)[] _grounds =
    [
        ("none", Ground.None),
        ("tint", Ground.Tint),
        ("pale", Ground.Pale),
        ("accent", Ground.Accent),
    ];

    private LooksReader() { }

    /// <summary>Reads looks that stand in one file.</summary>
    public static PageLooks Read(SyntaxTree tree, out ImmutableArray<Diagnostic> diagnostics) =>
        Read(tree, _ => null, null, out diagnostics);

    /// <summary>Reads looks that may begin with those of another file.</summary>
    /// <param name="tree">The house's own looks: what they hold counts more.</param>
    /// <param name="find">The file of a style by its name; null where there is none.</param>
    /// <param name="style">The style to begin with; null for the one that the house's looks name.</param>
    public static PageLooks Read(
        SyntaxTree tree,
        Func<string, SyntaxTree?> find,
        string? style,
        out ImmutableArray<Diagnostic> diagnostics
    )
    {
        var reader = new LooksReader();
        var layers = new List<MapNode>();
        reader.Check(tree);
        ScalarNode? chosen = (tree.Root as MapNode)?["style"] as ScalarNode;
        if ((style ?? chosen?.Value) is { } name)
        {
            if (find(name) is { } named)
            {
                reader.Check(named);
                Add(named.Root);
            }
            else if (chosen is not null)
            {
                reader.Report(chosen, "the name of a file in templates/looks");
            }
        }
        Add(tree.Root);
        PageLooks looks = reader.ReadLooks(layers, null);
        var variants = ImmutableSortedDictionary.CreateBuilder<string, PageLooks>(
            StringComparer.Ordinal
        );
        foreach (
            string variant in layers
                .Select(layer => layer["variants"])
                .OfType<MapNode>()
                .SelectMany(map => map.Entries)
                .Select(entry => entry.Key.Value)
                .Distinct()
        )
        {
            variants[variant] = reader.ReadLooks(
                layers,
                [
                    .. layers
                        .Select(layer => (layer["variants"] as MapNode)?[variant])
                        .OfType<MapNode>(),
                ]
            );
        }
        // A value that several variants take over is wrong once.
        diagnostics =
        [
            .. reader.diagnostics.ToImmutable().DistinctBy(d => (d.Code, d.Primary.Span, d.Title)),
        ];
        return looks with { Variants = variants.ToImmutable() };

        void Add(Node? root)
        {
            if (root is MapNode map)
            {
                layers.Add(map);
            }
        }
    }

    private void Check(SyntaxTree tree)
    {
        diagnostics.AddRange(tree.Diagnostics);
        diagnostics.AddRange(ShapeChecker.Check(tree, Shape));
    }

    private static ImmutableArray<Key> OwnKeys { get; } =
    [
        new Key("margins", Map("the margins", "left", "right", "top", "bottom")),
        new Key("families", Map("the families", "text", "display")),
        new Key("colors", Map("the colors", "text", "muted", "rule", "tint", "accent")),
        new Key("rhythm", Text("a distance in points")),
        new Key("tables", Map("the tables", "head", "rules")),
        new Key("notes", Map("the notes", "shape")),
        new Key("cover", Map("the cover", "ground")),
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
                    "indent",
                    "rule"
                )
            )
        ),
    ];

    /// <summary>What the file may hold.</summary>
    private static MapShape Shape { get; } =
        new(
            "the looks",
            "What the pages look like.",
            [
                new Key("style", Text("a style's name")),
                .. OwnKeys,
                new Key(
                    "variants",
                    new NamesShape(
                        "the variants",
                        "Looks of other pages than the usual.",
                        Text("a variant's name"),
                        new MapShape(
                            "a variant",
                            "",
                            [new Key("body-size", Text("a size in points")), .. OwnKeys]
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

    /// <summary>Reads looks out of layers, of which the later count more.</summary>
    /// <param name="variant">What a variant changes of them; null for the looks themselves.</param>
    private PageLooks ReadLooks(List<MapNode> layers, ImmutableArray<MapNode>? variant)
    {
        var usual = new Layered([.. layers]);
        var changed = new Layered(variant ?? []);
        Layered all = usual.Under(changed);
        Layered margins = all.Map("margins"),
            colors = all.Map("colors"),
            families = all.Map("families");
        string text = families["text"]?.Value ?? "Lato";
        string display = families["display"]?.Value ?? text;
        ScalarNode? accent = colors["accent"];
        var styles = ImmutableSortedDictionary.CreateBuilder<string, StyleLooks>(
            StringComparer.Ordinal
        );
        Layered entries = usual.Map("styles"),
            changes = changed.Map("styles");
        StyleLooks body = ReadStyle(
            entries.Map("body"),
            new StyleLooks(new TextStyle { Family = text }, "text"),
            text,
            display
        );
        Points running = Number(changed, "body-size", body.Style.Size);
        Points usualSize = body.Style.Size;
        StyleLooks plain = body with { Style = body.Style with { SpaceBefore = Points.Zero } };
        // Names of both: a variant may have styles of its own.
        foreach (string name in entries.Names.Concat(changes.Names).Append("body").Distinct())
        {
            StyleLooks own =
                name == "body" ? body : ReadStyle(entries.Map(name), plain, text, display);
            styles[name] = ReadStyle(
                changes.Map(name),
                Resized(own, usualSize, running),
                text,
                display
            );
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
        )
        {
            // Running text of another size has another leading.
            Rhythm = changed["rhythm"] is null
                ? Number(all, "rhythm", Points.Zero).Scale(running.Value / usualSize.Value)
                : Number(changed, "rhythm", Points.Zero),
            Enlarged = Math.Max(1, running.Value / usualSize.Value),
            Forms = new PageForms
            {
                TableHead = GroundOf(all.Map("tables"), "head", Ground.Tint),
                TableRules = Word(all.Map("tables"), "rules", "rows", "stripes", "grid") switch
                {
                    "stripes" => TableRules.Stripes,
                    "grid" => TableRules.Grid,
                    _ => TableRules.Rows,
                },
                Notes = Word(all.Map("notes"), "shape", "bar", "frame", "plain") switch
                {
                    "frame" => NoteShape.Frame,
                    "plain" => NoteShape.Plain,
                    _ => NoteShape.Bar,
                },
                Cover = GroundOf(all.Map("cover"), "ground", Ground.None),
            },
        };
    }

    /// <summary>No type of a variant is set smaller.</summary>
    private static readonly Points SmallestType = 7.Pt;

    /// <summary>
    /// A style at another size of running text. Smaller type grows and shrinks with it; larger type by the root of how much
    /// larger it is, so that headings stay on their lines.
    /// </summary>
    private static StyleLooks Resized(StyleLooks looks, Points usual, Points running)
    {
        if (usual == running)
        {
            return looks;
        }
        TextStyle s = looks.Style;
        double share = running.Value / usual.Value;
        double over = s.Size.Value / usual.Value;
        Points size = Points.Max(
            SmallestType,
            over <= 1 ? s.Size.Scale(share) : running.Scale(Math.Sqrt(over))
        );
        double by = size.Value / s.Size.Value;
        return looks with
        {
            Style = s with
            {
                Size = size,
                Leading = s.Leading.Scale(by),
                SpaceBefore = s.SpaceBefore.Scale(Math.Sqrt(by)),
                SpaceAfter = s.SpaceAfter.Scale(Math.Sqrt(by)),
                LetterSpacing = s.LetterSpacing.Scale(by),
                Indent = s.Indent.Scale(by),
            },
        };
    }

    private Ground GroundOf(Layered map, string key, Ground otherwise)
    {
        string? word = Word(map, key, [.. _grounds.Select(g => g.Word)]);
        return word is null ? otherwise : _grounds.First(g => g.Word == word).Ground;
    }

    private StyleLooks ReadStyle(Layered map, StyleLooks from, string text, string display)
    {
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
            Family = map["family"]?.Value switch
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
        return new StyleLooks(
            s,
            ColorName(map) ?? from.Color,
            Word(map, "rule", "above", "below", "none") ?? from.HeadingRule
        );
    }

    private string? ColorName(Layered map)
    {
        if (map["color"] is not { } node)
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

    private Ink Color(Layered map, string key, Ink otherwise)
    {
        if (map[key] is not { } node)
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

    private Points Number(Layered map, string key, Points otherwise)
    {
        if (map[key] is not { } node)
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

    private Points Distance(Layered map, string key, Points otherwise)
    {
        if (map[key] is not { } node)
        {
            return otherwise;
        }
        if (
            PaperDistance.TryParse(node.Value, out Points distance)
            && distance.Thousandths is >= 18_000 and <= 180_000
        )
        {
            return distance;
        }
        Report(node, "a margin from 0.25 in to 2.5 in, with its unit: in, mm or pt");
        return otherwise;
    }

    private bool YesOrNo(Layered map, string key, bool otherwise) =>
        Word(map, key, "yes", "no", "true", "false") switch
        {
            "yes" or "true" => true,
            "no" or "false" => false,
            _ => otherwise,
        };

    private string? Word(Layered map, string key, params ReadOnlySpan<string> known)
    {
        if (map[key] is not { } node)
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

    private static bool TryNumber(string text, out double number) =>
        double.TryParse(
            text,
            System.Globalization.NumberStyles.AllowDecimalPoint
                | System.Globalization.NumberStyles.AllowLeadingSign,
            null,
            out number
        ) && double.IsFinite(number);
}
